/**
 * The total nitrogen that a dressing brings.
 *
 * @param rateGPerM2     dressing; whole number ≥ 0 [g/m²]
 * @param nitrogenGPerT  total nitrogen of the material, fresh; whole number ≥ 0 [g/t]
 * @returns              [mg/m²], to the nearest; 1 g/m² is 10 kg/ha
 * @throws RangeError    on anything else
 * @source               contents: AHDB, RB209 Section 2, total nitrogen of farmyard manures
 * @example              nitrogenMgPerM2(10_000, 6_000) → 60,000 (600 kg/ha)
 */
export function nitrogenMgPerM2(rateGPerM2: number, nitrogenGPerT: number): number {
  wholeFrom(0, rateGPerM2);
  wholeFrom(0, nitrogenGPerT);
  return Math.round((rateGPerM2 * nitrogenGPerT) / 1000);
}

/**
 * The heaviest dressing that stays within a nitrogen limit.
 *
 * @param nitrogenGPerT  total nitrogen of the material, fresh; whole number ≥ 1 [g/t]
 * @param limitKgPerHa   whole number ≥ 0 [kg/ha]; 250 in any twelve months on any hectare of English farmland
 * @returns              [g/m²], rounded down so that the limit holds
 * @throws RangeError    on anything else
 * @source               Nitrate Pollution Prevention Regulations 2015, SI 2015/668, regulation 8(1)
 * @example              mostDressingGPerM2(5_000, 250) → 5,000
 */
export function mostDressingGPerM2(nitrogenGPerT: number, limitKgPerHa: number): number {
  wholeFrom(1, nitrogenGPerT);
  wholeFrom(0, limitKgPerHa);
  return Math.floor((limitKgPerHa * 100_000) / nitrogenGPerT);
}

function wholeFrom(least: number, value: number): void {
  if (!Number.isSafeInteger(value) || value < least)
    throw new RangeError(`a whole number from ${least} is wanted: ${value}`);
}
