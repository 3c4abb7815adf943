import { diggingMethodOf } from '../catalogue/digging-methods';
import { materialOf } from '../catalogue/materials';
import type { SoilFigures } from '../catalogue/soils';
import { type Span, spanOf } from '../quantity/span';
import { checkedDressing, type Dressing } from './dressing';
import type { TrenchPlan } from './trench-plan';

/** How high each layer of a dressing lies [cm], not rounded. */
export type LayerHeights = { readonly manureBottomCm: number; readonly manureTopCm: number; readonly strawCm: number };

/** What raises the ground, cause by cause. */
export type Rise = {
  /** By the swell of the soil alone [cm]; null where it is not known. */
  readonly swellCm: Span | null;
  /** By what was laid in [cm]. */
  readonly manureCm: number;
  readonly strawCm: number;
  /** No source gives a figure of how far a dug bed settles. */
  readonly settlement: { readonly code: 'no-published-figure'; readonly cm: null };
};

/**
 * How high the layers of a dressing lie, spread evenly.
 *
 * Method: rate ÷ bulk density; 10 L/m² lie a centimetre high.
 *
 * @param dressing  as `checkedDressing`
 * @returns         [cm], not rounded, ≥ 0
 * @throws RangeError where the catalogue has no weight of straw
 * @source          densities: manure as given, straw from the catalogue of materials
 * @example         5,000 g/m² at 400 g/L → 1.25
 */
export function layerHeights({ manure, strawGPerM2 }: Dressing): LayerHeights {
  const straw = materialOf('straw');
  if (!straw) throw new RangeError('straw has no weight');
  const manureCm = (gPerM2: number) => (manure ? gPerM2 / manure.densityGPerL / 10 : 0);
  return {
    manureBottomCm: manureCm(manure?.bottomGPerM2 ?? 0),
    manureTopCm: manureCm(manure?.topGPerM2 ?? 0),
    strawCm: strawGPerM2 / straw.densityGPerL / 10,
  };
}

/**
 * How high the ground will stand when the work is done, before it settles.
 *
 * Method: depth loosened × swell, the same at every depth; what was laid in is stated apart, by its own height.
 *
 * @param plan      any plan; a mulch loosens nothing
 * @param soil      swell, from least to most, or null [percent]
 * @param dressing  as `checkedDressing`
 * @returns         tenths of a centimetre ≥ 0; the settlement open
 * @throws RangeError as `checkedDressing`
 * @source          the soil's own row
 * @example         two spits of 25 cm at 15 to 35 % → 7.5 to 17.5 cm
 */
export function riseOf(plan: TrenchPlan, soil: SoilFigures, dressing: Dressing): Rise {
  const { spitDepthCm, method } = plan.order;
  const loosenedCm = diggingMethodOf(method).loosenedSpits * spitDepthCm;
  const { manureBottomCm, manureTopCm, strawCm } = layerHeights(checkedDressing(dressing, method));
  return {
    swellCm: spanOf(soil.swellLeastPercent, soil.swellMostPercent, (percent) => tenths((loosenedCm * percent) / 100)),
    manureCm: tenths(manureBottomCm + manureTopCm),
    strawCm: tenths(strawCm),
    settlement: { code: 'no-published-figure', cm: null },
  };
}

function tenths(cm: number): number {
  return Math.round(cm * 10) / 10;
}
