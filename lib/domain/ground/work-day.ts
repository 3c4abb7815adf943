import { type CalendarDate, makeDate } from '../calendar/calendar-date';
import type { Season } from '../calendar/season-of';

/** Work as far as its time is on record. */
export type WorkTime = { readonly season: Season; readonly doneOn: CalendarDate | null };

/**
 * The day that work is reckoned from where nobody wrote it down: 1 November of the year before its season, when most
 * ground is manured.
 *
 * @returns  the day on record, or that one
 * @source   common practice
 * @example  for 2027, no day on record → 2026-11-01
 */
export function likelyDay({ season, doneOn }: WorkTime): CalendarDate {
  // The calendar begins with 1900.
  return doneOn ?? makeDate(Math.max(1900, season - 1), 11, 1);
}

/**
 * The latest day on which work can have been done: what a wait is counted from where its day is not on record.
 *
 * Method: what is dug in for a season is dug in by the end of April, before its crops stand; what is left on top may come until
 * the end of August; neither comes later than today.
 *
 * @param today  no work is done later
 * @returns      the day on record, or the latest that it can have been
 * @source       common practice
 * @example      dug in for 2026, no day on record, today 2027-02-01 → 2026-04-30; for 2027 → 2027-02-01
 */
export function latestDay(work: WorkTime & { readonly incorporated: boolean }, today: CalendarDate): CalendarDate {
  if (work.doneOn) return work.doneOn;
  const last = work.incorporated ? makeDate(work.season, 4, 30) : makeDate(work.season, 8, 31);
  return last < today ? last : today;
}
