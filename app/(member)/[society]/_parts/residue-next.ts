import { dayWords } from '@/app/_ui/delivery-words';
import type { ShownTest } from '@/lib/usecases/residue/shown-test';

/** What a test wants next, in one sentence. */
export function nextWords({ state, judged, isEnded }: Pick<ShownTest, 'state' | 'judged' | 'isEnded'>): string {
  if (judged.verdict === 'symptoms') return 'Keep this manure off the ground.';
  if (isEnded) return 'It is ended.';
  const { next, dueOn, due, lateDays } = state;
  if (next === 'sow') return 'Sow the pots next, and say on which day.';
  if (next === 'read' && dueOn !== null) {
    if (lateDays > 0) return `Read the pots: that was due ${lateDays === 1 ? 'yesterday' : `${lateDays} days ago`}.`;
    return due ? 'Read the pots today.' : `Read the pots next on ${dayWords(dueOn)}.`;
  }
  if (next === 'judged') return 'Nothing more is due.';
  return 'Set out new pots and start again.';
}
