import type { SourceKey } from '../catalogue/sources';
import { wholeFrom } from '../quantity/checked';
import { mostDressingGPerM2 } from './dressing';
import { contentsOf } from './supply';

export type RateWithin = {
  readonly rateGPerM2: number;
  readonly nitrogenGPerT: number;
  readonly source: SourceKey;
};

/**
 * The heaviest dressing of a material that keeps a nitrogen limit, for a year or as the one dressing of several years.
 *
 * @param materialKey     a material or meal of the catalogue
 * @param limitKgPerHa    for a year; whole number ≥ 0 [kg/ha]
 * @param alreadyMgPerM2  what the ground has had within the years; whole number ≥ 0 [mg/m²]
 * @param years           years that the dressing has to last; whole number ≥ 1
 * @returns               the largest whole rate within the limit [g/m²]; null where the material brings no nitrogen, or
 *                        nobody knows how much
 * @throws RangeError     on an unknown material or a number that will not do
 * @source                contents: the catalogue's
 * @example               rateWithin('horse-manure', 250) → 5,000 g/m²; over three years → 15,000
 */
export function rateWithin(
  materialKey: string,
  limitKgPerHa: number,
  alreadyMgPerM2 = 0,
  years = 1,
): RateWithin | null {
  wholeFrom(1, years);
  const { nitrogen } = contentsOf(materialKey);
  if (!nitrogen || nitrogen.gPerT === 0) return null;
  return {
    rateGPerM2: mostDressingGPerM2(nitrogen.gPerT, wholeFrom(0, limitKgPerHa) * years, alreadyMgPerM2),
    nitrogenGPerT: nitrogen.gPerT,
    source: nitrogen.source,
  };
}
