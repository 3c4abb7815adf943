import { diggingMethodOf } from '../catalogue/digging-methods';
import type { Footprint } from '../ground/footprint';
import type { Span } from '../quantity/span';
import { type LessCarrying, lessCarrying } from '../trench/carrying';
import type { Digging } from '../trench/digging';
import { type Rise, riseOf } from '../trench/layer-heights';
import { type Layers, layersOf } from '../trench/layers';
import { openingBarrows, type SoilMoved, soilMoved } from '../trench/soil-moved';
import { suggestedLayout } from '../trench/suggested-layout';
import type { TrenchLayout } from '../trench/trench-plan';
import { diggingOf, type SheetOrder, sizeOf } from './sheet-order';

/** All the figures of a sheet that follow from its order and its ground alone. */
export type SheetFigures = {
  readonly digging: Digging;
  readonly layers: Layers;
  readonly moved: SoilMoved;
  /** Barrows of the first trench's soil, wheeled to the far end; null where it is not carried there or not known. */
  readonly openingBarrows: Span | null;
  readonly rise: Rise;
  /** Both layouts' carrying; null where nothing is opened, or the ground cannot be parted in two. */
  readonly carrying: LessCarrying | null;
  /** What the wartime leaflet would choose; null where nothing is opened. */
  readonly leafletLayout: TrenchLayout | null;
};

/**
 * The figures of a sheet: trenches, what goes in, soil moved, how high it will stand, and the carrying of both layouts.
 *
 * @param order   the sheet's
 * @param ground  its footprint
 * @returns       the same for the same order, whenever it is asked
 * @throws RangeError as each of the functions that it calls
 * @source        each figure's own
 * @example       6 trenches of 120 × 60 cm, straight through → 3 to 4 barrows of loam from the first, 0.18 m³ as it lay
 */
export function figuresOf(order: SheetOrder, ground: Footprint): SheetFigures {
  const digging = diggingOf(order, ground);
  const { plan, dressing, soil } = digging;
  const { opensTrench } = diggingMethodOf(order.method);
  const moved = soilMoved(plan, soil);
  const isParted = (order.across === 'width' ? ground.widthCm : ground.lengthCm) > 1;
  return {
    digging,
    layers: layersOf(plan, dressing),
    moved,
    openingBarrows:
      opensTrench && order.layout === 'straight-through' ? openingBarrows(moved, order.barrowLitres) : null,
    rise: riseOf(plan, soil, dressing),
    carrying: opensTrench && isParted ? lessCarrying(plan.order, soil) : null,
    leafletLayout: opensTrench ? suggestedLayout(sizeOf(ground), order.across) : null,
  };
}
