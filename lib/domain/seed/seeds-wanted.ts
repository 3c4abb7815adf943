import { germinationStandardsOf, sowing } from '../catalogue/germination-standards';
import type { SourceKey } from '../catalogue/sources';
import { wholeFrom } from '../quantity/checked';

/**
 * How many seeds make so many plants.
 *
 * Method: plants, with the margin, over what germinates; rounded up once, at the end, in whole numbers.
 *
 * @param plants              whole number ≥ 0
 * @param germinationPercent  of the seed, whole number 1 to 100 [percent]
 * @param marginPercent       for slugs, gaps and thinning; whole number ≥ 0 [percent]
 * @returns                   whole seeds ≥ plants
 * @throws RangeError on anything else, and beyond exactness
 * @source                    arithmetic
 * @example                   144 plants, 70 %, a margin of 25 % → 258 seeds
 */
export function seedsWanted(plants: number, germinationPercent: number, marginPercent: number): number {
  if (wholeFrom(1, germinationPercent) > 100)
    throw new RangeError(`at most all of it germinates: ${germinationPercent}`);
  const above = wholeFrom(0, wholeFrom(0, plants) * (100 + wholeFrom(0, marginPercent)));
  const over = above % germinationPercent;
  return (above - over) / germinationPercent + (over > 0 ? 1 : 0);
}

/**
 * What is reckoned to germinate of a crop's seed where the packet does not say: the least that it may be sold with.
 *
 * @returns whole percent and where it stands; common practice where no law names the crop
 * @source  each standard's own; see the catalogue
 * @example germinationOf('parsnip') → 60 %, Canada, since the European directive does not name it
 */
export function germinationOf(cropKey: string): { readonly percent: number; readonly source: SourceKey } {
  const [standard] = germinationStandardsOf(cropKey);
  if (!standard) return { percent: sowing.germinationPercent.value, source: sowing.germinationPercent.source };
  return { percent: standard.leastPercent, source: standard.source };
}
