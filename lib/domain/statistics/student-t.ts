import { positive } from '../quantity/checked';
import { incompleteBeta } from './incomplete-beta';
import { normalQuantile } from './normal-quantile';

/** Beyond so many degrees of freedom the normal distribution serves. */
const asNormal = 1e7;

/**
 * The share of Student's t distribution that lies below a value.
 *
 * @param t            any finite number
 * @param degrees      of freedom, > 0; they need not be whole
 * @returns            0 to 1
 * @throws RangeError  on anything else
 * @source             Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, formula 26.7.1, by the incomplete beta function
 * @example            studentCdf(2.2281, 10) → 0.975
 */
export function studentCdf(t: number, degrees: number): number {
  if (!Number.isFinite(t)) throw new RangeError(`a finite number is wanted: ${t}`);
  const free = Math.min(asNormal, positive(degrees, 'degrees of freedom'));
  const square = t * t;
  // The smaller of the two shares is worked out, which loses no digits near nothing or near one.
  const outside =
    square < free
      ? 1 - incompleteBeta(square / (free + square), 0.5, free / 2)
      : incompleteBeta(free / (free + square), free / 2, 0.5);
  return t < 0 ? outside / 2 : 1 - outside / 2;
}

/**
 * The value below which a given share of Student's t distribution lies.
 *
 * Method: the share is looked up between two values that are brought together by halves, from a bracket that is doubled until it holds.
 *
 * @param share        from 10⁻⁹ to 1 − 10⁻⁹
 * @param degrees      of freedom, at least 0.5; they need not be whole
 * @returns            a finite number, to eleven digits; minus itself for 1 − share
 * @throws RangeError  on anything else
 * @source             as `studentCdf`, read the other way
 * @example            studentQuantile(0.975, 10) → 2.2281
 */
export function studentQuantile(share: number, degrees: number): number {
  if (!(share >= 1e-9 && share <= 1 - 1e-9)) throw new RangeError(`a share between 0 and 1 is wanted: ${share}`);
  if (!(degrees >= 0.5)) throw new RangeError(`degrees of freedom from a half are wanted: ${degrees}`);
  if (share === 0.5) return 0;
  if (share > 0.5) return -studentQuantile(1 - share, degrees);
  let [high, low] = [0, 2 * normalQuantile(share)];
  while (studentCdf(low, degrees) > share) [high, low] = [low, 2 * low];
  for (let step = 0; step < 200 && low < high; step++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (studentCdf(middle, degrees) > share) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
