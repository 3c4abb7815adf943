import { type CalendarDate, makeDate } from '../calendar/calendar-date';

/** The month in which manure begins to be dug in for the next season. Common practice. */
const firstMonth = 9;

/**
 * The days whose deliveries serve a season: from September of the year before up to the end of August.
 *
 * @param season  a year, 1901 to 2199
 * @returns       the first day, and the first day that is no longer of it
 * @throws RangeError on a season that is no year
 * @source        common practice: from September on, manure is dug in for the next season
 * @example       seasonDays(2027) → from 2026-09-01, until 2027-09-01
 */
export function seasonDays(season: number): { readonly from: CalendarDate; readonly until: CalendarDate } {
  return { from: makeDate(season - 1, firstMonth, 1), until: makeDate(season, firstMonth, 1) };
}
