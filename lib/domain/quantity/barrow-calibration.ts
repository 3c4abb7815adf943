import { positive } from './checked';

export type BarrowLitres = {
  /** Level with the rim [L]. */
  readonly struckLitres: number;
  /** Heaped as it is wheeled, and how much more that is; null where it was not tried. */
  readonly heaped: { readonly litres: number; readonly overPercent: number } | null;
};

/**
 * What a barrow holds, from counting bucketfuls into it.
 *
 * Method: bucketfuls × what the bucket holds, once level with the rim and, if it is wheeled heaped, once more heaped.
 * Heaping was found in no sound source, so it is measured and never assumed.
 *
 * @param bucketLitres  what the bucket holds; > 0 [L]
 * @param struck        bucketfuls to the rim, part bucketfuls too; > 0
 * @param heaped        bucketfuls to a heap that stays on, not fewer than `struck`; null where not tried
 * @returns             to the nearest litre, ≥ 1; what a society declares as its barrow-load is one of the two
 * @throws RangeError   on anything else, or on a barrow of less than half a litre
 * @source              counting; common practice
 * @example             calibrateBarrow(10, 8.5, 11) → 85 L struck, 110 L heaped (29 % over)
 */
export function calibrateBarrow(bucketLitres: number, struck: number, heaped: number | null): BarrowLitres {
  const bucket = positive(bucketLitres, 'a bucket');
  const struckL = bucket * positive(struck, 'bucketfuls to the rim');
  const struckLitres = Math.round(struckL);
  if (struckLitres === 0) throw new RangeError('a barrow holds something');
  if (heaped === null) return { struckLitres, heaped: null };
  const heapedL = bucket * positive(heaped, 'bucketfuls heaped');
  if (heapedL < struckL) throw new RangeError('a heaped barrow holds no less than a level one');
  const overPercent = Math.round((heapedL / struckL - 1) * 100);
  return { struckLitres, heaped: { litres: Math.round(heapedL), overPercent } };
}
