import { limeDressings } from '../catalogue/lime-tables';
import { wholeFrom } from '../quantity/checked';

/**
 * A lime need as dressings, one a year.
 *
 * Method: one dressing up to the amount above which advisers split it over two years; then two, and more only where one
 * would pass the single-dressing ceiling; as equal as whole grams allow, the heavier first.
 *
 * @param gPerM2      ground limestone; whole number ≥ 0 [g/m²]
 * @returns           dressings that sum exactly to it, none above 750 g/m²; none for nothing
 * @throws RangeError on anything else
 * @source            split: a farm adviser's rough guide; ceiling: Irish Farmers Monthly after Teagasc, 2018
 * @example           dressingsOf(500) → [500]; dressingsOf(501) → [251, 250]; dressingsOf(1_600) → [534, 533, 533]
 */
export function dressingsOf(gPerM2: number): readonly number[] {
  wholeFrom(0, gPerM2);
  if (gPerM2 === 0) return [];
  const { splitAboveGPerM2, mostGPerM2 } = limeDressings;
  const count = gPerM2 <= splitAboveGPerM2 ? 1 : Math.max(2, Math.ceil(gPerM2 / mostGPerM2));
  const each = Math.floor(gPerM2 / count);
  return Array.from({ length: count }, (_, at) => each + (at < gPerM2 - each * count ? 1 : 0));
}
