type Holding = {
  readonly id: string;
  readonly plots: readonly string[];
  readonly names: readonly string[];
  readonly asked: number;
  readonly need: number;
  readonly collected: number;
};

/** What each holding had of what it asked; short enough for forty of them on a page. */
export function HadByEach({ holdings }: { holdings: readonly Holding[] }) {
  return (
    <>
      <h3>By holding: had, of so many asked</h3>
      <ul className="review-holdings">
        {holdings.map(({ id, plots, names, asked, need, collected }) => (
          <li key={id}>
            {plots.join(', ') || 'no plot then'}
            {names.length ? ` (${names.join(', ')})` : ''}:{' '}
            <b>
              {collected} of {asked}
            </b>
            {collected < need ? <span className="soft">, needed {need}</span> : null}
          </li>
        ))}
      </ul>
    </>
  );
}
