import { type CalendarDate, daysBetween, makeDate, yearOf } from '../calendar/calendar-date';
import type { Season } from '../calendar/season-of';

/** So many weeks make one band: with fewer, hardly two beds would lie in the same [weeks]. */
export const weeksInBand = 4;

/**
 * The weeks in which a planting was begun: when it was sown, or else planted, in bands of four weeks.
 *
 * Method: the first week of a year is its first seven days. The bands are fixed, so that none is cut to hold one bed.
 *
 * @param sownOn, plantedOn  null where nobody wrote it down; what was sown goes by that day
 * @returns                  how and the band's first week, with the year before told apart; null where no day is known, or one that is far off
 * @source                   by definition
 * @example                  onions of 2026 sown on 2026-03-02 → 'sown 9'; garlic of 2026 planted on 2025-10-20 → 'planted before 41'
 */
export function begunWeeks(
  season: Season,
  { sownOn, plantedOn }: { readonly sownOn: CalendarDate | null; readonly plantedOn: CalendarDate | null },
): string | null {
  const on = sownOn ?? plantedOn;
  if (!on) return null;
  const year = yearOf(on);
  if (year !== season && year !== season - 1) return null;
  const week = Math.floor(daysBetween(makeDate(year, 1, 1), on) / 7);
  const first = Math.floor(week / weeksInBand) * weeksInBand + 1;
  return `${sownOn ? 'sown' : 'planted'} ${year === season ? '' : 'before '}${first}`;
}
