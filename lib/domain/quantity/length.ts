import { type Footprint, footprint } from '../ground/footprint';

export type Units = 'metric' | 'imperial';

/** Tenths of a millimetre, to quarters of one: exact for centimetres, and for inches (254) down to their eighths. */
export type TenthMm = number;

const cm = 100;
const inch = 254;
const foot = 12 * inch;
const mostTenthMm = 1000 * 100 * cm;

export type TypedLength =
  | { readonly ok: true; readonly tenthMm: TenthMm }
  | { readonly ok: false; readonly code: 'empty' | 'not-a-length' | 'too-long' };

/**
 * A length as growers type it: `3.6 m`, `360 cm`, `360`, `3m60`, `12 ft 6 in`, `12' 6"`, `12'6`, `12 6`, `6 ½ in`, `12 1/2 ft`.
 *
 * Method: units written down win; a bare number is centimetres from 20 on and metres below for metric members, feet for
 * imperial ones, and two bare numbers are feet and inches. What could be read two ways (3m6, 1,000 m) is refused.
 *
 * @param units  what the member measures in
 * @returns      tenths of a millimetre, ≥ 0, or why it is no length; never negative, at most 1,000 m
 * @source       inch 25.4 mm: Weights and Measures Act 1985, Schedule 1
 * @example      parseLength('12 ft 6 in', 'metric') → 38,100
 */
export function parseLength(text: string, units: Units): TypedLength {
  const plain = plainer(text);
  if (plain === '') return { ok: false, code: 'empty' };
  const tenthMm = metric(plain, units) ?? imperial(plain, units);
  if (tenthMm === null) return { ok: false, code: 'not-a-length' };
  return tenthMm > mostTenthMm ? { ok: false, code: 'too-long' } : { ok: true, tenthMm: Math.round(tenthMm * 4) / 4 };
}

// A whole number before a fraction belongs to it: 6 ½ and 6 1/2 are 6.5.
const fraction = /(?:(\d+) )?(?<![\d.])(\d{1,2})[/\u2044](2|3|4|8|16)(?!\d)/g;

function plainer(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/(\d?)([½¼¾⅛⅜⅝⅞⅓⅔])/g, (_, before: string, mark: string) => `${before} ${mark}`)
    .normalize('NFKC')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(fraction, (_, whole: string | undefined, part: string, of: string) =>
      decimal(Number(whole ?? 0) + Number(part) / Number(of)),
    )
    .replace(/[′’‘`]/g, "'")
    .replace(/''|[″”“]/g, '"')
    .replace(/(ft|feet|foot|') ?[-–,] ?(?=\d)/g, '$1 ')
    .replace(/(\d),(\d{1,2})(?!\d)/g, '$1.$2');
}

function decimal(value: number): string {
  return String(Number(value.toFixed(4)));
}

function metric(text: string, units: Units): number | null {
  const split = /^(\d{1,4}) ?m ?(?:(\d{2})|(\d{1,2}) ?cm)$/.exec(text);
  if (split) return Number(split[1]) * 100 * cm + Number(split[2] ?? split[3]) * cm;
  const one = /^(\d{0,7}(?:\.\d{1,4})?)\s*(m|cm|mm|metres?|meters?)?$/.exec(text);
  if (!one?.[1] || (one[2] === undefined && units === 'imperial')) return null;
  const value = Number(one[1]);
  if (one[2] === 'cm') return value * cm;
  if (one[2] === 'mm') return (value * cm) / 10;
  if (one[2] !== undefined) return value * 100 * cm;
  return value >= 20 ? value * cm : value * 100 * cm;
}

function imperial(text: string, units: Units): number | null {
  const inches = /^(\d{0,5}(?:\.\d{1,4})?)\s*(?:in|ins|inch|inches|")$/.exec(text);
  if (inches?.[1]) return Number(inches[1]) * inch;
  const marked =
    /^(\d{0,5}(?:\.\d{1,4})?)\s*(?:ft|feet|foot|')\s*(?:(\d{1,2}(?:\.\d{1,4})?)\s*(?:in|ins|inch|inches|")?)?$/.exec(
      text,
    );
  const bare = units === 'imperial' ? /^(\d{1,5}(?:\.\d{1,4})?)(?:\s+(\d{1,2}(?:\.\d{1,4})?))?$/.exec(text) : null;
  const found = marked ?? bare;
  if (!found?.[1]) return null;
  const rest = Number(found[2] ?? 0);
  return rest < 12 ? Number(found[1]) * foot + rest * inch : null;
}

/**
 * A rectangle whose exact edges are rounded to whole centimetres, so that beds that touch as typed stay touching.
 *
 * Method: each edge is rounded, not the size: in feet, four beds of 4 ft side by side end where the next begins.
 *
 * @param x, y, width, length  tenths of a millimetre, ≥ 0; sizes that round to nothing are refused
 * @throws RangeError as `footprint`
 * @example 4 ft beds at 0, 4, 8 ft → widths 122, 122, 122 with edges at 0, 122, 244, 366
 */
export function footprintOfEdges(typed: { x: TenthMm; y: TenthMm; width: TenthMm; length: TenthMm }): Footprint {
  const edge = (tenthMm: TenthMm) => Math.round(tenthMm / cm);
  const [xCm, yCm] = [edge(typed.x), edge(typed.y)];
  return footprint(xCm, yCm, edge(typed.x + typed.width) - xCm, edge(typed.y + typed.length) - yCm);
}

/**
 * A length of whole centimetres in a member's units.
 *
 * @throws RangeError below 0, or on no number
 * @example formatLength(360, 'metric') → '3.60 m'; formatLength(366, 'imperial') → '12 ft 0 in'
 */
export function formatLength(lengthCm: number, units: Units): string {
  if (!Number.isFinite(lengthCm) || lengthCm < 0) throw new RangeError(`a length is a number from 0: ${lengthCm}`);
  if (units === 'metric') return `${(lengthCm / 100).toFixed(2)} m`;
  const inches = Math.round((lengthCm * cm) / inch);
  return `${Math.floor(inches / 12)} ft ${inches % 12} in`;
}
