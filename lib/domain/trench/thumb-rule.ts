import { thumbRule } from '../catalogue/digging-methods';
import { wholeFrom } from '../quantity/checked';

type TrenchSize = { readonly lengthCm: number; readonly widthCm: number };

export type ThumbRate = {
  readonly bottomGPerM2: number;
  /** The sprinkling on the following top spit: nobody says how much, at most the rest of the load. */
  readonly topMostGPerM2: number;
  readonly mostGPerM2: number;
};

/**
 * The dressing that the thumb rule comes to: half a load in a trench's bottom, a sprinkling of the next half on the following
 * top spit. To be shown beside the limits; it never sets need.
 *
 * Method: half a barrow-load ÷ the ground of one trench; the sprinkling is anything up to the other half.
 *
 * @param trench        whole numbers > 0 [cm]
 * @param barrowLitres  whole number > 0 [L]
 * @param densityGPerL  whole number > 0 [g/L]
 * @returns             whole [g/m²], to the nearest; bottom and top sum to the most
 * @throws RangeError   on anything else
 * @source              common practice
 * @example             trench 120 × 60 cm, 85 L at 400 g/L → 23,611 g/m² in the bottom, up to 47,222
 */
export function thumbRuleRateGPerM2(trench: TrenchSize, barrowLitres: number, densityGPerL: number): ThumbRate {
  const loadG = wholeFrom(1, barrowLitres) * wholeFrom(1, densityGPerL);
  const mostGPerM2 = perM2(loadG, trench);
  const bottomGPerM2 = perM2(loadG * thumbRule.loadShare, trench);
  return { bottomGPerM2, topMostGPerM2: mostGPerM2 - bottomGPerM2, mostGPerM2 };
}

/**
 * The dressing of meal that the thumb rule comes to: half a jar a trench.
 *
 * @param trench  whole numbers > 0 [cm]
 * @param jarG    what one jar of the meal weighs; whole number > 0 [g]
 * @returns       whole [g/m²], to the nearest
 * @throws RangeError on anything else
 * @source        common practice
 * @example       trench 120 × 60 cm, jar of 230 g → 160
 */
export function thumbMealGPerM2(trench: TrenchSize, jarG: number): number {
  return perM2(wholeFrom(1, jarG) * thumbRule.jarShare, trench);
}

function perM2(massG: number, { lengthCm, widthCm }: TrenchSize): number {
  return Math.round((massG * 10_000) / (wholeFrom(1, lengthCm) * wholeFrom(1, widthCm)));
}
