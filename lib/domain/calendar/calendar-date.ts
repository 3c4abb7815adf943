import { addDays as shift, differenceInCalendarDays, isValid, parseISO } from 'date-fns';

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

function pad(value: number, width: number): string {
  return String(value).padStart(width, '0');
}
