import { restKcalPerMin as sitting } from '../catalogue/paces';
import { positive } from '../quantity/checked';

/**
 * How much of a session must be rest, so that its mean energy stays at what a body keeps up without tiring.
 *
 * Method: R = T (W − S) ÷ (W − Z), T being the whole session with its rests: then (W (T − R) + Z R) ÷ T = S. Nothing where
 * the work is no harder than the limit. Some print T as working time alone; the balance then does not come out.
 *
 * @param totalMin          the session, rests included; > 0 [min]
 * @param workKcalPerMin    W; > 0 [kcal/min, or any one unit for all three]
 * @param limitKcalPerMin   S; above the cost of resting
 * @param restKcalPerMin    Z; > 0, by default that of sitting
 * @returns                 R [min], unrounded; 0 ≤ R < T, growing with the work
 * @throws RangeError on anything else: where resting itself costs the limit, no rest is enough
 * @source                  Murrell 1965, general form as taught by Freivalds, Pennsylvania State University, IE 553
 * @example                 restMinutes(60, 6, 4) → 26.67
 */
export function restMinutes(
  totalMin: number,
  workKcalPerMin: number,
  limitKcalPerMin: number,
  restKcalPerMin: number = sitting.value,
): number {
  const [total, work] = [positive(totalMin, 'a session'), positive(workKcalPerMin, 'the cost of work')];
  const [limit, rest] = [positive(limitKcalPerMin, 'the limit'), positive(restKcalPerMin, 'the cost of resting')];
  if (limit <= rest) throw new RangeError(`no rest is enough: the limit is ${limit}, resting costs ${rest}`);
  // Work no harder than resting is below the limit too, so the quotient is never of nothing.
  return work <= limit ? 0 : (total * (work - limit)) / (work - rest);
}
