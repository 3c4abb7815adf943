import { diggingMethodOf, diggingSizes } from '../catalogue/digging-methods';
import type { SoilFigures } from '../catalogue/soils';
import { lessCarrying } from '../trench/carrying';
import type { TrenchLayout, TrenchOrder } from '../trench/trench-plan';

/** Why a sheet is laid out as it is. */
export type LayoutBy = 'asked' | 'less-carrying' | 'halves-too-short' | 'no-trench';

/**
 * The layout that a sheet is dug in: the one asked for, else whichever is less carrying.
 *
 * Method: by `lessCarrying`; but halves in which a trench would be a hole that nobody stands beside are never suggested,
 * only dug where they are asked for. Where nothing is opened there is nothing to carry.
 *
 * @param order  as for `trenchPlan`, its layout to be settled
 * @param asked  what the digger wants
 * @param soil   as for `lessCarrying`
 * @returns      the layout, and why
 * @throws RangeError as `trenchPlan`
 * @source       less carrying: weight × distance; the least half: common practice
 * @example      bed 120 × 360, as suggested → straight-through, its halves of 60 cm too short; bed 200 × 700 → two-halves
 */
export function settledLayout(
  order: Omit<TrenchOrder, 'layout'>,
  asked: TrenchLayout | 'as-suggested',
  soil: SoilFigures,
): { readonly layout: TrenchLayout; readonly by: LayoutBy } {
  if (!diggingMethodOf(order.method).opensTrench) return { layout: 'straight-through', by: 'no-trench' };
  if (asked !== 'as-suggested') return { layout: asked, by: 'asked' };
  const acrossCm = order.across === 'width' ? order.bed.widthCm : order.bed.lengthCm;
  if (Math.floor(acrossCm / 2) < diggingSizes.leastHalfCm.value)
    return { layout: 'straight-through', by: 'halves-too-short' };
  const { less } = lessCarrying(order, soil);
  return { layout: less === 'equal' ? 'straight-through' : less, by: 'less-carrying' };
}
