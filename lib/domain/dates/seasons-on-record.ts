import type { CalendarDate } from '../calendar/calendar-date';
import { lastSeasonOf } from '../calendar/last-season-of';
import { type Season, seasonsOf, type SeasonWindow } from '../calendar/season-of';

type Seasons = { readonly firstSeason: Season; readonly lastSeason: Season };

/**
 * The seasons of a planting once a day of it is on record. Seed under cover or in a seedbed stands elsewhere: it counts from its planting.
 *
 * @param firstSeason, lastSeason  as they stand on record
 * @param begunOn    the day it went into this ground; null while it has not, or where nobody wrote it down
 * @param clearedOn  null while it stands
 * @returns          firstSeason ≤ lastSeason; those recorded, while neither day says otherwise
 * @throws RangeError where it is cleared before it was begun
 * @source           DESIGN 2, season
 * @example          rhubarb of 2022 on, cleared on 3 November 2026 → 2022 to 2026
 */
export function seasonsOnRecord(
  { firstSeason, lastSeason }: Seasons,
  { begunOn, clearedOn }: { readonly begunOn: CalendarDate | null; readonly clearedOn: CalendarDate | null },
  window: SeasonWindow,
): Seasons {
  if (begunOn) return seasonsOf({ sownOn: begunOn, plantedOn: null, clearedOn, window });
  if (!clearedOn) return { firstSeason, lastSeason };
  return { firstSeason, lastSeason: lastSeasonOf(firstSeason, clearedOn, window) };
}
