/** What some values come to. */
export type Moments = {
  readonly count: number;
  readonly mean: number;
  /** Of the values about their mean, by one fewer than there are; null of a single one, which says nothing of its spread. */
  readonly variance: number | null;
};

/**
 * The mean and the variance of some values.
 *
 * Method: two passes. The mean is summed with what rounding drops carried along and corrected once; squares are summed about it, less what the
 * mean is off. Values that agree in seven leading digits keep their spread, of which the textbook formula leaves nothing.
 *
 * @param values       at least one, finite
 * @returns            the variance is ≥ 0, or null of a single value
 * @throws RangeError  on no values, NaN or Infinity
 * @source             T. F. Chan, G. H. Golub and R. J. LeVeque, The American Statistician 37 (1983), 242–247: corrected two-pass; sums:
 *                     A. Neumaier, Zeitschrift für angewandte Mathematik und Mechanik 54 (1974), 39–51
 * @example            momentsOf([1, 2, 3, 4]) → count 4, mean 2.5, variance 1.667
 */
export function momentsOf(values: readonly number[]): Moments {
  const count = values.length;
  if (count === 0 || !values.every(Number.isFinite)) throw new RangeError('finite values are wanted, at least one');
  const rough = carefulSum(values) / count;
  const mean = rough + carefulSum(values.map((value) => value - rough)) / count;
  if (count === 1) return { count, mean, variance: null };
  const off = carefulSum(values.map((value) => value - mean));
  const squares = carefulSum(values.map((value) => (value - mean) ** 2));
  return { count, mean, variance: Math.max(0, squares - (off * off) / count) / (count - 1) };
}

/** The standard deviation of some values; null of a single one. Errors as `momentsOf`. */
export function standardDeviationOf(values: readonly number[]): number | null {
  const { variance } = momentsOf(values);
  return variance === null ? null : Math.sqrt(variance);
}

function carefulSum(values: readonly number[]): number {
  let [sum, dropped] = [0, 0];
  for (const value of values) {
    const next = sum + value;
    dropped += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + dropped;
}
