import { studentQuantile } from '../statistics/student-t';

/**
 * How large a mean difference must be to stand clear of nothing, in units of how far the differences spread from plot to plot. How
 * large that spread is nobody knows beforehand, so this is all that can be said.
 *
 * @param plots  whole pairs; integer ≥ 2
 * @returns      half the width of the interval of 95 cases in 100, over the standard deviation of the differences; > 0
 * @throws RangeError on fewer
 * @source       Student (W. S. Gosset), Biometrika 6 (1908), 1–25
 * @example      showsFrom(3) → 2.48; showsFrom(10) → 0.72
 */
export function showsFrom(plots: number): number {
  if (!Number.isSafeInteger(plots) || plots < 2) throw new RangeError('at least two plots are wanted');
  return studentQuantile(0.975, plots - 1) / Math.sqrt(plots);
}
