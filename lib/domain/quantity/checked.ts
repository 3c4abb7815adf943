/** Below this nothing on a plot is measured, and above that nothing lies on one: what is between stays finite in any formula here. */
const least = 1e-6;
const most = 1e12;

/**
 * A measure that is really there: a number above nothing, neither vanishing nor beyond all ground.
 *
 * @param value  in any unit
 * @param what   what it measures, for the error
 * @returns      the same value, 10⁻⁶ to 10¹², so that products, quotients and sums of a few stay finite
 * @throws RangeError on nothing, less than nothing, NaN, Infinity or beyond these bounds
 * @example      positive(3.5, 'a height') → 3.5
 */
export function positive(value: number, what: string): number {
  if (!(value >= least && value <= most)) throw new RangeError(`${what} is a number above 0: ${value}`);
  return value;
}

/**
 * A whole number from a least one on, exact as numbers are kept.
 *
 * @param least  the smallest that will do
 * @param value  in any unit
 * @returns      the same value
 * @throws RangeError on a fraction, on less, and beyond 2⁵³
 * @example      wholeFrom(1, 3) → 3
 */
export function wholeFrom(least: number, value: number): number {
  if (!Number.isSafeInteger(value) || value < least)
    throw new RangeError(`a whole number from ${least} is wanted: ${value}`);
  return value;
}
