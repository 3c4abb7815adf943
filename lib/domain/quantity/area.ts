import type { Units } from './length';
import { formatQuarters } from './quarters';
import { isTwoWays } from './two-ways';

// 5½ yards square; the yard is 0.9144 m exactly (Weights and Measures Act 1985, Schedule 1): 25.29285264 m².
const rodTenthMm2 = (5.5 * 9144) ** 2;
const cm2TenthMm2 = 10_000;
/** A square foot [cm²]. */
export const squareFootCm2 = 30.48 ** 2;
/** A square yard [cm²]. */
export const squareYardCm2 = 91.44 ** 2;
/** A square rod, 30¼ square yards [cm²]. */
export const squareRodCm2 = rodTenthMm2 / cm2TenthMm2;

/**
 * The area of quarter rods (poles, perches) [cm²], to the nearest.
 *
 * @param quarterRods  whole number ≥ 1
 * @throws RangeError  otherwise
 * @source             1 rod = 30¼ square yards; yard: Weights and Measures Act 1985, Schedule 1
 * @example            areaOfQuarterRodsCm2(40) → 2,529,285 (10 rods, 252.93 m²)
 */
export function areaOfQuarterRodsCm2(quarterRods: number): number {
  if (!Number.isSafeInteger(quarterRods) || quarterRods < 1)
    throw new RangeError(`quarter rods are whole numbers from 1: ${quarterRods}`);
  return Math.round((quarterRods * rodTenthMm2) / 4 / cm2TenthMm2);
}

/** Quarter rods as rods: 10 rods, 2½ rods; a whole number ≥ 1. */
export function formatRods(quarterRods: number): string {
  return `${formatQuarters(quarterRods)} ${quarterRods > 4 ? 'rods' : 'rod'}`;
}

/**
 * An area in quarter rods, to the nearest: what a plot's number of rods is read back from.
 *
 * @param areaCm2      0 to 10¹² [cm²]
 * @returns            whole number ≥ 0; of areaOfQuarterRodsCm2(q), q again
 * @throws RangeError  otherwise
 * @source             as `areaOfQuarterRodsCm2`
 * @example            quarterRodsOfCm2(2_500_000) → 40 (9.88 rods, nearest 10)
 */
export function quarterRodsOfCm2(areaCm2: number): number {
  if (!(areaCm2 >= 0 && areaCm2 <= 1e12)) throw new RangeError(`an area is a number from 0: ${areaCm2}`);
  return Math.round((areaCm2 * 4) / squareRodCm2);
}

/**
 * An area in a member's units, to a tenth below 100 and whole above.
 *
 * @example formatArea(1_234_500, 'metric') → '123 m²'; formatArea(12_345, 'metric') → '1.2 m²'
 */
export function formatArea(areaCm2: number, units: Units): string {
  if (!Number.isFinite(areaCm2) || areaCm2 < 0) throw new RangeError(`an area is a number from 0: ${areaCm2}`);
  const [value, unit] = units === 'metric' ? [areaCm2 / 10_000, 'm²'] : [areaCm2 / squareFootCm2, 'sq ft'];
  return `${value.toLocaleString('en-GB', { maximumFractionDigits: value < 100 ? 1 : 0 })} ${unit}`;
}

/**
 * An area as it is typed, in a member's own units unless it names others.
 *
 * @returns  whole square centimetres, up to 100 hectares; null where it is no area, or could be read two ways
 * @example  readArea('12.5', 'metric') → 125,000; readArea('10 rods', 'metric') → 2,529,285
 */
export function readArea(text: string, units: Units): number | null {
  const typed =
    /^(\d{1,6}(?:[.,]\d{1,3})?)\s*(m2|m²|sq ?m|sq ?ft|ft2|ft²|sq ?yds?|yd2|yd²|rods?|poles?|perch(?:es)?)?$/i.exec(
      text.trim(),
    );
  if (!typed || isTwoWays(text)) return null;
  const value = Number(typed[1]?.replace(',', '.'));
  const unit = typed[2]?.toLowerCase() ?? (units === 'metric' ? 'm2' : 'sq ft');
  const cm2 = Math.round(value * unitCm2(unit));
  return cm2 <= 100 * 100_000_000 ? cm2 : null;
}

function unitCm2(unit: string): number {
  if (unit.includes('m')) return 10_000;
  if (unit.includes('ft')) return squareFootCm2;
  return unit.includes('yd') ? squareYardCm2 : squareRodCm2;
}

/** A share of a whole in whole percent; never 0 for something, never 100 for less than all. */
export function percent(part: number, whole: number): string {
  if (!Number.isFinite(part) || !Number.isFinite(whole)) throw new RangeError('a share is of numbers');
  if (whole <= 0) return '–';
  const rounded = Math.round((part * 100) / whole);
  if (rounded === 0 && part > 0) return 'under 1 %';
  if (rounded === 100 && part < whole) return 'over 99 %';
  return `${rounded} %`;
}
