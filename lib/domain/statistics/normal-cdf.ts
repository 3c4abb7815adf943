/**
 * The share of a standard normal distribution that lies below a value.
 *
 * Method: the continued form of the complementary error function by Hastings' rational polynomial with a Gaussian factor.
 *
 * @param z            any finite number
 * @returns            0 to 1, within 7.5 × 10⁻⁸
 * @throws RangeError  on NaN or Infinity
 * @source             Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, formula 26.2.17
 * @example            normalCdf(1.2816) → 0.9
 */
export function normalCdf(z: number): number {
  if (!Number.isFinite(z)) throw new RangeError(`a finite number is wanted: ${z}`);
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z < 0 ? tail : 1 - tail;
}
