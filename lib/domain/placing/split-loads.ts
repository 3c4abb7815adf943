import { wholeFrom } from '../quantity/checked';

/** A plot that loads may go to, and how much of them it draws. */
export type Drawing = { readonly id: string; readonly weight: number };

/**
 * To which of a holding's plots its loads go: a booking is for all of them together.
 *
 * Method: in proportion to the weights; whole loads by the largest remainders, of equal ones the plot named first.
 *
 * @param loads  whole number ≥ 0 [barrow-loads]
 * @param plots  one or more; weights are whole numbers ≥ 0, such as the ground that is due [cm²]; all 0 counts as all alike
 * @returns      whole loads of each plot, summing to `loads`; none differs from its exact share by a load or more
 * @throws RangeError on no plot, or on numbers that are not whole
 * @source       Hamilton's method of largest remainders, textbook
 * @example      7 loads; weights 2, 1 → 5, 2
 */
export function splitLoads(loads: number, plots: readonly Drawing[]): Map<string, number> {
  wholeFrom(0, loads);
  if (plots.length === 0) throw new RangeError('loads go to a plot');
  const total = plots.reduce((sum, { weight }) => sum + BigInt(wholeFrom(0, weight)), 0n);
  const weightOf = ({ weight }: Drawing) => (total === 0n ? 1n : BigInt(weight));
  const whole = total === 0n ? BigInt(plots.length) : total;
  const shares = plots.map((plot, at) => {
    const parts = BigInt(loads) * weightOf(plot);
    return { id: plot.id, at, loads: Number(parts / whole), rest: parts % whole };
  });
  const odd = loads - shares.reduce((sum, share) => sum + share.loads, 0);
  const served = new Set(
    shares
      .toSorted((a, b) => (a.rest === b.rest ? a.at - b.at : a.rest > b.rest ? -1 : 1))
      .slice(0, odd)
      .map(({ at }) => at),
  );
  return new Map(shares.map(({ id, at, loads: own }) => [id, own + (served.has(at) ? 1 : 0)]));
}
