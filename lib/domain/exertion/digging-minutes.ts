import type { DiggingMethod } from '../catalogue/digging-methods';
import { type PaceKey, paceOf, workShares } from '../catalogue/paces';
import { positive } from '../quantity/checked';

/**
 * Minutes of digging in a piece of ground, rests apart.
 *
 * Method: area × the pace's minutes for double digging × the method's share of them.
 *
 * @param areaCm2  > 0 [cm²]
 * @returns        [min], unrounded; > 0, in proportion to the area
 * @throws RangeError on no area, or a pace or method that is none
 * @source         double digging: International Institute of Rural Reconstruction 1993, 2 to 6 hours for 9 m²; other methods:
 *                 common practice. Whether its hours hold any rest the source does not say: they are taken to hold none
 * @example        diggingMinutes(90_000, 'double-digging', 'gentle') → 360
 */
export function diggingMinutes(areaCm2: number, method: DiggingMethod, pace: PaceKey): number {
  if (!Object.hasOwn(workShares, method)) throw new RangeError(`no such way of digging: ${method}`);
  const doubleMinutes = (positive(areaCm2, 'ground to dig') / 10_000) * paceOf(pace).doubleMinutesPerM2;
  return (doubleMinutes * workShares[method].percentOfDouble) / 100;
}
