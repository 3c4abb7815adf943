import { positive } from '../quantity/checked';

/**
 * What an activity costs a body, from its MET.
 *
 * Method: MET × 3.5 mL of oxygen a kilogram and minute × body weight, at five kilocalories a litre of oxygen: the 200 below.
 * It holds for a group on average and for the ages of the MET's own table; no one person can be told by it.
 *
 * @param met         multiples of sitting still; > 0
 * @param bodyMassKg  > 0 [kg]
 * @returns           [kcal/min], unrounded; > 0
 * @throws RangeError on anything else
 * @source            American Council on Exercise, What formula for calculating energy expenditure
 * @example           energyKcalPerMin(10, 68) → 11.9
 */
export function energyKcalPerMin(met: number, bodyMassKg: number): number {
  return (positive(met, 'a MET') * 3.5 * positive(bodyMassKg, 'a body weight')) / 200;
}
