import { type CalendarDate, daysBetween } from '../calendar/calendar-date';
import type { Season } from '../calendar/season-of';
import { type Footprint, overlap } from '../ground/footprint';
import { type DatedPlanting, isToCome } from './dated-planting';
import { type GroundSpan, groundSpan } from './ground-span';
import { type DateRules, isEdge } from './conflicts-on';

/** A ground sheet with trenches left. */
export type UnfinishedSheet = {
  readonly id: string;
  readonly season: Season;
  readonly footprint: Footprint;
  readonly done: number;
  readonly total: number;
  /** The first and the last day for it. */
  readonly from: CalendarDate;
  readonly until: CalendarDate;
};

/** Lime and manure too near each other on ground that both touched, and what was to be waited for. */
export type NearClash = {
  readonly footprint: Footprint;
  readonly days: number;
  readonly daysWanted: number;
};

/** A harvest that has to wait for the manure of its ground. */
export type WaitingHarvest = { readonly plantingId: string; readonly earliestOn: CalendarDate };

/** What is not right yet with the ground of a planting that is still to come. */
export type GroundConflict =
  /** Ground to be finished before it goes in; late: by its sheet it is finished only after that. */
  | {
      readonly code: 'ground-to-finish';
      readonly plantingId: string;
      readonly sheetId: string;
      readonly trenchesLeft: number;
      readonly isBegun: boolean;
      readonly from: CalendarDate;
      readonly until: CalendarDate;
      readonly wantedFrom: CalendarDate;
      readonly wantedBy: CalendarDate;
      readonly isLate: boolean;
    }
  | {
      readonly code: 'lime-and-manure';
      readonly plantingId: string;
      readonly days: number;
      readonly daysWanted: number;
    }
  /** It may not be harvested before a day that comes after its ground is cleared. */
  | {
      readonly code: 'harvest-waits';
      readonly plantingId: string;
      readonly earliestOn: CalendarDate;
      readonly clearBy: CalendarDate;
      readonly daysLate: number;
    };

type Ground = {
  readonly sheets: readonly UnfinishedSheet[];
  readonly clashes: readonly NearClash[];
  readonly waits: readonly WaitingHarvest[];
};

/**
 * Whether the ground of the plantings that are still to come is ready for them.
 *
 * Method: a sheet of the planting's season on its ground has trenches left; lime and manure lay too near each other there; or the wait from
 * manure to harvest lasts longer than the crop may stand. Mere edges are let be.
 *
 * @param plantings  of one frame
 * @param ground     of the same frame: what `diggingOf`, `limeClashes` and `harvestWaits` found
 * @returns          by planting in the order given
 * @throws RangeError as `windowsOf`
 * @source           the catalogue's windows, and theirs
 * @example          garlic to go in by 30 November, 4 trenches of its bed left and the sheet's last day 12 December → to finish, late
 */
export function groundReady(plantings: readonly DatedPlanting[], ground: Ground, rules: DateRules): GroundConflict[] {
  return plantings.filter(isToCome).flatMap((planting): GroundConflict[] => {
    const span = groundSpan(planting, rules.frosts, rules.today);
    if (!span) return [];
    const touches = ({ footprint }: { readonly footprint: Footprint }) => {
      const shared = overlap(footprint, planting.footprint);
      return shared !== null && !isEdge(shared, planting.footprint, rules);
    };
    const sheets = ground.sheets.filter(({ season, done, total }) => season === planting.season && done < total);
    return [
      ...sheets.filter(touches).map((sheet) => toFinish(planting.id, sheet, span, rules.today)),
      ...ground.clashes.filter(touches).map(({ days, daysWanted }) => ({
        code: 'lime-and-manure' as const,
        plantingId: planting.id,
        days,
        daysWanted,
      })),
      ...ground.waits.filter(({ plantingId }) => plantingId === planting.id).flatMap((wait) => waits(wait, span)),
    ];
  });
}

function toFinish(
  plantingId: string,
  sheet: UnfinishedSheet,
  { from, to }: GroundSpan,
  today: CalendarDate,
): GroundConflict {
  const { id: sheetId, from: sheetFrom, until, done, total } = sheet;
  const isLate = (until > today ? until : today) > to;
  const days = { from: sheetFrom, until, wantedFrom: from, wantedBy: to };
  return {
    code: 'ground-to-finish',
    plantingId,
    sheetId,
    trenchesLeft: total - done,
    isBegun: done > 0,
    ...days,
    isLate,
  };
}

function waits({ plantingId, earliestOn }: WaitingHarvest, { clearBy }: GroundSpan): GroundConflict[] {
  if (!clearBy || earliestOn <= clearBy) return [];
  return [{ code: 'harvest-waits', plantingId, earliestOn, clearBy, daysLate: daysBetween(clearBy, earliestOn) }];
}
