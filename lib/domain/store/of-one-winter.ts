import { addDays, type CalendarDate, daysBetween } from '../calendar/calendar-date';
import type { MonthDay } from '../calendar/month-day';
import { lastMonthDay, nextMonthDay } from '../calendar/next-month-day';
import { lotNow } from './go-over';
import type { StoreLot } from './lot';

/** From this day on, what is put in belongs to the winter to come: the first bulbs are lifted. */
const winterFrom: MonthDay = '07-01';

/**
 * The lots that a forecast of one kind looks at: those of this winter, the used-up ones too, since they tell of the use.
 *
 * Method: what was put in since 1 July. Where something older is still held, all since the 1 July before it, so that the use is
 * counted over everything that was used meanwhile.
 *
 * @param lots   of one kind
 * @param today  the day of the forecast
 * @returns      a part of the lots, in the same order
 * @source       the day: common practice
 * @example      onions of September, today in November; those of last winter, used up in May → the former alone
 */
export function ofOneWinter<Lot extends StoreLot>(lots: readonly Lot[], today: CalendarDate): Lot[] {
  const oldest = lots
    .filter((lot) => lotNow(lot).sound > 0)
    .map(({ putInOn }) => putInOn)
    .reduce((one, other) => (other < one ? other : one), today);
  const from = lastMonthDay(oldest, winterFrom);
  return lots.filter(({ putInOn }) => putInOn >= from);
}

/**
 * For how long what is put in has to last: from the day on which the first was put in to the next new crop.
 *
 * @param lots         of one kind and winter; at least one
 * @param newCropFrom  the day of the year on which the new crop is looked for
 * @returns            1 to 366 [days]
 * @throws RangeError  on no lots, or what is no day of every year
 * @example            put in on 1 September, the new crop on 20 July → 322
 */
export function daysToCover(lots: readonly Pick<StoreLot, 'putInOn'>[], newCropFrom: MonthDay): number {
  const [first] = lots.map(({ putInOn }) => putInOn).sort();
  if (!first) throw new RangeError('a store to be covered has lots');
  return daysBetween(first, nextMonthDay(addDays(first, 1), newCropFrom));
}
