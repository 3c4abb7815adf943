import { diggingSizes } from '../catalogue/digging-methods';
import { wholeFrom } from '../quantity/checked';
import type { BedSize, TrenchLayout } from './trench-plan';

/**
 * The layout that the wartime leaflet would choose: ground wider than 15 ft in two halves, other ground straight through.
 *
 * Method: as a rule of the trade; which layout is really less carrying is `lessCarrying`’s to say.
 *
 * @param bed     whole numbers > 0 [cm]
 * @param across  the side that the trenches run along
 * @throws RangeError on any other size
 * @source        Ministry of Agriculture, Dig for Victory Leaflet No. 20, How to Dig
 * @example       trenches of 500 cm → two-halves; of 457 → straight-through
 */
export function suggestedLayout(bed: BedSize, across: 'width' | 'length'): TrenchLayout {
  const lengthCm = wholeFrom(1, across === 'width' ? bed.widthCm : bed.lengthCm);
  return lengthCm > diggingSizes.halvesWiderThanCm.value ? 'two-halves' : 'straight-through';
}
