import 'server-only';
import { holdingsOfMember } from '@/lib/data/holding';
import { yearOf } from '@/lib/domain/calendar/calendar-date';
import { isToCome, waysOf } from '@/lib/domain/dates/dated-planting';
import { groundSpan } from '@/lib/domain/dates/ground-span';
import { type NextStep, nextSteps } from '@/lib/domain/dates/next-steps';
import type { CropWay, Frosts } from '@/lib/domain/dates/windows-of';
import { canEnter } from '@/lib/domain/policy/standing';
import { bareKey } from '@/lib/domain/rotation/recorded-planting';
import { datesInput } from '@/lib/schemas/dates/dates';
import { othersGround } from '../ground/read-ground';
import { query, type ReadContext } from '../operation';
import { datedGround, datedOf, type PlantingOnBed } from './dated-ground';

/** One crop of a season on the holding's ground: where, in which ways, and what is done next. */
export type DatesLine = {
  readonly key: string;
  readonly cropKey: string;
  readonly cropName: string;
  readonly season: number;
  readonly isToCome: boolean;
  readonly plantings: readonly PlantingPlace[];
  readonly ways: readonly CropWay[];
  /** Whatever closes first comes first; none where it stands. */
  readonly steps: readonly NextStep[];
};

/** A planting by its bed, as a conflict or a line names it. */
export type PlantingPlace = {
  readonly id: string;
  readonly cropName: string;
  readonly season: number;
  readonly bedId: string;
  readonly bedName: string;
  readonly plotNumber: string;
};

/** When the crops of a holding are sown, planted and cleared, moved to the society's frosts, and what stands in the way. */
export const readDates = query({
  name: 'read-dates',
  allow: canEnter,
  input: datesInput,
  read: async (context, { holdingId }) => {
    const { db, scope, today } = context;
    const own = await holdingsOfMember(db, scope, scope.memberId, today);
    const holdings = holdingId ? await othersGround(context, holdingId, own) : own;
    const { plantings, conflicts, ...frosts } = await datedGround(context, holdings);
    const places = new Map(plantings.map((planting) => [planting.id, placeOf(planting)]));
    const lines = plantings
      .filter((one) => isShown(one, frosts.frosts, context))
      .map((one) => lineOf(one, frosts.frosts, context));
    return {
      ...frosts,
      today,
      units: scope.units,
      plots: holdings.flatMap(({ plots }) => plots.map(({ number }) => number)),
      lines: gathered(lines).sort(soonest),
      conflicts: conflicts.map((conflict) => ({
        ...conflict,
        planting: places.get(conflict.plantingId),
        before: 'beforeId' in conflict ? places.get(conflict.beforeId) : undefined,
      })),
    };
  },
});

/** A planting by its bed. */
export function placeOf({ id, cropName, firstSeason, bed, plotNumber }: PlantingOnBed): PlantingPlace {
  return { id, cropName, season: firstSeason, bedId: bed.id, bedName: bed.name, plotNumber };
}

/** What is to come this season or later, and what stands: the ground that was cleared, or must be by now, is not shown. */
function isShown(planting: PlantingOnBed, frosts: Frosts, { today }: Pick<ReadContext, 'today'>): boolean {
  if (planting.cropKey === bareKey || planting.clearedOn) return false;
  const dated = datedOf(planting);
  if (isToCome(dated)) return dated.season >= yearOf(today);
  const span = groundSpan(dated, frosts, today);
  return span !== null && span.from <= today ? span.clearBy === null || span.clearBy >= today : span !== null;
}

function lineOf(planting: PlantingOnBed, frosts: Frosts, { today }: Pick<ReadContext, 'today'>): DatesLine {
  const dated = datedOf(planting);
  const { cropKey, cropName } = planting;
  const ways = waysOf(dated, frosts, today);
  const line = { cropKey, cropName, season: dated.season, isToCome: isToCome(dated), ways };
  const steps = nextSteps(dated, frosts, today);
  const key = JSON.stringify([cropKey, dated.season, line.isToCome, ways.map(({ way }) => way), steps.length]);
  return { ...line, key, steps, plantings: [placeOf(planting)] };
}

function gathered(lines: readonly DatesLine[]): DatesLine[] {
  const alike = new Map<string, DatesLine>();
  for (const line of lines) {
    const before = alike.get(line.key);
    alike.set(line.key, before ? { ...before, plantings: [...before.plantings, ...line.plantings] } : line);
  }
  return [...alike.values()];
}

// In window first, by what closes soonest; then what opens soonest; then what stands.
function soonest(a: DatesLine, b: DatesLine): number {
  const rank = ({ steps: [next] }: DatesLine) =>
    next
      ? `${next.state.code === 'open' ? 0 : next.state.code === 'opens' ? 1 : 2} ${next.state.code === 'open' ? next.to : next.from}`
      : '3';
  return rank(a).localeCompare(rank(b)) || a.cropName.localeCompare(b.cropName, 'en-GB') || a.season - b.season;
}
