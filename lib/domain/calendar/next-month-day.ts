import { type CalendarDate, calendarDate, yearOf } from './calendar-date';
import { isMonthDay, type MonthDay } from './month-day';

/**
 * The next day of the year that is written so, today itself included.
 *
 * @param from      the day from which on it is looked for
 * @param monthDay  as `MM-DD`
 * @returns         from `from` to a year on
 * @throws RangeError on what is no day of every year, and beyond 2199
 * @example         from 28 November 2026, 07-20 → 20 July 2027
 */
export function nextMonthDay(from: CalendarDate, monthDay: MonthDay): CalendarDate {
  if (!isMonthDay(monthDay)) throw new RangeError(`no day of every year: ${monthDay}`);
  const year = yearOf(from) + (monthDay < from.slice(5) ? 1 : 0);
  return calendarDate(`${year}-${monthDay}`);
}

/**
 * The latest day of the year that is written so, today itself included.
 *
 * @param until     the day up to which it is looked for
 * @param monthDay  as `MM-DD`
 * @returns         from a year before `until` to `until`
 * @throws RangeError on what is no day of every year, and before 1900
 * @example         until 28 November 2026, 07-01 → 1 July 2026
 */
export function lastMonthDay(until: CalendarDate, monthDay: MonthDay): CalendarDate {
  if (!isMonthDay(monthDay)) throw new RangeError(`no day of every year: ${monthDay}`);
  const year = yearOf(until) - (monthDay > until.slice(5) ? 1 : 0);
  return calendarDate(`${year}-${monthDay}`);
}
