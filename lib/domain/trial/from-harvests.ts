import { areaCm2, type Footprint, overlap } from '../ground/footprint';

/** A planting of the trial's crop that stood in its season, and what was picked of it for that season in the trial's measure. */
export type PickedThere = { readonly footprint: Footprint; readonly amounts: readonly number[] };

export type FromHarvests =
  | { readonly is: 'found'; readonly amount: number; readonly areaCm2: number; readonly harvests: number }
  /** Something that was picked from reaches beyond this ground, so that what came off which can't be told. */
  | { readonly is: 'reaches-beyond' }
  | { readonly is: 'none' };

/**
 * What a piece of ground gave, from harvests on record: the sum over the plantings on it that anything was picked from, and their ground.
 *
 * @param ground     the piece; plantings are of its frame and don't overlap
 * @param plantings  whole amounts ≥ 0 [grams or pieces]
 * @returns          amounts sum to all that was picked on it; 0 < area ≤ the piece's [cm²]
 * @source           arithmetic
 * @example          2 kg and 1 kg off a planting of 2 m² that lies on it → 3,000 g of 20,000 cm²
 */
export function fromHarvests(ground: Footprint, plantings: readonly PickedThere[]): FromHarvests {
  const picked = plantings.filter(({ footprint, amounts }) => amounts.length && overlap(ground, footprint));
  if (picked.length === 0) return { is: 'none' };
  if (picked.some(({ footprint }) => !isWithin(footprint, ground))) return { is: 'reaches-beyond' };
  const amounts = picked.flatMap((one) => one.amounts);
  return {
    is: 'found',
    amount: amounts.reduce((sum, amount) => sum + amount, 0),
    areaCm2: picked.reduce((sum, one) => sum + areaCm2(one.footprint), 0),
    harvests: amounts.length,
  };
}

function isWithin(inner: Footprint, outer: Footprint): boolean {
  const shared = overlap(inner, outer);
  return shared !== null && areaCm2(shared) === areaCm2(inner);
}
