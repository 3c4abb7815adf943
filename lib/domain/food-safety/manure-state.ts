import { compostedMaterials, type ManureState, notManure } from '../catalogue/harvest-intervals';
import { wholeFrom } from '../quantity/checked';

/**
 * How far a manure has come, from what it is and how long it was heaped.
 *
 * Method: under three months raw, under a year young, then rotted. Of an age that nobody wrote down it is taken as raw:
 * what a heap looks like is no measure of its age.
 *
 * @param materialKey  of the catalogue; null where nobody said
 * @param ageMonths    whole months in the heap ≥ 0; null where nobody knows
 * @returns            the state and the months; null for what holds no manure
 * @throws RangeError  on months that are none
 * @source             RB209 (stored for three months); RHS (a year's rot); composts: common practice
 * @example            horse manure of 8 months → young; of unknown age → raw; green compost → composted
 */
export function manureStateOf(
  materialKey: string | null,
  ageMonths: number | null,
): { readonly state: ManureState; readonly monthsHeaped: number | null } | null {
  if (ageMonths !== null) wholeFrom(0, ageMonths);
  if (materialKey !== null && notManure.includes(materialKey)) return null;
  if (materialKey !== null && compostedMaterials.includes(materialKey))
    return { state: 'composted', monthsHeaped: ageMonths };
  const months = ageMonths ?? 0;
  return { state: months < 3 ? 'raw' : months < 12 ? 'young' : 'rotted', monthsHeaped: ageMonths };
}
