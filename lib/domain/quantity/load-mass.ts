import { wholeFrom } from './checked';

/** What a load is counted by. */
export type LoadUnit = 'barrow' | 'bale';

/** What one load of a delivery is: a barrow filled with the material, unless it is said to be a bale of a given weight. */
export type LoadSize = {
  /** What the society's barrow holds [L]. */
  readonly barrowLitres: number;
  /** Bulk density of the material [g/L]. */
  readonly densityGPerL: number;
  readonly loadUnit?: LoadUnit;
  /** What a bale weighs [g]; none where a load is a barrow. */
  readonly baleMassG?: number | null;
};

/**
 * What one load weighs.
 *
 * Method: a bale's own weight; a barrow's litres × the density of what fills it.
 *
 * @param size         whole numbers ≥ 1; a bale has its weight
 * @returns            whole number ≥ 1 [g]
 * @throws RangeError  on anything else
 * @source             arithmetic
 * @example            a barrow of 85 L at 400 g/L → 34,000; a bale of 13 kg → 13,000
 */
export function loadMassG({ barrowLitres, densityGPerL, loadUnit = 'barrow', baleMassG = null }: LoadSize): number {
  if (loadUnit === 'bale') return wholeFrom(1, baleMassG ?? 0);
  return wholeFrom(1, wholeFrom(1, barrowLitres) * wholeFrom(1, densityGPerL));
}
