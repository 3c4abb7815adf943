import { type CalendarDate, daysBetween } from '../calendar/calendar-date';
import type { Season } from '../calendar/season-of';
import type { Footprint } from '../ground/footprint';
import { type CropWay, type DatedWindow, type Frosts, takesGround, windowsOf } from './windows-of';

/** A planting as its dates see it. */
export type DatedPlanting = {
  readonly id: string;
  readonly cropKey: string;
  readonly season: Season;
  readonly footprint: Footprint;
  /** Recorded ahead of its season, and true till a day of sowing or planting is on record. */
  readonly planned: boolean;
  readonly sownOn: CalendarDate | null;
  readonly plantedOn: CalendarDate | null;
  readonly clearedOn: CalendarDate | null;
};

/** Whether it is still to be sown or planted: planned, with neither day on record. */
export function isToCome({ planned, sownOn, plantedOn }: DatedPlanting): boolean {
  return planned && !sownOn && !plantedOn;
}

/**
 * Whether a crop of a season can still go into its ground on a day, in one way at least.
 *
 * @returns false for a crop that the catalogue does not know
 * @throws RangeError as `windowsOf`
 * @source  the catalogue's windows
 * @example carrots of 2027 → true up to 10 July 2027, at the reference frosts
 */
export function canStillGoIn(cropKey: string, season: Season, frosts: Frosts, today: CalendarDate): boolean {
  return windowsOf(cropKey, season, frosts).some((way) => lastGroundDay(way) >= today);
}

/**
 * The ways in which a planting may be or was grown.
 *
 * Method: once begun, the way that has a window nearest to the day it was begun. Till then, the ways whose ground can still be taken on the
 * day; where all are past, or where it is only on record that it grew, all of them.
 *
 * @param today  the day asked about
 * @returns      at least one way where the catalogue knows the crop, none elsewhere
 * @throws RangeError as `windowsOf`
 * @source       the catalogue's windows
 * @example      garlic planned for 2027, on 5 December 2026 → the spring planting alone
 */
export function waysOf(planting: DatedPlanting, frosts: Frosts, today: CalendarDate): CropWay[] {
  const ways = windowsOf(planting.cropKey, planting.season, frosts);
  const begun = planting.plantedOn ?? planting.sownOn;
  if (begun) {
    const [nearest] = ways.toSorted((a, b) => awayFrom(a, planting, begun) - awayFrom(b, planting, begun));
    return nearest ? [nearest] : [];
  }
  const open = isToCome(planting) ? ways.filter((way) => lastGroundDay(way) >= today) : [];
  return open.length ? open : ways;
}

/** Whether the seed of a planting that was sown, and not planted, went in where it is to stand: the nearer window says so. */
export function isSownInPlace(planting: DatedPlanting, frosts: Frosts): boolean {
  const { sownOn } = planting;
  if (!sownOn) return false;
  const windows = windowsOf(planting.cropKey, planting.season, frosts).flatMap((way) => way.windows);
  const away = (steps: readonly string[]) =>
    Math.min(...windows.filter(({ step }) => steps.includes(step)).map((window) => daysFrom(window, sownOn)));
  return away(['in-place']) <= away(['under-cover', 'seedbed']);
}

/** The last day on which a way can go into its ground. */
export function lastGroundDay({ windows }: CropWay): CalendarDate {
  const [last] = windows
    .filter(({ step }) => takesGround(step))
    .map(({ to }) => to)
    .sort()
    .reverse();
  if (!last) throw new RangeError('a way of growing takes ground');
  return last;
}

function awayFrom({ windows }: CropWay, { plantedOn }: DatedPlanting, begun: CalendarDate): number {
  const steps = plantedOn ? ['plant-out'] : ['under-cover', 'seedbed', 'in-place'];
  const begins = windows.filter(({ step }) => steps.includes(step));
  // Planted, of a way that is only sown, or the other way round: whatever of it is nearest.
  const near = begins.length ? begins : windows.filter(({ step }) => step !== 'clear');
  return Math.min(...near.map((window) => daysFrom(window, begun))) + (begins.length ? 0 : 1);
}

function daysFrom({ from, to }: DatedWindow, day: CalendarDate): number {
  if (day < from) return daysBetween(day, from);
  return day > to ? daysBetween(to, day) : 0;
}
