import type { CalendarDate } from '../calendar/calendar-date';
import { notEaten } from '../catalogue/contact';
import { type Footprint, overlap } from '../ground/footprint';
import { coveredCm2 } from '../rotation/rules/rule';
import { earliestHarvest, type ManuredGround, meetingOf } from './earliest-harvest';

/** A crop in the ground, with its days as far as they are known. All footprints are of one frame. */
export type PlantingToHarvest = {
  readonly id: string;
  readonly footprint: Footprint;
  readonly cropKey: string;
  readonly begunOn: CalendarDate | null;
  /** When the first of it is to be eaten. */
  readonly harvestFrom: CalendarDate | null;
  readonly clearedOn: CalendarDate | null;
};

export type Manuring = ManuredGround & { readonly id: string; readonly footprint: Footprint };

export type HarvestWarning = {
  readonly plantingId: string;
  /**
   * The harvest is set too early; no harvest is set, and this is its first day; or uncomposted manure went on to a
   * growing crop.
   */
  readonly code: 'too-soon' | 'not-before' | 'manured-while-growing';
  /** The latest of all that touch it. */
  readonly earliestOn: CalendarDate;
  /** How much of the planting they touch. */
  readonly areaCm2: number;
  readonly manuringIds: readonly string[];
};

/**
 * What the manuring of their ground means for the harvest of plantings.
 *
 * Method: a manuring touches a planting where their footprints overlap, unless it came after the planting was cleared.
 * Its earliest harvest by `earliestHarvest` is held against the day of harvest; where that is unknown, it is told as
 * soon as it lies after the day of sowing. Green manures are not harvested.
 *
 * @param plantings  days of the calendar or null where unknown
 * @param manurings  of the same frame, in any order
 * @returns          at most one warning of each code a planting, in the order of the plantings
 * @source           as `earliestHarvest`
 * @example          half a carrot bed on raw manure of 1 March, pulled from 15 June → too soon, half its area, 1 March
 *                   of next year
 */
export function harvestWarnings(
  plantings: readonly PlantingToHarvest[],
  manurings: readonly Manuring[],
): HarvestWarning[] {
  return plantings
    .filter(({ cropKey }) => !notEaten.includes(cropKey))
    .flatMap((planting) => {
      const touching = manurings.filter((one) => touches(one, planting));
      return [
        ...warning(
          planting,
          'too-soon',
          touching.filter((one) => harvestedTooSoon(planting, one)),
        ),
        ...warning(
          planting,
          'not-before',
          touching.filter((one) => waitsOpenly(planting, one)),
        ),
        ...warning(
          planting,
          'manured-while-growing',
          touching.filter((one) => growsMeanwhile(planting, one)),
        ),
      ];
    });
}

function touches(manuring: Manuring, { footprint, clearedOn }: PlantingToHarvest): boolean {
  return overlap(manuring.footprint, footprint) !== null && (clearedOn === null || manuring.manuredOn < clearedOn);
}

function harvestedTooSoon({ cropKey, harvestFrom }: PlantingToHarvest, manuring: Manuring): boolean {
  return harvestFrom !== null && harvestFrom < earliestOn(manuring, cropKey);
}

function waitsOpenly({ cropKey, harvestFrom, begunOn }: PlantingToHarvest, manuring: Manuring): boolean {
  return harvestFrom === null && (begunOn === null || begunOn < earliestOn(manuring, cropKey));
}

function growsMeanwhile({ begunOn }: PlantingToHarvest, { manuredOn, state }: Manuring): boolean {
  return state !== 'composted' && begunOn !== null && manuredOn > begunOn;
}

function earliestOn(manuring: Manuring, cropKey: string): CalendarDate {
  return earliestHarvest(manuring, meetingOf(cropKey)).earliestOn;
}

function warning(
  { id, footprint, cropKey }: PlantingToHarvest,
  code: HarvestWarning['code'],
  manurings: readonly Manuring[],
): HarvestWarning[] {
  const last = manurings
    .map((one) => earliestOn(one, cropKey))
    .sort()
    .at(-1);
  if (!last) return [];
  return [
    {
      plantingId: id,
      code,
      earliestOn: last,
      areaCm2: coveredCm2(footprint, manurings),
      manuringIds: manurings.map((one) => one.id),
    },
  ];
}
