import { dayWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import { daysWords, lotName } from '@/app/_ui/store-words';
import type { StoreDue } from '@/lib/usecases/store/due-store';

/** What wants doing in the store, as a line of the week. */
export function storeItem(due: StoreDue, society: string): DueItem {
  if (due.code === 'store-round') {
    const { placeId, place, lots, daysLate, missedRounds } = due;
    return {
      key: `round ${placeId}`,
      when: daysLate ? `${daysWords(daysLate)} late` : 'today',
      late: daysLate > 0,
      what: `Go over the store: ${place}`,
      why: `${lots} ${lots === 1 ? 'lot' : 'lots'}.${missedRounds ? ` ${missedRounds} ${missedRounds === 1 ? 'round was' : 'rounds were'} missed.` : ''} One bad one takes its neighbours.`,
      action: { href: `/${society}/store/round`, label: 'Begin the round' },
    };
  }
  const action = { href: `/${society}/store/lots/${due.lotId}`, label: 'Open the lot' };
  if (due.code === 'store-cured')
    return {
      key: `cured ${due.lotId}`,
      when: due.state === 'over-long' ? 'overdue' : 'ready',
      late: due.state === 'over-long',
      what: `Put away what was curing: ${lotName(due)}`,
      why: due.state === 'not-cured' ? 'This kind is not cured.' : `By ${dayWords(due.latestOn)} at the latest.`,
      action,
    };
  return {
    key: `use ${due.lotId}`,
    when: 'use now',
    late: due.medianDays === 0,
    what: `Use ${lotName(due)}, from ${due.place}`,
    why:
      due.medianDays === 0
        ? 'It is likely past its time already.'
        : `Likelier than not it is at its end within ${daysWords(due.medianDays)}.`,
    action,
  };
}
