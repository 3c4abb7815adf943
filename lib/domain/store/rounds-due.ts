import { addDays, type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { keepingOf } from '../catalogue/keepings';
import { wholeFrom } from '../quantity/checked';
import { lotNow } from './go-over';
import type { StoreLot } from './lot';

/** A lot's next going over. */
export type RoundDue = {
  readonly lotId: string;
  readonly placeId: string;
  readonly everyDays: number;
  readonly lastOn: CalendarDate;
  readonly dueOn: CalendarDate;
  readonly isDue: boolean;
  /** Days past the day that it was due; 0 on it. */
  readonly daysLate: number;
  /** Rounds that passed without a going over; the one that is due today is not among them. */
  readonly missedRounds: number;
};

/**
 * When each lot is next gone over, and how late that is on a day.
 *
 * Method: from the day it was put in or last gone over, every so many days; a whole interval past its day is a missed round.
 * Lots of which nothing is left are done.
 *
 * @param lots   any; the interval is the lot's own, or its kind's
 * @param today  not before a lot was put in
 * @returns      one for each lot that holds anything, by place, the latest first within each
 * @throws RangeError on an unknown kind, an interval under a day, a record after today
 * @source       intervals: common practice
 * @example      onions last gone over on 1 November, on the 29th → due on the 15th, 14 days late, 1 round missed
 */
export function roundsDue(lots: readonly StoreLot[], today: CalendarDate): RoundDue[] {
  return lots
    .filter((lot) => lotNow(lot).sound > 0)
    .map((lot) => roundOf(lot, today))
    .sort(
      (one, other) =>
        compare(one.placeId, other.placeId) || compare(one.dueOn, other.dueOn) || compare(one.lotId, other.lotId),
    );
}

function roundOf(lot: StoreLot, today: CalendarDate): RoundDue {
  const everyDays = wholeFrom(1, lot.goingOverDays ?? kindsInterval(lot.keepingKey));
  const lastOn = lot.goingsOver.at(-1)?.on ?? lot.putInOn;
  const since = wholeFrom(0, daysBetween(lastOn, today));
  return {
    lotId: lot.id,
    placeId: lot.placeId,
    everyDays,
    lastOn,
    dueOn: addDays(lastOn, everyDays),
    isDue: since >= everyDays,
    daysLate: Math.max(0, since - everyDays),
    missedRounds: Math.max(0, Math.floor(since / everyDays) - 1),
  };
}

function kindsInterval(keepingKey: string): number {
  const keeping = keepingOf(keepingKey);
  if (!keeping) throw new RangeError(`no kind of keeping: ${keepingKey}`);
  return keeping.goingOverDays;
}

function compare(one: string, other: string): number {
  return one === other ? 0 : one < other ? -1 : 1;
}
