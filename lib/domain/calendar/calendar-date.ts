import { addDays as shift, addMonths as shiftMonths, differenceInCalendarDays, isValid, parseISO } from 'date-fns';

/** A calendar day written `YYYY-MM-DD`, without time or zone. */
export type CalendarDate = string & { readonly __brand: 'CalendarDate' };

const shape = /^(19|20|21)\d\d-\d\d-\d\d$/;

/** Whether a text names a real day from 1900-01-01 to 2199-12-31. */
export function isCalendarDate(text: string): text is CalendarDate {
  return shape.test(text) && isValid(parseISO(text));
}

/**
 * A text as a calendar day.
 *
 * @param text  `YYYY-MM-DD`, a day that exists, from 1900-01-01 to 2199-12-31
 * @throws RangeError on anything else, such as 31 February
 * @example calendarDate('2026-11-21')
 */
export function calendarDate(text: string): CalendarDate {
  if (!isCalendarDate(text)) throw new RangeError(`not a calendar day from 1900 to 2199: ${text}`);
  return text;
}

/**
 * The day of a year, month and day of the month.
 *
 * @throws RangeError where there is no such day
 * @example makeDate(2026, 5, 1) → '2026-05-01'
 */
export function makeDate(year: number, month: number, day: number): CalendarDate {
  return calendarDate(`${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`);
}

/**
 * The day a number of days later, or earlier where negative.
 *
 * @throws RangeError on a fraction, or past the years 1900 to 2199
 * @example addDays('2026-12-31', 1) → '2027-01-01'
 */
export function addDays(day: CalendarDate, days: number): CalendarDate {
  if (!Number.isSafeInteger(days)) throw new RangeError(`not a whole number of days: ${days}`);
  const moved = shift(parseISO(day), days);
  return makeDate(moved.getFullYear(), moved.getMonth() + 1, moved.getDate());
}

/**
 * The same day of the month a number of months later; where that month is shorter, its last day.
 *
 * @throws RangeError on a fraction, or past the years 1900 to 2199
 * @example addMonths('2026-08-31', 6) → '2027-02-28'
 */
export function addMonths(day: CalendarDate, months: number): CalendarDate {
  if (!Number.isSafeInteger(months)) throw new RangeError(`not a whole number of months: ${months}`);
  const moved = shiftMonths(parseISO(day), months);
  return makeDate(moved.getFullYear(), moved.getMonth() + 1, moved.getDate());
}

/**
 * Whether a day falls within so many years that begin with another: up to the eve of the same day of the year.
 *
 * Method: 29 February counts as a day of every year here, so that a year begun on it ends with 28 February.
 *
 * @param years  whole number ≥ 0
 * @example withinYears('2026-03-01', '2027-02-28', 1) → true; '2027-03-01' → false
 */
export function withinYears(from: CalendarDate, day: CalendarDate, years: number): boolean {
  if (!Number.isSafeInteger(years) || years < 0) throw new RangeError(`whole years from 0: ${years}`);
  return day >= from && day < `${yearOf(from) + years}${from.slice(4)}`;
}

/**
 * Days from one day to another; negative when the second is earlier.
 *
 * @example daysBetween('2026-11-01', '2026-12-01') → 30
 */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return differenceInCalendarDays(parseISO(to), parseISO(from));
}

/** The calendar year of a day. */
export function yearOf(day: CalendarDate): number {
  return Number(day.slice(0, 4));
}

/** The month of a day, 1 to 12. */
export function monthOf(day: CalendarDate): number {
  return Number(day.slice(5, 7));
}

function pad(value: number, width: number): string {
  return String(value).padStart(width, '0');
}
