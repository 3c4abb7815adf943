import { keepingsOfCrop } from '../catalogue/keepings';

/** A piece lighter than this is shelled or dried before it is kept, and not what is picked [g]. */
const leastPickedG = 5;
/** Kinds of one crop whose weights lie further apart than this say nothing of what was picked. */
const mostApart = 2;

/**
 * What one piece of a crop weighs, where that is known: so that what was counted can stand beside what was weighed.
 *
 * Method: the weight of its usual kind in store. None where the crop is not kept, is shelled or dried first, or comes in kinds of which
 * one weighs more than twice as much as another: three squashes may be two kilograms or twelve.
 *
 * @param cropKey  of the catalogue or a society's own
 * @returns        > 0 [g]; null where nobody can say
 * @source         weights: catalogue/keepings; which of them will do: common practice
 * @example        onion → 120; winter squash → null; lettuce → null
 */
export function pieceWeightG(cropKey: string): number | null {
  const weights = keepingsOfCrop(cropKey).map(({ pieceG }) => pieceG);
  const [usual] = weights;
  if (usual === undefined || usual < leastPickedG) return null;
  return Math.max(...weights) > mostApart * Math.min(...weights) ? null : usual;
}
