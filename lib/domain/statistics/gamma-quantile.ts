import { positive } from '../quantity/checked';
import { normalQuantile } from './normal-quantile';

/**
 * The value below which a given share of a gamma distribution lies.
 *
 * Method: the cube root of a gamma variable is nearly normal (Wilson and Hilferty). Good to a percent from a shape of 2 on; below
 * it the low tail is short of nothing by being cut at nothing.
 *
 * @param share        above 0, below 1
 * @param shape, rate  > 0; the mean is shape ÷ rate
 * @returns            ≥ 0, rising with share and with shape
 * @throws RangeError  on anything else
 * @source             E. B. Wilson and M. M. Hilferty, Proceedings of the National Academy of Sciences 17 (1931), 684–688
 * @example            gammaQuantile(0.9, 10, 10) → 1.42
 */
export function gammaQuantile(share: number, shape: number, rate: number): number {
  const ninth = 1 / (9 * positive(shape, 'a shape'));
  const root = 1 - ninth + normalQuantile(share) * Math.sqrt(ninth);
  return (shape / positive(rate, 'a rate')) * Math.max(0, root) ** 3;
}
