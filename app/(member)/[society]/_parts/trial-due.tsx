import { dayWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import { pieceWords } from '@/app/_ui/trial-words';
import type { TrialDue } from '@/lib/usecases/trials/due-trials';

/** What a trial wants, as a line of the week. */
export function trialItem(due: TrialDue, society: string): DueItem {
  const { trialId, blockId, question, plotNumber } = due;
  const href = `/${society}/board/trials/${trialId}`;
  if (due.code === 'trial-treat')
    return {
      key: `trial-treat ${blockId}`,
      when: 'trial',
      what: `“${question}”: do A on ${pieceWords(due.a)}, B on ${pieceWords(due.b)}`,
      why: `Plot ${plotNumber}. The lot has it so: not the other way round, however much better it would suit.`,
      action: { href, label: 'See what' },
    };
  return {
    key: `trial-result ${blockId}`,
    when: due.daysLeft > 0 ? `${due.daysLeft} ${due.daysLeft === 1 ? 'day' : 'days'} left` : 'today',
    late: due.daysLeft <= 3,
    what: `“${question}”: say what ${due.missing === 1 ? 'the other piece' : 'both pieces'} gave`,
    why: `Plot ${plotNumber}. By ${dayWords(due.resultsByOn)}: a plot with one result is left out of the report.`,
    action: { href, label: 'Say it' },
  };
}
