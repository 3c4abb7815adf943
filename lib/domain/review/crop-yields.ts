import { leastHolders, neighboursIn } from '../comparison/shown-cells';
import { wholeFrom } from '../quantity/checked';
import { type Interval, meanInterval } from '../statistics/intervals';

/** What a holding weighed of a crop, and the ground that it came off. */
export type WeighedCrop = {
  readonly holdingId: string;
  /** The reader's own. */
  readonly isOwn: boolean;
  readonly cropKey: string;
  readonly massG: number;
  readonly areaCm2: number;
};

/** What holdings had of a crop on a square metre [g/m²], each counted once. */
export type CropYield = { readonly cropKey: string; readonly holdings: number; readonly gPerM2: Interval };

export type CropYields = {
  readonly told: readonly CropYield[];
  /** Crops of which too few holdings weighed anything: nothing more is said of them. */
  readonly withheld: readonly string[];
};

const level = 0.95;

/**
 * What each crop yielded over a society, as far as it may be told.
 *
 * Method: a holding's weights and ground are added up, so that it counts once however many beds it had; the mean over holdings has its interval
 * by Student's t. Fewer than three holdings beside the reader's own: withheld, since who is one of three knows what the other two
 * come to. Every crop stands by itself and in no sum, so that nothing is had by subtraction.
 *
 * @param weighed  masses whole ≥ 0 [g], ground whole ≥ 1 [cm²]
 * @returns        crops in the order of their keys
 * @throws RangeError on masses or ground that are none
 * @source         fewer than three withheld: common practice of disclosure control; interval: lib/domain/statistics
 * @example        three holdings, none the reader’s, with 1, 2 and 3 kg of leeks off 1 m² each → 2,000 g/m², from −484 to 4,484; two of them → withheld
 */
export function cropYields(weighed: readonly WeighedCrop[]): CropYields {
  for (const { massG, areaCm2 } of weighed) {
    wholeFrom(0, massG);
    wholeFrom(1, areaCm2);
  }
  const crops = [...new Set(weighed.map(({ cropKey }) => cropKey))].sort();
  const told: CropYield[] = [];
  const withheld: string[] = [];
  for (const cropKey of crops) {
    const here = weighed.filter((one) => one.cropKey === cropKey);
    const values = perHolding(here);
    const gPerM2 = neighboursIn(here) < leastHolders ? null : meanInterval(values, level);
    if (gPerM2) told.push({ cropKey, holdings: values.length, gPerM2 });
    else withheld.push(cropKey);
  }
  return { told, withheld };
}

function perHolding(weighed: readonly WeighedCrop[]): number[] {
  const sums = new Map<string, { massG: number; areaCm2: number }>();
  for (const { holdingId, massG, areaCm2 } of weighed) {
    const so = sums.get(holdingId) ?? { massG: 0, areaCm2: 0 };
    sums.set(holdingId, { massG: so.massG + massG, areaCm2: so.areaCm2 + areaCm2 });
  }
  // By size, so that the sum comes out the same in whatever order they came.
  return [...sums.values()].map(({ massG, areaCm2 }) => (massG * 10_000) / areaCm2).sort((one, other) => one - other);
}
