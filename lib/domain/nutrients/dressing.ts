import { wholeFrom } from '../quantity/checked';

/**
 * What a dressing brings of one nutrient.
 *
 * @param rateGPerM2    dressing; whole number ≥ 0 [g/m²]
 * @param contentGPerT  of the nutrient in the material as it lies; whole number ≥ 0 [g/t]
 * @param percent       the part of it that is asked for, whole number ≥ 0; 100 is all of it [percent]
 * @returns             [mg/m²], rounded once, to the nearest; 100 mg/m² is 1 kg/ha
 * @throws RangeError   on anything else
 * @source              arithmetic; contents are the catalogue's
 * @example             nutrientMgPerM2(10_000, 6_000) → 60,000 (600 kg/ha)
 */
export function nutrientMgPerM2(rateGPerM2: number, contentGPerT: number, percent = 100): number {
  wholeFrom(0, rateGPerM2);
  wholeFrom(0, contentGPerT);
  wholeFrom(0, percent);
  return Math.round((rateGPerM2 * contentGPerT * percent) / 100_000);
}

/**
 * The heaviest dressing that stays within a nitrogen limit.
 *
 * @param nitrogenGPerT   total nitrogen of the material, fresh; whole number ≥ 1 [g/t]
 * @param limitKgPerHa    whole number ≥ 0 [kg/ha]; 250 in any twelve months on any hectare of English farmland
 * @param alreadyMgPerM2  nitrogen that the ground has had within the limit's time; whole number ≥ 0 [mg/m²]
 * @returns               [g/m²], rounded down so that the limit holds; 0 where it is used up
 * @throws RangeError     on anything else
 * @source                Nitrate Pollution Prevention Regulations 2015, SI 2015/668, regulation 8(1)
 * @example               mostDressingGPerM2(5_000, 250) → 5,000
 */
export function mostDressingGPerM2(nitrogenGPerT: number, limitKgPerHa: number, alreadyMgPerM2 = 0): number {
  wholeFrom(1, nitrogenGPerT);
  wholeFrom(0, limitKgPerHa);
  wholeFrom(0, alreadyMgPerM2);
  return Math.max(0, Math.floor(((limitKgPerHa * 100 - alreadyMgPerM2) * 1000) / nitrogenGPerT));
}
