import { type CalendarDate, makeDate } from '../calendar/calendar-date';
import type { Season } from '../calendar/season-of';
import type { ManureState } from '../catalogue/harvest-intervals';
import type { Footprint } from '../ground/footprint';
import { latestDay, type WorkTime } from '../ground/work-day';
import { type EarliestHarvest, earliestHarvest, type Meeting, meetingOf } from './earliest-harvest';
import { harvestWarnings, type Manuring, type PlantingToHarvest } from './harvest-warnings';
import { manureStateOf } from './manure-state';

/** A crop in the ground, or planned for it. */
export type GrownCrop = Omit<PlantingToHarvest, 'harvestFrom'> & {
  readonly firstSeason: Season;
  readonly lastSeason: Season;
};

/** Manure put on some ground, as far as it is on record. */
export type ManuringRecord = WorkTime & {
  readonly id: string;
  readonly footprint: Footprint;
  readonly materialKey: string | null;
  readonly ageMonths: number | null;
  readonly incorporated: boolean;
};

export type HarvestWait = {
  readonly plantingId: string;
  /** The latest of all manurings that touch it. */
  readonly earliestOn: CalendarDate;
  /** Of the manuring that sets the date neither the day nor the age is on record: it is the worst case. */
  readonly isWorstCase: boolean;
  /** Manure that was not composted went on when the crop stood there. */
  readonly whileGrowing: boolean;
  /** How much of the planting they touch. */
  readonly areaCm2: number;
  readonly meeting: Meeting | null;
  readonly manurings: readonly (EarliestHarvest & {
    readonly id: string;
    readonly manuredOn: CalendarDate;
    readonly isDayKnown: boolean;
    readonly state: ManureState;
    readonly monthsHeaped: number | null;
  })[];
};

/**
 * Which crops have to wait for their harvest yet, since their ground had manure.
 *
 * Method: `harvestWarnings` on what is on record. Manure without a day counts from the latest that it can have been. Manure dug in
 * for a later season came after the crop was lifted. For a crop that is not begun, a wait that is over by May of its year is left
 * out: what is still to be sown keeps it by growing.
 *
 * @param crops      of one frame; begun and cleared as far as known
 * @param manurings  of the same frame
 * @param today      waits that end by then are over
 * @returns          one wait a crop, in their order
 * @source           as `earliestHarvest`
 * @example          carrots planned for 2027 on manure of 4 months, dug in on 10 November 2026 → not before 10 July 2027
 */
export function harvestWaits(
  crops: readonly GrownCrop[],
  manurings: readonly ManuringRecord[],
  today: CalendarDate,
): HarvestWait[] {
  return crops.flatMap((crop) => {
    const spread = manurings.flatMap((one) => (concerns(one, crop) ? spreadOf(one, crop, today) : []));
    const warnings = harvestWarnings([{ ...crop, harvestFrom: null }], spread);
    const last = warnings
      .map(({ earliestOn }) => earliestOn)
      .sort()
      .at(-1);
    if (!last || last <= today) return [];
    const touching = new Set(warnings.flatMap(({ manuringIds }) => manuringIds));
    const meeting = meetingOf(crop.cropKey);
    const told = spread.filter(({ id }) => touching.has(id)).map((one) => toldOf(one, meeting));
    return [
      {
        plantingId: crop.id,
        earliestOn: last,
        whileGrowing: warnings.some(({ code }) => code === 'manured-while-growing'),
        areaCm2: Math.max(...warnings.map(({ areaCm2 }) => areaCm2)),
        meeting,
        manurings: told,
        isWorstCase: told
          .filter(({ earliestOn }) => earliestOn === last)
          .every(({ isDayKnown, monthsHeaped }) => !isDayKnown && monthsHeaped === null),
      },
    ];
  });
}

type Spread = Manuring & { readonly isDayKnown: boolean };

function toldOf({ id, isDayKnown, ...ground }: Spread, meeting: Meeting | null): HarvestWait['manurings'][number] {
  const { manuredOn, state, monthsHeaped } = ground;
  return { id, isDayKnown, manuredOn, state, monthsHeaped, ...earliestHarvest(ground, meeting) };
}

function concerns({ season, incorporated }: ManuringRecord, { lastSeason }: GrownCrop): boolean {
  return season <= lastSeason || !incorporated;
}

function spreadOf(one: ManuringRecord, { begunOn, cropKey, firstSeason }: GrownCrop, today: CalendarDate): Spread[] {
  const known = manureStateOf(one.materialKey, one.ageMonths);
  if (!known) return [];
  const { id, footprint, incorporated, doneOn } = one;
  const spread = {
    id,
    footprint,
    incorporated,
    ...known,
    manuredOn: latestDay(one, today),
    isDayKnown: doneOn !== null,
  };
  if (begunOn !== null) return [spread];
  const byThen = makeDate(firstSeason, 5, 1);
  return earliestHarvest(spread, meetingOf(cropKey)).earliestOn <= byThen ? [] : [spread];
}
