import { type CalendarDate, calendarDate, yearOf } from './calendar-date';

/** A season is a calendar year. */
export type Season = number;

/** The days of a year that make a planting stand in its season, both included, as `MM-DD`. */
export type SeasonWindow = { readonly fromMonthDay: string; readonly toMonthDay: string };

/** 1 May to 31 August: common practice; a setting of the society. */
const routineSeasonWindow: SeasonWindow = { fromMonthDay: '05-01', toMonthDay: '08-31' };

/**
 * The seasons that a planting occupies: each year in which it stood on any day of the window; if none, the year it was
 * sown. October garlic counts next year; September mustard this year.
 *
 * Method: a planting stands from its first day in the ground to the day it was cleared, so the years form one run.
 *
 * @param sownOn, plantedOn  at least one of them; the earlier is its first day in the ground
 * @param clearedOn  null while it stands: it is then taken to stand in one season, the first it can reach
 * @returns     firstSeason ≤ lastSeason
 * @throws RangeError when no first day is given or it is cleared before it
 * @source      common practice
 * @example     sown 2025-10-20, cleared 2026-07-10 → 2026 to 2026
 */
export function seasonsOf(planting: {
  readonly sownOn: CalendarDate | null;
  readonly plantedOn: CalendarDate | null;
  readonly clearedOn: CalendarDate | null;
  readonly window?: SeasonWindow;
}): { firstSeason: Season; lastSeason: Season } {
  const { sownOn, plantedOn, clearedOn, window = routineSeasonWindow } = planting;
  const begun = [sownOn, plantedOn].filter((day) => day !== null).sort()[0];
  if (!begun) throw new RangeError('a planting needs the day it was sown or planted');
  if (clearedOn !== null && clearedOn < begun) throw new RangeError('cleared before it was sown');
  const first = begun <= dayIn(yearOf(begun), window.toMonthDay) ? yearOf(begun) : yearOf(begun) + 1;
  if (clearedOn === null) return { firstSeason: first, lastSeason: first };
  const last = clearedOn >= dayIn(yearOf(clearedOn), window.fromMonthDay) ? yearOf(clearedOn) : yearOf(clearedOn) - 1;
  if (last < first) return { firstSeason: yearOf(begun), lastSeason: yearOf(begun) };
  return { firstSeason: first, lastSeason: last };
}

function dayIn(year: number, monthDay: string): CalendarDate {
  return calendarDate(`${year}-${monthDay}`);
}
