import { type Moments, momentsOf } from './moments';
import { studentQuantile } from './student-t';

/** Where a value is likely to lie: in so many cases of a hundred such intervals hold it. */
export type Interval = {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  readonly degrees: number;
};

/**
 * The interval of a mean, by Student's t.
 *
 * @param values  finite; they are taken to be drawn one by one from something near normal
 * @param level   how often such intervals hold it; above 0, below 1
 * @returns       low ≤ mean ≤ high; null of a single value
 * @throws RangeError on no values, or a level that is none
 * @source        Student (W. S. Gosset), Biometrika 6 (1908), 1–25
 * @example       meanInterval([1, 2, 3, 4], 0.95) → 2.5, from 0.446 to 4.554
 */
export function meanInterval(values: readonly number[], level: number): Interval | null {
  const { count, mean, variance } = momentsOf(values);
  return variance === null ? null : interval(mean, variance / count, count - 1, level);
}

/**
 * The interval of a difference between the means of two groups that need not spread alike: Welch's, with the degrees of freedom of
 * Satterthwaite.
 *
 * @param first, second  at least two values each, drawn one by one; of one of them at least not all alike
 * @param level          as in `meanInterval`
 * @returns              of the first mean less the second; degrees from the smaller count less one to the sum of both less two
 * @throws RangeError    where there are too few values, or none differ
 * @source               B. L. Welch, Biometrika 34 (1947), 28–35; F. E. Satterthwaite, Biometrics Bulletin 2 (1946), 110–114
 * @example              welchInterval([3, 4, 5], [1, 2, 3], 0.95) → 2, from −0.267 to 4.267
 */
export function welchInterval(first: readonly number[], second: readonly number[], level: number): Interval {
  const [one, other] = [errorOf(momentsOf(first)), errorOf(momentsOf(second))];
  const squared = one.square + other.square;
  if (squared === 0) throw new RangeError('values that are all alike say nothing of how far they spread');
  const [share, rest] = [one.square / squared, other.square / squared];
  const degrees = 1 / (share ** 2 / (one.count - 1) + rest ** 2 / (other.count - 1));
  return interval(one.mean - other.mean, squared, degrees, level);
}

/**
 * The interval of a mean difference between pairs, each of the same ground: what makes one plot better than the next falls out.
 *
 * @param pairs   at least two, not all with the same difference
 * @param level   as in `meanInterval`
 * @returns       of the first of a pair less the second
 * @throws RangeError as `welchInterval`
 * @source        as `meanInterval`, on the differences
 * @example       pairedInterval([[3, 1], [5, 2], [4, 3]], 0.95) → 2, from −0.484 to 4.484
 */
export function pairedInterval(pairs: readonly (readonly [number, number])[], level: number): Interval {
  const { count, mean, square } = errorOf(momentsOf(pairs.map(([first, second]) => first - second)));
  if (square === 0) throw new RangeError('differences that are all alike say nothing of how far they spread');
  return interval(mean, square, count - 1, level);
}

// The square of a mean's standard error.
function errorOf({ count, mean, variance }: Moments): { count: number; mean: number; square: number } {
  if (variance === null) throw new RangeError('at least two values are wanted');
  return { count, mean, square: variance / count };
}

function interval(estimate: number, square: number, degrees: number, level: number): Interval {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level between 0 and 1 is wanted: ${level}`);
  const half = studentQuantile((1 + level) / 2, degrees) * Math.sqrt(square);
  return { estimate, low: estimate - half, high: estimate + half, degrees };
}
