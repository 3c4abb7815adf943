import { momentsOf } from './moments';

/** The mean of one cell, and how unsure it is: the square of its standard error. */
export type Cell = { readonly mean: number; readonly errorSquare: number };

export type Shrunk = {
  /** Where all cells are drawn to. */
  readonly towards: number;
  /** For each cell its estimate, and how much of its own mean is left in it; 0 to 1. */
  readonly cells: readonly { readonly estimate: number; readonly ownShare: number }[];
};

/**
 * Means of several cells, each drawn towards the mean of them all by as much as chance alone would set them apart: of the best and the
 * worst of many, part was luck.
 *
 * Method: parametric empirical Bayes for means that are normal about a common one. How far the cells truly differ, A, is solved for so that
 * Σ w [k/(k−1) (mean − μ)² − errorSquare − A] is nothing, with w = 1/(errorSquare + A) and μ the mean by these weights; never below nothing
 * (the positive part). Each cell keeps 1 − (k−3)/(k−1) · errorSquare/(errorSquare + A) of its own. Where the errors were themselves estimated
 * from pooled squares of d degrees of freedom, the shrinking is by d/(d+2) less. With all errors alike it is the estimator of James and
 * Stein towards the mean, held to the positive part. Up to three cells nothing is drawn anywhere: it would not help.
 *
 * @param cells    at least one; finite means, errorSquare ≥ 0
 * @param degrees  of freedom of the errors, > 0; null where the errors are known
 * @returns        estimates between the cell's own mean and the common one, in the order of the cells
 * @throws RangeError on no cells or numbers that are none
 * @source         C. N. Morris, Journal of the American Statistical Association 78 (1983), 47–55; unknown variance: W. James and C. Stein,
 *                 Proceedings of the Fourth Berkeley Symposium 1 (1961), 361–379
 * @example        four cells 1, 2, 3, 4, each of errorSquare 1, known → towards 2.5, keeping 0.8: 1.3, 2.1, 2.9, 3.7
 */
export function shrinkCells(cells: readonly Cell[], degrees: number | null): Shrunk {
  const k = cells.length;
  if (
    k === 0 ||
    !cells.every(({ mean, errorSquare }) => Number.isFinite(mean) && errorSquare >= 0 && errorSquare < Infinity)
  )
    throw new RangeError('cells with a mean and an error are wanted');
  if (degrees !== null && !(degrees > 0)) throw new RangeError(`degrees of freedom above 0 are wanted: ${degrees}`);
  const between = spreadBetween(cells);
  const towards = commonMean(cells, between);
  const most = Math.max(0, (k - 3) / Math.max(1, k - 1)) * (degrees === null ? 1 : degrees / (degrees + 2));
  return {
    towards,
    cells: cells.map(({ mean, errorSquare }) => {
      // Of two nothings the cell is exact: it keeps its own.
      const drawn = errorSquare === 0 ? 0 : (most * errorSquare) / (errorSquare + between);
      return { estimate: mean + drawn * (towards - mean), ownShare: 1 - drawn };
    }),
  };
}

/**
 * The means of several groups of values, drawn towards their common mean; errors from the spread within all groups together.
 *
 * @param groups  at least one, of at least one value each
 * @returns       as `shrinkCells`; nothing is drawn where no group has two values, since then no spread is known
 * @throws RangeError on no groups, an empty one, or values that are no numbers
 * @source        as `shrinkCells`; pooled variance: arithmetic
 * @example       [[1, 3], [2, 4]] → two groups: each keeps its own, 2 and 3
 */
export function shrinkMeans(groups: readonly (readonly number[])[]): Shrunk {
  const moments = groups.map(momentsOf);
  const degrees = moments.reduce((sum, { count }) => sum + count - 1, 0);
  const squares = moments.reduce((sum, { count, variance }) => sum + (variance ?? 0) * (count - 1), 0);
  const pooled = degrees > 0 ? squares / degrees : 0;
  const cells = moments.map(({ count, mean }) => ({ mean, errorSquare: pooled / count }));
  return shrinkCells(cells, degrees > 0 ? degrees : null);
}

function commonMean(cells: readonly Cell[], between: number): number {
  const weights = cells.map(({ errorSquare }) => 1 / (errorSquare + between));
  // Cells without any error weigh alike, and all there is.
  const plain = weights.every(Number.isFinite) ? weights : weights.map((weight) => (weight === Infinity ? 1 : 0));
  const all = plain.reduce((sum, weight) => sum + weight, 0);
  return cells.reduce((sum, { mean }, at) => sum + ((plain[at] ?? 0) / all) * mean, 0);
}

// The sum falls as A rises: its root is found by halves.
function spreadBetween(cells: readonly Cell[]): number {
  const k = cells.length;
  if (k < 2) return 0;
  const over = (between: number) => {
    const towards = commonMean(cells, between);
    return cells.reduce(
      (sum, { mean, errorSquare }) =>
        sum + ((k / (k - 1)) * (mean - towards) ** 2 - errorSquare - between) / (errorSquare + between),
      0,
    );
  };
  const means = cells.map(({ mean }) => mean);
  const widest = (Math.max(...means) - Math.min(...means)) ** 2;
  let [low, high] = [0, 2 * widest];
  if (widest === 0 || over(Number.MIN_VALUE + high * 1e-12) <= 0) return 0;
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (over(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
