import type { CropGroup } from '../catalogue/crop-groups';
import { areaCm2, type Footprint, overlap } from '../ground/footprint';
import { wholeFrom } from '../quantity/checked';
import type { Recipe } from '../recipe/recipe-of';
import { coveredCm2 } from '../rotation/rules/rule';
import type { GroupOnGround } from './straw-and-meals';

/** One planned crop's straw on a bed: its ground, what of it is strewn already [cm²], and its recipe's rate [g/m²]. */
export type StrawReason = {
  readonly cropGroup: CropGroup;
  readonly areaCm2: number;
  readonly strewnCm2: number;
  readonly rateGPerM2: number;
};

/**
 * Why a bed wants straw: each crop planned on it whose recipe asks for straw.
 *
 * Method: as `strawAndMeals`, kept apart by crop, so that the need can be told.
 *
 * @param bed      [cm]
 * @param planned  for one season, of the bed's frame
 * @param recipes  those in force
 * @param had      straw of that season, by footprint
 * @returns        0 ≤ strewnCm2 ≤ areaCm2 [cm²]; crops that want no straw are left out
 * @source         each recipe's own rate
 * @example        alliums on 12 m², 3 m² strewn, 500 g/m² → one reason: 120,000, 30,000, 500
 */
export function strawReasons(
  bed: Footprint,
  planned: readonly GroupOnGround[],
  recipes: readonly Recipe[],
  had: readonly { readonly materialKey: string | null; readonly footprint: Footprint }[],
): StrawReason[] {
  const straw = had.filter(({ materialKey }) => materialKey === 'straw');
  return planned.flatMap(({ footprint, cropGroup }) => {
    const here = overlap(footprint, bed);
    const rateGPerM2 = recipes.find(({ group }) => group === cropGroup)?.strawGPerM2.value ?? 0;
    if (!here || !cropGroup || rateGPerM2 === 0) return [];
    return [{ cropGroup, areaCm2: areaCm2(here), strewnCm2: coveredCm2(here, straw), rateGPerM2 }];
  });
}

/**
 * The straw that a holding's ground asks for, in loads.
 *
 * Method: (area − what is strewn) × rate, summed over the holding in ten-thousandths of a gram, ÷ the weight of a load,
 * rounded up once.
 *
 * @param grounds      each with its reasons; areas whole numbers ≥ 0 [cm²], rates whole numbers ≥ 0 [g/m²]
 * @param loadG        what a load weighs, a bale or a barrow of it; whole number ≥ 1 [g]
 * @returns            loads ≥ 0; for each ground its straw [g, to the nearest]
 * @throws RangeError  on anything else, or where more is strewn than there is
 * @source             arithmetic; rates by the recipes in force
 * @example            12 m² of alliums at 500 g/m², bales of 13 kg → 6 kg → 1 bale
 */
export function strawNeed(
  grounds: readonly { readonly id: string; readonly reasons: readonly StrawReason[] }[],
  loadG: number,
): { loads: number; grounds: { id: string; massG: number }[] } {
  const wanted = grounds.map(({ id, reasons }) => ({
    id,
    straw: reasons.reduce((sum, one) => sum + wantedOf(one), 0n),
  }));
  const load = 10_000n * BigInt(wholeFrom(1, loadG));
  const all = wanted.reduce((sum, { straw }) => sum + straw, 0n);
  return {
    loads: Number((all + load - 1n) / load),
    grounds: wanted.map(({ id, straw }) => ({ id, massG: Math.round(Number(straw) / 10_000) })),
  };
}

// In ten-thousandths of a gram: whole until the end.
function wantedOf({ areaCm2: area, strewnCm2, rateGPerM2 }: StrawReason): bigint {
  const bare = wholeFrom(0, wholeFrom(0, area) - wholeFrom(0, strewnCm2));
  return BigInt(bare) * BigInt(wholeFrom(0, rateGPerM2));
}
