import { type DiggingMethod, diggingMethodOf } from '../catalogue/digging-methods';
import { wholeFrom } from '../quantity/checked';

/** Into the bottom of the opened trench, or into the top spit; without digging the top is the surface. */
export type Place = 'bottom' | 'top';

export type Manure = {
  readonly densityGPerL: number;
  readonly bottomGPerM2: number;
  readonly topGPerM2: number;
  readonly barrowLitres: number;
};
export type Meal = {
  readonly key: string;
  readonly gPerM2: number;
  readonly into: Place;
  /** What one jar of it weighs; null until one has been weighed. */
  readonly jarG: number | null;
};
/** What is laid into the ground while it is dug. */
export type Dressing = {
  readonly manure: Manure | null;
  readonly meals: readonly Meal[];
  readonly strawGPerM2: number;
};

/**
 * A dressing that can be laid by this method.
 *
 * @param dressing  rates [g/m²], density [g/L], barrow [L] and jar [g] in whole numbers > 0; one of manure's two places, and
 *                  straw, may be 0
 * @param method    forking and mulch open nothing, so nothing goes into the bottom
 * @returns         the same dressing
 * @throws RangeError on a fraction, a negative, a manure or a meal of no rate, a material without weight, or a bottom that is
 *                  never opened
 * @source          common practice
 * @example         3,000 g/m² of manure in the bottom and 2,000 in the top, for double digging → itself; for mulch → refused
 */
export function checkedDressing(dressing: Dressing, method: DiggingMethod): Dressing {
  const { manure, meals, strawGPerM2 } = dressing;
  wholeFrom(0, strawGPerM2);
  if (manure) {
    for (const rate of [manure.bottomGPerM2, manure.topGPerM2]) wholeFrom(0, rate);
    for (const size of [manure.densityGPerL, manure.barrowLitres]) wholeFrom(1, size);
    if (manure.bottomGPerM2 + manure.topGPerM2 === 0) throw new RangeError('a dressing of manure has a rate');
  }
  for (const { gPerM2, jarG } of meals) [gPerM2, jarG ?? 1].forEach((value) => wholeFrom(1, value));
  const isDeep = (manure?.bottomGPerM2 ?? 0) > 0 || meals.some(({ into }) => into === 'bottom');
  if (isDeep && !diggingMethodOf(method).opensTrench)
    throw new RangeError(`nothing is opened by ${method}, so nothing goes into the bottom`);
  return dressing;
}
