import { type CalendarDate, calendarDate } from '../calendar/calendar-date';
import type { MonthDay } from '../calendar/month-day';
import type { Season } from '../calendar/season-of';

// What is dug in the later half of a year is dug for the next.
const laterHalf: MonthDay = '07-01';

/**
 * The day on which something is done for a season: from July on in the year before, earlier in the season's own.
 *
 * @throws RangeError on no day of every year, or past the years 1900 to 2199
 * @example dayFor(2027, '10-01') → '2026-10-01'; dayFor(2027, '02-15') → '2027-02-15'
 */
export function dayFor(season: Season, monthDay: MonthDay): CalendarDate {
  return calendarDate(`${monthDay >= laterHalf ? season - 1 : season}-${monthDay}`);
}

/** Whether work for one season can be done between two days of the year: the second comes no earlier than the first. */
export function isWindow(from: MonthDay, until: MonthDay): boolean {
  return dayFor(2001, from) <= dayFor(2001, until);
}
