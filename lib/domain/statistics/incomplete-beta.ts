import { logGamma } from './log-gamma';

const mostSteps = 10_000;
const smallest = 1e-300;

/**
 * The share of a beta distribution that lies below a value: the regularised incomplete beta function.
 *
 * Method: its continued fraction by Lentz's rule, from the side on which it runs out quickly.
 *
 * @param x            0 to 1
 * @param a, b         > 0, up to 10⁹
 * @returns            0 to 1, within 10⁻¹² for a and b up to some thousands
 * @throws RangeError  on anything else
 * @source             Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, formulas 26.5.2 and 26.5.8; W. J. Lentz, Applied
 *                     Optics 15 (1976), 668–671
 * @example            incompleteBeta(0.5, 2, 2) → 0.5
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (!(x >= 0 && x <= 1)) throw new RangeError(`a share from 0 to 1 is wanted: ${x}`);
  if (!(a > 0 && a <= 1e9 && b > 0 && b <= 1e9)) throw new RangeError(`numbers above 0 are wanted: ${a}, ${b}`);
  if (x === 0 || x === 1) return x;
  const factor = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (factor * fraction(x, a, b)) / a : 1 - (factor * fraction(1 - x, b, a)) / b;
}

function fraction(x: number, a: number, b: number): number {
  let [c, d] = [1, 1 / away(1 - ((a + b) * x) / (a + 1))];
  let value = d;
  for (let m = 1; m <= mostSteps; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    let change = 1;
    for (const term of [even, odd]) {
      d = 1 / away(1 + term * d);
      c = away(1 + term / c);
      change = c * d;
      value *= change;
    }
    if (Math.abs(change - 1) < 1e-15) break;
  }
  return value;
}

function away(value: number): number {
  return Math.abs(value) < smallest ? smallest : value;
}
