import { addDays, type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { type Curing, curingsOf } from '../catalogue/curings';
import type { SourceKey } from '../catalogue/sources';

/** How far the curing of a lot has come. */
export type CuringClock = {
  readonly state: 'curing' | 'ready' | 'over-long' | 'not-cured';
  /** Days since it was laid out; 1 on the day after. */
  readonly day: number;
  readonly readyOn: CalendarDate;
  readonly latestOn: CalendarDate;
  readonly curing: Curing;
  readonly source: SourceKey;
};

/**
 * Curing's own clock: from the day a lot is laid out to the days between which it is put to store.
 *
 * Method: the first printed account of its kind; ready from its least days on, over-long after its most.
 *
 * @param keepingKey  a kind of keeping
 * @param laidOutOn   the day it was laid out to cure
 * @param today       not before it
 * @returns           null for a kind that no account cures; `not-cured` where the account says not to
 * @throws RangeError where today is before the day it was laid out
 * @source            each row's own; see the catalogue
 * @example           onions laid out on 1 August, on the 11th → curing, day 10, ready on the 15th, by the 21st at the latest
 */
export function curingClock(keepingKey: string, laidOutOn: CalendarDate, today: CalendarDate): CuringClock | null {
  const [curing] = curingsOf(keepingKey);
  if (!curing) return null;
  const day = daysBetween(laidOutOn, today);
  if (day < 0) throw new RangeError(`laid out after today: ${laidOutOn}`);
  return {
    state: stateOn(day, curing),
    day,
    readyOn: addDays(laidOutOn, curing.leastDays),
    latestOn: addDays(laidOutOn, curing.mostDays),
    curing,
    source: curing.source,
  };
}

function stateOn(day: number, { leastDays, mostDays }: Curing): CuringClock['state'] {
  if (mostDays === 0) return 'not-cured';
  if (day < leastDays) return 'curing';
  return day <= mostDays ? 'ready' : 'over-long';
}
