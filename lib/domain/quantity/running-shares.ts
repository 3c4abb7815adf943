import { wholeFrom } from './checked';

/**
 * Whole parts of an amount that sum exactly to it, rounded: the running total is rounded, and each part is its step.
 *
 * Method: part k is round(amount up to k) − round(amount up to k − 1), so that nothing is lost or made by rounding, a part is
 * never more than one away from its own share, and what is used so far is always the rounded running amount.
 *
 * @param weights   whole numbers ≥ 0, in order
 * @param amountOf  the exact amount that a weight so far comes to; 0 for 0, never falling
 * @param round     how the running amount is made whole; nearest where nothing is said
 * @returns         as many whole numbers ≥ 0, summing to round(amountOf(Σ weights))
 * @throws RangeError on a weight that is not whole
 * @source          cumulative rounding, common practice
 * @example         runningShares([1, 1, 1], (sum) => sum / 2) → 1, 0, 1
 */
export function runningShares(
  weights: readonly number[],
  amountOf: (soFar: number) => number,
  round: (amount: number) => number = Math.round,
): number[] {
  let [soFar, given] = [0, 0];
  return weights.map((weight) => {
    soFar += wholeFrom(0, weight);
    const before = given;
    given = wholeFrom(before, round(amountOf(soFar)));
    return given - before;
  });
}
