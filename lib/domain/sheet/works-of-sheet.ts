import { diggingMethodOf } from '../catalogue/digging-methods';
import type { Footprint } from '../ground/footprint';
import type { WorkKind } from '../ground/work-kinds';
import { layersOf, sumOfAmounts } from '../trench/layers';
import { type DugPiece, dugPieces, type Tick } from './done-ground';
import { diggingOf, type SheetOrder } from './sheet-order';

/** One thing that was done to one rectangle of ground. */
export type SheetWork = Pick<DugPiece, 'footprint' | 'doneOn'> & {
  readonly kind: WorkKind;
  readonly materialKey: string | null;
  readonly massG: number | null;
  readonly ageMonths: number | null;
  /** Dug in, or left on top. */
  readonly incorporated: boolean;
  readonly method: string | null;
  readonly depthCm: number | null;
};

/**
 * What the trenches that are done have done to their ground, for its record: dug, manured, fed and strawed.
 *
 * Method: a row for each rectangle and each thing, with the weights that the sheet gave for those trenches. What only lies
 * on top digs nothing.
 *
 * @param order   the sheet's
 * @param ground  its footprint
 * @param ticks   as for `dugPieces`
 * @returns       weights in whole grams that sum exactly to what `usedUpTo` gives for the same trenches
 * @throws RangeError as `dugPieces` and `layersOf`
 * @source        the sheet's own figures
 * @example       two trenches of 0.72 m² at 3 + 2 kg/m², double digging in spits of 25 cm → dug 50 cm deep, manured 7,200 g
 */
export function worksOfSheet(order: SheetOrder, ground: Footprint, ticks: readonly Tick[]): SheetWork[] {
  const digging = diggingOf(order, ground);
  const layers = layersOf(digging.plan, digging.dressing);
  const depthCm = diggingMethodOf(order.method).loosenedSpits * order.spitDepthCm;
  return dugPieces(digging.plan, ground, ticks).flatMap(({ trenches, footprint, doneOn }) => {
    const put = sumOfAmounts(
      layers.trenches.filter(({ number }) => trenches.includes(number)),
      digging.dressing,
    );
    const where = { footprint, doneOn };
    const laid = (kind: WorkKind, materialKey: string, massG: number, ageMonths: number | null = null) =>
      massG > 0
        ? [{ ...where, kind, materialKey, massG, ageMonths, incorporated: depthCm > 0, method: null, depthCm: null }]
        : [];
    const dug = { materialKey: null, massG: null, ageMonths: null, incorporated: true, method: order.method, depthCm };
    return [
      ...(depthCm > 0 ? [{ ...where, kind: 'dug' as const, ...dug }] : []),
      ...(order.manure
        ? laid('manured', order.manure.materialKey, put.manureBottomG + put.manureTopG, order.manure.ageMonths)
        : []),
      ...put.meals.flatMap(({ key, massG }) => laid('fed', key, massG)),
      ...laid('strawed', 'straw', put.strawG),
    ];
  });
}
