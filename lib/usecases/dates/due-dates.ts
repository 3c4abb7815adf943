import 'server-only';
import { addDays, type CalendarDate, daysBetween } from '@/lib/domain/calendar/calendar-date';
import { type NextStep, nextSteps } from '@/lib/domain/dates/next-steps';
import type { HoldingOnDay } from '@/lib/data/holding';
import type { ReadContext } from '../operation';
import { type DatedGround, datedGround, datedOf } from './dated-ground';
import { placeOf, type PlantingPlace } from './read-dates';

/** A crop whose sowing or planting is in its window, on one bed or several. */
export type InWindow = {
  readonly code: 'sow';
  readonly cropKey: string;
  readonly cropName: string;
  readonly season: number;
  readonly step: NextStep;
  readonly daysLeft: number;
  /** What may be done instead, later. */
  readonly otherwise: NextStep | null;
  readonly plantings: readonly PlantingPlace[];
  /** Trenches left on the sheets of their ground. */
  readonly trenchesLeft: number;
  /** The crops that stand on their ground yet, by name. */
  readonly standing: readonly string[];
};

/** What the dates want done this week. */
export type DatesDue =
  | InWindow
  /** Crops that have longer than a fortnight yet, in one line, closing soonest first. */
  | { readonly code: 'also-in-window'; readonly crops: readonly InWindow[] }
  | {
      readonly code: 'clear-for';
      readonly before: PlantingPlace;
      readonly next: PlantingPlace;
      readonly by: CalendarDate;
      readonly daysLeft: number;
    }
  | {
      readonly code: 'ready-ground';
      readonly sheetId: string;
      readonly trenchesLeft: number;
      readonly next: PlantingPlace;
      readonly by: CalendarDate;
      readonly daysLeft: number;
    }
  /** Plantings that cannot be kept as they are planned. */
  | { readonly code: 'clash'; readonly plantings: readonly PlantingPlace[] };

/** Days: a window that closes sooner has a line of its own; ground is asked for so long before the last day of its crop; a sheet announces itself so long ahead. */
const [closingDays, aheadDays, sheetAheadDays] = [14, 28, 14];

type At = Pick<ReadContext, 'db' | 'scope' | 'today'>;

/** Sowing, planting, clearing and ground that want doing now, closing soonest first. Recording the day makes each of them go. */
export async function dueOfDates(context: At, holdings: readonly HoldingOnDay[]): Promise<DatesDue[]> {
  const ground = await datedGround(context, holdings);
  const { today } = context;
  const [soon, later] = split(inWindow(ground, today));
  const [only, ...more] = later;
  const also =
    only && more.length === 0 ? [only] : later.length ? [{ code: 'also-in-window' as const, crops: later }] : [];
  return [...clashes(ground), ...soon, ...toClear(ground, today), ...toReady(ground, today), ...also];
}

function split(crops: readonly InWindow[]): [InWindow[], InWindow[]] {
  const sorted = crops.toSorted((a, b) => a.daysLeft - b.daysLeft || a.cropName.localeCompare(b.cropName, 'en-GB'));
  return [sorted.filter((one) => one.daysLeft < closingDays), sorted.filter((one) => one.daysLeft >= closingDays)];
}

function inWindow(ground: DatedGround, today: CalendarDate): InWindow[] {
  const crops = new Map<string, InWindow>();
  for (const planting of ground.plantings) {
    const steps = nextSteps(datedOf(planting), ground.frosts, today);
    const step = steps.find(({ state }) => state.code === 'open');
    if (step?.state.code !== 'open') continue;
    const { cropKey, cropName, firstSeason: season } = planting;
    const key = `${cropKey} ${season} ${step.way} ${step.step}`;
    const before = crops.get(key);
    crops.set(key, {
      code: 'sow',
      cropKey,
      cropName,
      season,
      step,
      daysLeft: step.state.daysLeft,
      otherwise: steps.find(({ to }) => to > step.to) ?? null,
      plantings: [...(before?.plantings ?? []), placeOf(planting)],
      trenchesLeft: (before?.trenchesLeft ?? 0) + trenchesLeft(ground, planting.id),
      standing: [...new Set([...(before?.standing ?? []), ...standingOn(ground, planting.id)])],
    });
  }
  return [...crops.values()];
}

function trenchesLeft({ conflicts }: DatedGround, plantingId: string): number {
  return conflicts
    .map((one) => (one.code === 'ground-to-finish' && one.plantingId === plantingId ? one.trenchesLeft : 0))
    .reduce((sum, left) => sum + left, 0);
}

/** What stands on the ground of a planting and is not planned itself. */
function standingOn({ conflicts, plantings }: DatedGround, plantingId: string): string[] {
  return conflicts.flatMap((one) => {
    if (one.plantingId !== plantingId || !('beforeId' in one)) return [];
    return plantings.filter(({ id, planned }) => id === one.beforeId && !planned).map(({ cropName }) => cropName);
  });
}

function places({ plantings }: DatedGround): ReadonlyMap<string, PlantingPlace> {
  return new Map(plantings.map((planting) => [planting.id, placeOf(planting)]));
}

// A crop is cleared once, however many beds wait for its ground: for whichever wants it first.
function toClear(ground: DatedGround, today: CalendarDate): DatesDue[] {
  const placeIn = places(ground);
  const due = new Map<string, Extract<DatesDue, { code: 'clear-for' }>>();
  for (const one of ground.conflicts) {
    if (one.code !== 'stands-too-long' && one.code !== 'stands-on') continue;
    const [before, next] = [placeIn.get(one.beforeId), placeIn.get(one.plantingId)];
    const stands = ground.plantings.find(({ id }) => id === one.beforeId)?.planned === false;
    if (!before || !next || !stands || addDays(today, aheadDays) < one.wantedBy) continue;
    const by = due.get(before.id)?.by;
    if (by === undefined || one.wantedBy < by)
      due.set(before.id, {
        code: 'clear-for',
        before,
        next,
        by: one.wantedBy,
        daysLeft: daysBetween(today, one.wantedBy),
      });
  }
  return [...due.values()].sort((a, b) => a.daysLeft - b.daysLeft);
}

// Sheets that are begun, or whose time has come, stand on the page by themselves.
function toReady(ground: DatedGround, today: CalendarDate): DatesDue[] {
  const placeIn = places(ground);
  return ground.conflicts.flatMap((one) => {
    if (one.code !== 'ground-to-finish' || one.isBegun || one.from <= addDays(today, sheetAheadDays)) return [];
    const next = placeIn.get(one.plantingId);
    if (!next || addDays(today, aheadDays) < one.wantedFrom) return [];
    const { sheetId, trenchesLeft: left, wantedBy: by } = one;
    return [{ code: 'ready-ground', sheetId, trenchesLeft: left, next, by, daysLeft: daysBetween(today, by) }];
  });
}

function clashes(ground: DatedGround): DatesDue[] {
  const placeIn = places(ground);
  const hard = ground.conflicts.filter(
    (one) =>
      (one.code === 'stands-too-long' && one.isCertain) || one.code === 'too-late' || one.code === 'harvest-waits',
  );
  const plantings = [...new Set(hard.map(({ plantingId }) => plantingId))].flatMap((id) => placeIn.get(id) ?? []);
  return plantings.length ? [{ code: 'clash', plantings }] : [];
}
