import { type CalendarDate, yearOf } from './calendar-date';
import type { Season, SeasonWindow } from './season-of';

/**
 * The last season of a planting whose first is on record without a day, from the day it was cleared: the last year in which it
 * stood on any day of the window.
 *
 * @param firstSeason  the season it was recorded for
 * @param window       the society's season window
 * @returns            ≥ firstSeason
 * @source             as `seasonsOf`
 * @example            rhubarb of 2021 cleared on 2026-04-20 → 2025; on 2026-05-01 → 2026
 */
export function lastSeasonOf(firstSeason: Season, clearedOn: CalendarDate, window: SeasonWindow): Season {
  const year = yearOf(clearedOn);
  return Math.max(firstSeason, clearedOn >= `${year}-${window.fromMonthDay}` ? year : year - 1);
}
