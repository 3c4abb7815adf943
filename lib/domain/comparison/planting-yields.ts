import type { CalendarDate } from '../calendar/calendar-date';
import { pieceWeightG } from '../harvest/piece-weight';
import { type PickedPlanting, type Picking, seasonYields } from '../harvest/season-yields';

/** What one planting gave in one season. */
export type PlantingYield = { readonly plantingId: string; readonly season: number } & (
  | { readonly gPerM2: number; readonly leftOut: null }
  /** Something of it still stands, or it was counted in pieces whose weight nobody knows. */
  | { readonly gPerM2: null; readonly leftOut: 'standing' | 'counted' }
);

/**
 * What each planting gave on a square metre by itself, whatever else stood on its bed; of those that are not to be compared, why.
 *
 * Method: `seasonYields`, planting by planting. Counts are weighed at the weight of a piece where that is known. A crop that came to nothing counts.
 *
 * @param plantings  as `seasonYields`
 * @param pickings   of these plantings
 * @returns          one for each planting and season that anything was recorded of [g/m², whole]
 * @throws RangeError as `seasonYields`
 * @source           arithmetic; weights of pieces: `pieceWeightG`
 * @example          40 onions off 2 m², counted and cleared, at 120 g → 2,400
 */
export function plantingYields(
  plantings: readonly PickedPlanting[],
  pickings: readonly Picking[],
  today: CalendarDate,
): PlantingYield[] {
  const pieceG = new Map(plantings.map(({ id, cropKey }) => [id, pieceWeightG(cropKey)]));
  const weighed = pickings.map((one) => {
    const each = one.measure === 'pieces' ? (pieceG.get(one.plantingId) ?? null) : null;
    return each === null ? one : { ...one, measure: 'grams' as const, amount: one.amount * each };
  });
  const alone = plantings.map((planting) => ({ ...planting, bedId: planting.id }));
  const yields = seasonYields(alone, weighed, today);
  const counted = new Set(yields.flatMap((one) => (one.measure === 'pieces' ? [nameOf(one)] : [])));
  const once = new Map(yields.map((one) => [nameOf(one), one]));
  return [...once].map(([name, { bedId, season, perM2, isSoFar }]) => {
    const what = { plantingId: bedId, season };
    if (isSoFar) return { ...what, gPerM2: null, leftOut: 'standing' };
    return counted.has(name)
      ? { ...what, gPerM2: null, leftOut: 'counted' }
      : { ...what, gPerM2: perM2, leftOut: null };
  });
}

function nameOf({ bedId, season }: { readonly bedId: string; readonly season: number }): string {
  return `${bedId} ${season}`;
}
