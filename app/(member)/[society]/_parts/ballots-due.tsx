import { whenWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import type { BallotDue } from '@/lib/usecases/ballots/due-ballots';

/** A hand that is not raised yet, as a line of the week. */
export function ballotItem(
  { ballotId, title, closesAt, daysLeft, hands }: BallotDue,
  week: {
    readonly society: string;
    readonly timeZone: string;
  },
): DueItem {
  return {
    key: `hand ${ballotId}`,
    when: daysLeft === 0 ? 'today' : daysLeft === 1 ? '1 day left' : `${daysLeft} days left`,
    what: `Raise your hand: “${title}”`,
    why: `The count closes ${whenWords(closesAt, week.timeZone)}.${hands > 1 ? ` ${hands} hands are yours to raise, one for each holding.` : ''}`,
    action: { href: `/${week.society}/board/decisions/${ballotId}`, label: 'Raise it' },
  };
}
