import { parseLength, type Units } from '../quantity/length';
import { farthestCm } from './drawn-paths';

export type TypedDistance =
  | { readonly ok: true; readonly cm: number }
  | { readonly ok: false; readonly code: 'not-a-distance' | 'too-far' };

const footCm = 30.48;
// In a list of such numbers a bare one is in metres or feet, however great it is. 1,000 could be read two ways.
const bare = /^(\d{1,6}(?:\.\d{1,4}|,\d{1,2})?)$/;
const metres = /^(\d{1,6}(?:\.\d{1,4}|,\d{1,2})?) ?m$/i;
// Without a unit, `parseLength` would take 27 ½ for centimetres.
const hasUnit = /[a-z'"′’″”]/i;

/**
 * A distance across a site as it is typed into a list of points: `27.5`, `-4`, `27.5 m`, `90 ft 3 in`.
 *
 * Method: a bare number is metres for metric members and feet for imperial ones, unlike a bed's measures, where 60 is
 * centimetres; with a unit, as `parseLength`. To the left of the site's corner, or above it, a distance is below 0.
 *
 * @param units  what the member measures in
 * @returns      whole cm, −1,000,000 to 1,000,000, or why it is no distance
 * @source       inch 25.4 mm: Weights and Measures Act 1985, Schedule 1
 * @example      parseDistance('-2.5', 'metric') → −250; parseDistance('10', 'imperial') → 305
 */
export function parseDistance(text: string, units: Units): TypedDistance {
  const [, sign = '', typed = ''] = /^([-−–]?)\s*(.*)$/s.exec(text.trim()) ?? [];
  const cm = unsigned(typed, units);
  if (typeof cm === 'string') return { ok: false, code: cm };
  if (cm > farthestCm) return { ok: false, code: 'too-far' };
  // Never −0.
  return { ok: true, cm: sign && cm ? -cm : cm };
}

function unsigned(typed: string, units: Units): number | 'not-a-distance' | 'too-far' {
  const number = (found: string) => Number(found.replace(',', '.'));
  const plain = bare.exec(typed)?.[1];
  if (plain !== undefined) return Math.round(number(plain) * (units === 'metric' ? 100 : footCm));
  const inMetres = metres.exec(typed)?.[1];
  if (inMetres !== undefined) return Math.round(number(inMetres) * 100);
  if (units === 'metric' && !hasUnit.test(typed)) return 'not-a-distance';
  const read = parseLength(typed, units);
  if (read.ok) return Math.round(read.tenthMm / 100);
  return read.code === 'too-long' ? 'too-far' : 'not-a-distance';
}

/**
 * A distance as it stands in such a list, so that reading it again gives the same.
 *
 * @param cm  whole number
 * @example   formatDistance(-250, 'metric') → '-2.5'; formatDistance(305, 'imperial') → '10.01'
 */
export function formatDistance(cm: number, units: Units): string {
  // A hundredth of a foot is a third of a centimetre: the nearest one reads back as the same whole centimetre.
  return String(Number((cm / (units === 'metric' ? 100 : footCm)).toFixed(2)));
}
