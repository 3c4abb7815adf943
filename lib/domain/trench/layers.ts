import { areaCm2 } from '../ground/footprint';
import { runningShares } from '../quantity/running-shares';
import { checkedDressing, type Dressing, type Place } from './dressing';
import type { TrenchPlan } from './trench-plan';

export type MealAmount = {
  readonly key: string;
  readonly into: Place;
  readonly massG: number;
  /** Jars of it, not rounded; null where none has been weighed. */
  readonly jars: number | null;
};
export type Amounts = {
  readonly areaCm2: number;
  readonly manureBottomG: number;
  readonly manureBottomMl: number;
  readonly manureTopG: number;
  readonly manureTopMl: number;
  /** Barrow-loads of manure, not rounded. */
  readonly loads: number;
  readonly meals: readonly MealAmount[];
  readonly strawG: number;
};
/** The barrow one is on when a trench is done, and what is left in it. */
export type BarrowCount = { readonly number: number; readonly leftMl: number };
export type TrenchLayers = Amounts & { readonly number: number; readonly barrow: BarrowCount };
export type Layers = {
  readonly dressing: Dressing;
  readonly trenches: readonly TrenchLayers[];
  /** Whole barrow-loads to fetch, rounded up once. */
  readonly total: Amounts & { readonly wholeLoads: number };
};

/**
 * What goes into each trench, and in all: manure below and above, meals, straw, and how the barrows run out.
 *
 * Method: area × rate as running totals in order of work, made whole: weights to the nearest gram, volumes up to the whole
 * millilitre, so that the whole loads are those of the exact volume. Bottom and top draw on the same barrow in turn.
 *
 * @param plan      any plan
 * @param dressing  as `checkedDressing`
 * @returns         whole grams and millilitres ≥ 0, whose trenches sum exactly to the total
 * @throws RangeError as `checkedDressing`
 * @source          common practice; densities and jars: as given
 * @example         6 trenches of 0.72 m², 3 + 2 kg/m² at 400 g/L, barrow of 85 L → 9 L a trench, 54 L in all, 1 load
 */
export function layersOf(plan: TrenchPlan, dressing: Dressing): Layers {
  checkedDressing(dressing, plan.order.method);
  const areas = plan.trenches.map(({ footprint }) => areaCm2(footprint));
  const grams = (gPerM2: number) => runningShares(areas, (area) => (area * gPerM2) / 10_000);
  const [manureG, manureMl] = [manureShares(areas, dressing, false), manureShares(areas, dressing, true)];
  const mealsG = dressing.meals.map(({ gPerM2 }) => grams(gPerM2));
  const strawG = grams(dressing.strawGPerM2);
  const amounts = areas.map((area, at) => ({
    areaCm2: area,
    manureBottomG: manureG[2 * at] ?? 0,
    manureTopG: manureG[2 * at + 1] ?? 0,
    manureBottomMl: manureMl[2 * at] ?? 0,
    manureTopMl: manureMl[2 * at + 1] ?? 0,
    mealsG: mealsG.map((shares) => shares[at] ?? 0),
    strawG: strawG[at] ?? 0,
  }));
  const barrowMl = 1000 * (dressing.manure?.barrowLitres ?? 0);
  let usedMl = 0;
  const trenches = amounts.map((one, at) => {
    usedMl += one.manureBottomMl + one.manureTopMl;
    return { ...withUnits(one, dressing), number: at + 1, barrow: barrowAfter(usedMl, barrowMl) };
  });
  return {
    dressing,
    trenches,
    total: { ...sumOfAmounts(trenches, dressing), wholeLoads: barrowAfter(usedMl, barrowMl).number },
  };
}

// Bottom, top, bottom, top: the order in which the barrow is emptied. One running total, so that all of it is rounded once.
function manureShares(areas: readonly number[], { manure }: Dressing, isVolume: boolean): number[] {
  if (!manure) return areas.flatMap(() => [0, 0]);
  const doses = areas.flatMap((area) => [area * manure.bottomGPerM2, area * manure.topGPerM2]);
  return isVolume
    ? runningShares(doses, (dose) => dose / (10 * manure.densityGPerL), Math.ceil)
    : runningShares(doses, (dose) => dose / 10_000);
}

function barrowAfter(usedMl: number, barrowMl: number): BarrowCount {
  if (barrowMl === 0) return { number: 0, leftMl: 0 };
  const number = Math.ceil(usedMl / barrowMl);
  return { number, leftMl: number * barrowMl - usedMl };
}

type Weights = Omit<Amounts, 'loads' | 'meals'> & { readonly mealsG: readonly number[] };

function withUnits({ mealsG, ...weights }: Weights, { manure, meals }: Dressing): Amounts {
  return {
    ...weights,
    loads: manure ? (weights.manureBottomMl + weights.manureTopMl) / (1000 * manure.barrowLitres) : 0,
    meals: meals.map(({ key, into, jarG }, at) => {
      const massG = mealsG[at] ?? 0;
      return { key, into, massG, jars: jarG === null ? null : massG / jarG };
    }),
  };
}

/**
 * The amounts of several trenches together.
 *
 * Method: sums of whole parts, so exact; loads and jars are worked out from the sums.
 *
 * @param trenches  of one `layersOf`
 * @param dressing  the one they were laid from
 * @returns         nothing of anything for no trenches
 * @source          sums
 * @example         two trenches of 9 L, barrow of 85 L → 18 L, 0.21 loads
 */
export function sumOfAmounts(trenches: readonly Amounts[], dressing: Dressing): Amounts {
  const sum = (amountOf: (trench: Amounts) => number) => trenches.reduce((total, one) => total + amountOf(one), 0);
  const weights = {
    areaCm2: sum((one) => one.areaCm2),
    manureBottomG: sum((one) => one.manureBottomG),
    manureTopG: sum((one) => one.manureTopG),
    manureBottomMl: sum((one) => one.manureBottomMl),
    manureTopMl: sum((one) => one.manureTopMl),
    mealsG: dressing.meals.map((_, at) => sum((one) => one.meals[at]?.massG ?? 0)),
    strawG: sum((one) => one.strawG),
  };
  return withUnits(weights, dressing);
}
