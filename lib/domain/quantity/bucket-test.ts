import { positive } from './checked';

/** Five fills at the least; ten make it sound for a large or uneven heap. */
const leastFills = 5;
const soundFills = 10;

/** Buckets of one size, filled from the heap and weighed. */
export type BucketTest = {
  /** What the bucket holds, filled as it was [L]. */
  readonly bucketLitres: number;
  /** The bucket alone [g]; 0 where the scale was set to nothing with it on. */
  readonly emptyG: number;
  /** Each fill with its bucket [g]. */
  readonly fullG: readonly number[];
};

export type BucketDensity = {
  /** Whole grams a litre ≥ 1; least ≤ mean ≤ most. */
  readonly densityGPerL: number;
  readonly leastGPerL: number;
  readonly mostGPerL: number;
  readonly fills: number;
  /** Whether that many fills are enough to go by. */
  readonly enough: 'sound' | 'fewer-than-ten' | 'fewer-than-five';
};

/**
 * The density of a delivery from weighed bucketfuls, loosely filled as the heap lies and taken from several places.
 *
 * Method: mean of the net weights ÷ what the bucket holds; least and most show how far the fills differ.
 *
 * @param test  bucketLitres > 0 [L]; emptyG ≥ 0 [g]; at least one fill, each heavier than the empty bucket [g]
 * @returns     density to the nearest gram a litre, with its range and whether the fills were enough
 * @throws RangeError on anything else, or on material that weighs next to nothing
 * @source      at least five fills: Livestock and Poultry Environmental Learning Center, Estimating Manure Density;
 *              ten to twenty: Alberta Agriculture, Nutrient Management Planning Guide, p. 126
 * @example     five fills of 20 L at 19.48 kg net → 974 g/L
 */
export function densityOfBucketfuls(test: BucketTest): BucketDensity {
  const bucketLitres = positive(test.bucketLitres, 'a bucket');
  const emptyG = test.emptyG === 0 ? 0 : positive(test.emptyG, 'an empty bucket');
  const netG = test.fullG.map((fullG) => positive(positive(fullG, 'a full bucket') - emptyG, 'what a bucket held'));
  if (netG.length === 0) throw new RangeError('no bucket was weighed');
  const density = (massG: number) => Math.round(massG / bucketLitres);
  const densityGPerL = density(netG.reduce((sum, massG) => sum + massG, 0) / netG.length);
  if (densityGPerL === 0) throw new RangeError('material weighs something');
  return {
    densityGPerL,
    leastGPerL: density(Math.min(...netG)),
    mostGPerL: density(Math.max(...netG)),
    fills: netG.length,
    enough: netG.length < leastFills ? 'fewer-than-five' : netG.length < soundFills ? 'fewer-than-ten' : 'sound',
  };
}
