import { type SeedWeight, seedWeightsOf } from '../catalogue/seed-weights';
import type { SourceKey } from '../catalogue/sources';
import { ounceG } from '../quantity/mass';
import { positive, wholeFrom } from '../quantity/checked';

/** How heavy seeds are, by all that is printed [mg], rounded up. */
export type SeedMass = {
  readonly massMg: number;
  readonly leastMg: number;
  readonly mostMg: number;
  readonly source: SourceKey;
  /** Accounts differ by half as much again or more, or there is none but of wild and mixed seed. */
  readonly isDoubtful: boolean;
};

const doubtfulFrom = 1.5;

/**
 * The weight of so many seeds.
 *
 * Method: by the first account of the crop, with the range of all of them beside it. Each is rounded up to the milligram.
 *
 * @param cropKey  of the catalogue
 * @param seeds    whole number ≥ 0
 * @returns        leastMg ≤ massMg ≤ mostMg [mg]; null where nobody weighed the crop's seed
 * @throws RangeError on a number that is none
 * @source         each account's own; see the catalogue
 * @example        massOfSeeds('onion', 300) → 1,064 mg; 996 by the other account
 */
export function massOfSeeds(cropKey: string, seeds: number): SeedMass | null {
  wholeFrom(0, seeds);
  const accounts = seedWeightsOf(cropKey);
  const [first] = accounts;
  if (!first) return null;
  const each = accounts.map((account) => Math.max(0, Math.ceil(seeds * mgEach(account) - 1e-9)));
  const weights = accounts.map(mgEach);
  return {
    massMg: each[0] ?? 0,
    leastMg: Math.min(...each),
    mostMg: Math.max(...each),
    source: first.source,
    isDoubtful: first.source === 'kew-seed-weights' || Math.max(...weights) >= doubtfulFrom * Math.min(...weights),
  };
}

/**
 * How many seeds are in a packet that says its weight.
 *
 * @param cropKey  of the catalogue
 * @param massMg   > 0 [mg]
 * @returns        whole seeds: fewest and most by all accounts, and by the first; null where nobody weighed the crop's seed
 * @throws RangeError on a weight that is none
 * @source         each account's own; see the catalogue
 * @example        seedsInMass('onion', 1_000) → 282; 282 to 301
 */
export function seedsInMass(
  cropKey: string,
  massMg: number,
): { readonly seeds: number; readonly fewest: number; readonly most: number } | null {
  positive(massMg, 'a weight of seed');
  const counts = seedWeightsOf(cropKey).map((account) => Math.floor(massMg / mgEach(account) + 1e-9));
  const [seeds] = counts;
  return seeds === undefined ? null : { seeds, fewest: Math.min(...counts), most: Math.max(...counts) };
}

function mgEach(account: SeedWeight): number {
  return 'perOunce' in account ? (ounceG * 1000) / account.perOunce : account.thousandG;
}
