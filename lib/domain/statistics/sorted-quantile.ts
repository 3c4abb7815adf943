/**
 * The value below which a share of some equally likely values lies.
 *
 * Method: the k-th of n values stands for the share (k − ½) ÷ n; between two of them on a straight line.
 *
 * @param sorted  at least one finite value, rising
 * @param share   0 to 1
 * @returns       from the first to the last of them
 * @throws RangeError on no values or a share that is none
 * @source        R. J. Hyndman and Y. Fan, The American Statistician 50 (1996), 361–365: definition 5
 * @example       sortedQuantile([1, 2, 3, 4], 0.5) → 2.5
 */
export function sortedQuantile(sorted: readonly number[], share: number): number {
  if (!(share >= 0 && share <= 1) || sorted.length === 0) throw new RangeError(`a share of some values: ${share}`);
  const place = Math.min(sorted.length - 1, Math.max(0, share * sorted.length - 0.5));
  const [low = 0, high = 0] = [sorted[Math.floor(place)], sorted[Math.ceil(place)]];
  return low + (high - low) * (place - Math.floor(place));
}
