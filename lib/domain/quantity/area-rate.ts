import { squareFootCm2, squareRodCm2, squareYardCm2 } from './area';
import { positive } from './checked';
import type { Units } from './length';
import { cwtG, ounceG, poundG, tonG } from './mass';

const m2Cm2 = 10_000;
const acreCm2 = 160 * squareRodCm2;

/** What one of each rate is [g/m²]; every one of them follows from the metre, the yard, the gram and the pound. */
const oneGPerM2 = {
  'g/m²': 1,
  'kg/m²': 1000,
  'kg/ha': 0.1,
  't/ha': 100,
  'oz/sq yd': (ounceG * m2Cm2) / squareYardCm2,
  'lb/sq yd': (poundG * m2Cm2) / squareYardCm2,
  'lb/100 sq ft': (poundG * m2Cm2) / (100 * squareFootCm2),
  'lb/rod': (poundG * m2Cm2) / squareRodCm2,
  'cwt/rod': (cwtG * m2Cm2) / squareRodCm2,
  'cwt/acre': (cwtG * m2Cm2) / acreCm2,
  'tons/acre': (tonG * m2Cm2) / acreCm2,
} as const;

export type RateUnit = keyof typeof oneGPerM2;

export const rateUnits = Object.keys(oneGPerM2) as readonly RateUnit[];

/**
 * A dressing in any unit that it is given in, as grams a square metre.
 *
 * @param amount  > 0, in `unit`; a rod is a square rod, a hundredweight 112 lb and a ton 2,240 lb
 * @returns       [g/m²], unrounded; > 0
 * @throws RangeError on anything else
 * @source        yard 0.9144 m, pound 0.45359237 kg: Weights and Measures Act 1985, Schedule 1; rod of 30¼ sq yd
 * @example       gPerM2Of(4, 'oz/sq yd') → 135.6; gPerM2Of(50, 't/ha') → 5,000
 */
export function gPerM2Of(amount: number, unit: RateUnit): number {
  return positive(amount, 'a rate') * oneGPerM2[unit];
}

/**
 * Grams a square metre in any other unit of dressing: the way back.
 *
 * @param rateGPerM2  > 0 [g/m²]
 * @returns           in `unit`, unrounded; > 0
 * @throws RangeError on anything else
 * @source            as `gPerM2Of`
 * @example           rateIn(170, 'oz/sq yd') → 5.01
 */
export function rateIn(rateGPerM2: number, unit: RateUnit): number {
  return positive(rateGPerM2, 'a rate') / oneGPerM2[unit];
}

/**
 * A dressing in a member's units: meals by the gram or the ounce, manure by the kilogram or the pound.
 *
 * @param rateGPerM2  > 0 [g/m²]
 * @throws RangeError otherwise
 * @example           formatRate(170, 'imperial') → '5 oz/sq yd'; formatRate(5000, 'metric') → '5 kg/m²'
 */
export function formatRate(rateGPerM2: number, units: Units): string {
  const small = rateGPerM2 < 1000;
  const unit = units === 'metric' ? (small ? 'g/m²' : 'kg/m²') : small ? 'oz/sq yd' : 'lb/sq yd';
  const digits = unit === 'g/m²' && rateGPerM2 >= 10 ? 0 : 1;
  return `${rateIn(rateGPerM2, unit).toLocaleString('en-GB', { maximumFractionDigits: digits })} ${unit}`;
}
