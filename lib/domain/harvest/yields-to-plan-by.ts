import type { CalendarDate } from '../calendar/calendar-date';
import { pieceWeightG } from './piece-weight';
import { type PickedPlanting, type Picking, seasonYields } from './season-yields';

/** So many seasons back tell what ground yields; what is older was other ground, or another hand. */
const lastSeasons = 5;

/**
 * What a crop yielded on the ground of a holding, to reckon next year's ground from: one figure for each bed and season.
 *
 * Method: counts are weighed at the weight of a piece where that is known; a bed and season with a count that can't be is left out, as is
 * one that still stands. So is a failed crop, though it counts everywhere else: no ground makes up for one, and a yield of nothing has
 * no logarithm. Who wants a safe year sows twice.
 *
 * @param plantings  of one crop; as `seasonYields`
 * @param pickings   of these plantings; as `seasonYields`
 * @returns          > 0 [g/m²], whole, the last five seasons up to the latest on record, earliest first
 * @throws RangeError as `seasonYields`, or where the plantings are of several crops
 * @source           five years: as the official tables of nitrogen demand take one's own yields
 * @example          40 onions off 2 m², counted and cleared, at 120 g → [2,400]
 */
export function yieldsToPlanBy(
  plantings: readonly PickedPlanting[],
  pickings: readonly Picking[],
  today: CalendarDate,
): number[] {
  const cropKeys = new Set(plantings.map(({ cropKey }) => cropKey));
  if (cropKeys.size > 1) throw new RangeError('yields of one crop at a time');
  const [cropKey = ''] = cropKeys;
  const pieceG = pieceWeightG(cropKey);
  const weighed = pickings.map((one) =>
    one.measure === 'pieces' && pieceG !== null
      ? { ...one, measure: 'grams' as const, amount: one.amount * pieceG }
      : one,
  );
  const all = seasonYields(plantings, weighed, today);
  const counted = new Set(all.filter(({ measure }) => measure === 'pieces').map(placeOf));
  const sure = all.filter((one) => !one.isSoFar && one.perM2 > 0 && !counted.has(placeOf(one)));
  const latest = Math.max(...sure.map(({ season }) => season));
  return sure.filter(({ season }) => season > latest - lastSeasons).map(({ perM2 }) => perM2);
}

function placeOf({ bedId, season }: { readonly bedId: string; readonly season: number }): string {
  return `${season} ${bedId}`;
}
