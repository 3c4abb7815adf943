import type { Units } from '../quantity/length';
import { parseShortLength } from '../quantity/short-length';
import { sowingBounds } from './own-sowing';

const inchCm = 2.54;

/**
 * How far apart plants stand, as a grower types it: a length of a spade's size.
 *
 * @param units  what the member measures in
 * @returns      whole centimetres from 1 to the most that may be said; null where it is none
 * @source       as `parseShortLength`
 * @example      apartTyped('6', 'imperial') → 15; apartTyped('6', 'metric') → 6; apartTyped('1 ft', 'metric') → 30
 */
export function apartTyped(text: string, units: Units): number | null {
  const length = parseShortLength(text, units);
  const apartCm = length.ok ? Math.round(length.tenthMm / 100) : 0;
  return apartCm >= 1 && apartCm <= sowingBounds.apartCm ? apartCm : null;
}

/**
 * The same as it is shown in its field: whole centimetres, or inches to their halves, so that what was typed in either comes back.
 *
 * @example apartShown(15, 'imperial') → '6'
 */
export function apartShown(apartCm: number, units: Units): string {
  return String(units === 'metric' ? apartCm : Math.round((apartCm / inchCm) * 2) / 2);
}

/** What a bare number is. */
export function apartUnit(units: Units): 'cm' | 'in' {
  return units === 'metric' ? 'cm' : 'in';
}
