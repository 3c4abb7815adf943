const halfLogTwoPi = 0.9189385332046727;
/** Bernoulli numbers over 2k(2k − 1), as the series has them. */
const series = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156] as const;

/**
 * The logarithm of the gamma function.
 *
 * Method: Stirling's series from ten on; below it the value is brought there by Γ(x + 1) = x Γ(x).
 *
 * @param x            > 0, up to 10¹²
 * @returns            within 10⁻¹³ of itself, or of 1 where that is larger
 * @throws RangeError  on anything else
 * @source             Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, formulas 6.1.15 and 6.1.41
 * @example            logGamma(5) → log 24; logGamma(0.5) → log √π
 */
export function logGamma(x: number): number {
  if (!(x > 0 && x <= 1e12)) throw new RangeError(`a number above 0 is wanted: ${x}`);
  let [at, product] = [x, 1];
  for (; at < 10; at++) product *= at;
  const inverse = 1 / (at * at);
  const rest = series.reduceRight((sum, term) => sum * inverse + term, 0) / at;
  return (at - 0.5) * Math.log(at) - at + halfLogTwoPi + rest - Math.log(product);
}
