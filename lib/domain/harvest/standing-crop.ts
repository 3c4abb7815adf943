import { type CalendarDate, yearOf } from '../calendar/calendar-date';
import type { Season } from '../calendar/season-of';
import { bareKey } from '../rotation/recorded-planting';

/** A planting as far as its days and seasons go. */
export type Growing = {
  readonly cropKey: string;
  readonly firstSeason: Season;
  readonly lastSeason: Season;
  readonly sownOn: CalendarDate | null;
  readonly plantedOn: CalendarDate | null;
  readonly clearedOn: CalendarDate | null;
};

/** The first day that a planting was in the ground; null where nobody wrote it down. */
export function begunOn({ sownOn, plantedOn }: Growing): CalendarDate | null {
  if (sownOn && plantedOn) return sownOn < plantedOn ? sownOn : plantedOn;
  return sownOn ?? plantedOn;
}

/** Whether there is, or was, something to pick of a planting by a day: it is in the ground, or its season has come. */
export function hasGrown(planting: Growing, today: CalendarDate): boolean {
  const begun = begunOn(planting);
  if (planting.cropKey === bareKey) return false;
  return begun ? begun <= today : planting.firstSeason <= yearOf(today);
}

/**
 * Whether a planting stands on a day, as far as the record goes.
 *
 * Method: it has grown, and is not cleared by that day; without a day of clearing it stands to the end of its last season, and on
 * until the season's first day in the next year, since leeks and parsnips are lifted all winter.
 *
 * @param seasonFrom  the first day of the society's season window, as `MM-DD`
 * @source            common practice
 * @example           leeks of 2026 without a day: standing on 2027-03-01, no longer on 2027-05-01
 */
export function standsOn(planting: Growing, today: CalendarDate, seasonFrom: string): boolean {
  if (!hasGrown(planting, today)) return false;
  if (planting.clearedOn) return planting.clearedOn > today;
  const year = yearOf(today);
  return planting.lastSeason >= year || (planting.lastSeason === year - 1 && today < `${year}-${seasonFrom}`);
}

/**
 * The season that a harvest counts for: the year of its day, held within the seasons of its planting.
 *
 * @param on  the day of the harvest
 * @returns   from the planting's first season to its last
 * @source    common practice: leeks lifted in March count for the summer they grew in, rhubarb for each year
 * @example   leeks of 2026 lifted on 2027-03-01 → 2026
 */
export function harvestSeason(
  { firstSeason, lastSeason }: Pick<Growing, 'firstSeason' | 'lastSeason'>,
  on: CalendarDate,
): Season {
  return Math.min(lastSeason, Math.max(firstSeason, yearOf(on)));
}

/**
 * Whether all is picked that a planting will give for a season: it was cleared, or the year is over.
 *
 * @param today   the day it is asked
 * @source        common practice
 * @example       onions of 2026, cleared on 2026-08-20: picked from that day on; not cleared: from 2027-01-01 on
 */
export function isPickedOut(planting: Pick<Growing, 'clearedOn'>, season: Season, today: CalendarDate): boolean {
  return (planting.clearedOn !== null && planting.clearedOn <= today) || season < yearOf(today);
}
