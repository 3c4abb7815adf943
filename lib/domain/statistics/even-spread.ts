import { wholeFrom } from '../quantity/checked';

// biome-ignore format: the first thirty-two
const primes = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97, 101, 103, 107, 109, 113, 127, 131] as const;

/**
 * Points spread evenly over a cube of any few dimensions: what a forecast is averaged over instead of chance.
 *
 * Method: the first coordinate goes up in equal steps; each other is the running multiple of the square root of a prime, without
 * its whole part. Beyond thirty-two of those the primes begin again, from another place.
 *
 * @param count       how many points; whole number ≥ 1
 * @param dimensions  coordinates of each; whole number ≥ 1
 * @returns           count points; each coordinate above 0 and below 1, always the same for the same arguments
 * @throws RangeError on anything else
 * @source            R. D. Richtmyer, Proceedings of Symposia in Applied Mathematics 4 (1952): multiples of irrational numbers
 * @example           evenSpread(2, 1) → [[0.25], [0.75]]
 */
export function evenSpread(count: number, dimensions: number): readonly (readonly number[])[] {
  wholeFrom(1, dimensions);
  return Array.from({ length: wholeFrom(1, count) }, (_, at) =>
    Array.from({ length: dimensions }, (_none, dimension) =>
      dimension === 0 ? (at + 0.5) / count : between(multiple(at + 1, dimension - 1)),
    ),
  );
}

function multiple(at: number, dimension: number): number {
  const prime = primes[dimension % primes.length] ?? 2;
  return (at * Math.sqrt(prime) + Math.floor(dimension / primes.length) * 0.37) % 1;
}

function between(share: number): number {
  return Math.min(1 - 1e-9, Math.max(1e-9, share));
}
