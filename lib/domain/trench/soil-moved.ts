import { diggingMethodOf } from '../catalogue/digging-methods';
import type { SoilFigures } from '../catalogue/soils';
import { wholeFrom } from '../quantity/checked';
import { runningShares } from '../quantity/running-shares';
import { type Span, spanOf } from '../quantity/span';
import type { TrenchPlan } from './trench-plan';

type Moved = {
  /** Thrown out and turned over, as it lay [mL]. */
  readonly openedMl: number;
  /** Loosened where it lies [mL]. */
  readonly forkedMl: number;
  /** Of what is thrown out [g]; null where the soil's weight is not known. */
  readonly massG: Span | null;
  /** What is thrown out, swollen, as it is laid back [mL]; null where the swell is not known. */
  readonly looseMl: Span | null;
};
export type SoilMoved = {
  readonly trenches: readonly (Moved & { readonly number: number })[];
  readonly total: Moved;
};

/**
 * The soil that a plan moves: each trench's top spit out and over, and what is loosened without being thrown.
 *
 * Method: ground × spit depth, exact in millilitres; weights and swollen volumes as running totals made whole, so that the
 * trenches sum to the total.
 *
 * @param plan  any plan; forking and mulch open nothing
 * @param soil  swell [percent] and weight as it lies [g/L], from least to most, or null
 * @returns     whole numbers ≥ 0; loose ≥ opened
 * @throws RangeError on an upturned or negative range
 * @source      the soil's own row
 * @example     1,000 × 60 × 25 cm at 30 % → 1,500,000 mL opened, 1,950,000 mL loose
 */
export function soilMoved(plan: TrenchPlan, soil: SoilFigures): SoilMoved {
  const { opensTrench, loosenedSpits } = diggingMethodOf(plan.order.method);
  const spitMl = plan.trenches.map(({ lengthCm, widthCm }) => lengthCm * widthCm * plan.order.spitDepthCm);
  const opened = spitMl.map((volume) => (opensTrench ? volume : 0));
  const forked = spitMl.map((volume) => volume * (loosenedSpits - (opensTrench ? 1 : 0)));
  const massG = sharedOut(
    opened,
    soil.inPlaceLeastGPerL,
    soil.inPlaceMostGPerL,
    (volume, gPerL) => (volume * gPerL) / 1000,
  );
  const looseMl = sharedOut(opened, soil.swellLeastPercent, soil.swellMostPercent, swollen);
  const trenches = plan.trenches.map(({ number }, at) => ({
    number,
    openedMl: opened[at] ?? 0,
    forkedMl: forked[at] ?? 0,
    massG: massG[at] ?? null,
    looseMl: looseMl[at] ?? null,
  }));
  return { trenches, total: totalOf(trenches) };
}

function swollen(volume: number, percent: number): number {
  return (volume * (100 + percent)) / 100;
}

function sharedOut(
  volumes: readonly number[],
  least: number | null,
  most: number | null,
  amountOf: (volume: number, end: number) => number,
): (Span | null)[] {
  if (!spanOf(least, most, (end) => end)) return volumes.map(() => null);
  const atEnd = (end: number | null) => runningShares(volumes, (volume) => amountOf(volume, end ?? 0));
  const [leasts, mosts] = [atEnd(least), atEnd(most)];
  return volumes.map((_, at) => ({ least: leasts[at] ?? 0, most: mosts[at] ?? 0 }));
}

function totalOf(trenches: readonly Moved[]): Moved {
  const sum = (amountOf: (trench: Moved) => number) => trenches.reduce((total, one) => total + amountOf(one), 0);
  const spanSum = (of: (trench: Moved) => Span | null) =>
    trenches.every((one) => of(one) !== null)
      ? { least: sum((one) => of(one)?.least ?? 0), most: sum((one) => of(one)?.most ?? 0) }
      : null;
  return {
    openedMl: sum(({ openedMl }) => openedMl),
    forkedMl: sum(({ forkedMl }) => forkedMl),
    massG: spanSum(({ massG }) => massG),
    looseMl: spanSum(({ looseMl }) => looseMl),
  };
}

/**
 * How many barrows the first trench's soil fills, to be wheeled to where the last will be filled.
 *
 * Method: its loose volume ÷ the barrow, rounded up once at either end of the range.
 *
 * @param moved         from `soilMoved`
 * @param barrowLitres  whole number > 0 [L]
 * @returns             whole barrows; null where the swell is not known
 * @throws RangeError   on any other barrow
 * @source              common practice
 * @example             1,950,000 mL in barrows of 85 L → 23
 */
export function openingBarrows({ trenches }: SoilMoved, barrowLitres: number): Span | null {
  const barrowMl = 1000 * wholeFrom(1, barrowLitres);
  const loose = trenches[0]?.looseMl;
  return loose ? spanOf(loose.least, loose.most, (volume) => Math.ceil(volume / barrowMl)) : null;
}
