const told: Readonly<Record<string, string>> = {
  added: 'The place is there. Put something in it.',
  retired: 'The place is gone from your list.',
  'put-in': 'It is in store. “This week” says when it is gone over next.',
  corrected: 'Corrected. What it said before stays on record.',
  moved: 'Moved.',
  cured: 'Its curing is done.',
  finished: 'Nothing is left of it. It still counts towards what you use.',
  undone: 'Undone: it is as it was before.',
  'taken-back': 'The lot is taken back.',
};

/** What was just done, said by the page that follows. */
export function Said({ said }: { said: string | undefined }) {
  const words = told[said ?? ''];
  return words ? (
    <p className="notice kept wide" role="status">
      {words}
    </p>
  ) : null;
}
