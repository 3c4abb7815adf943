import 'server-only';
import { type HoldingOnDay, holdingsOn } from '@/lib/data/holding';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { ReadContext } from '../operation';

/** A holding as its neighbours know it in the queue: by its plots, never by names. */
export type QueueHolding = {
  /** Numbers; none where nobody can say any more. */
  readonly plots: readonly string[];
  /** It has no ground today; its plots are those of the day booking closed. */
  readonly former: boolean;
  readonly mine: boolean;
};

const nobody: QueueHolding = { plots: [], former: true, mine: false };

/** Tell the holdings of a queue; one that has ended meanwhile keeps its line. */
export async function queueHoldings(
  { db, scope, today }: ReadContext,
  closedOn: CalendarDate,
): Promise<(holdingId: string) => QueueHolding> {
  // A tenancy that ended on the very day was still there when it began.
  const days = [addDays(closedOn, -1), closedOn, today];
  const [begun = [], closed = [], now = []] = await Promise.all(days.map((day) => holdingsOn(db, scope, day)));
  const asKnown = (former: boolean) => (holding: HoldingOnDay) =>
    [
      holding.id,
      {
        plots: holding.plots.map(({ number }) => number),
        former,
        mine: holding.memberIds.includes(scope.memberId),
      },
    ] as const;
  const known = new Map([...[...begun, ...closed].map(asKnown(true)), ...now.map(asKnown(false))]);
  return (holdingId) => known.get(holdingId) ?? nobody;
}
