import { formatMonthDay, parseMonthDay } from '../calendar/month-day';
import { allows, type Setting, type WholeSetting } from '../catalogue/setting-row';
import { gPerM2Of, type RateUnit, rateIn, rateUnits } from '../quantity/area-rate';
import type { Units } from '../quantity/length';
import { formatShortLength, parseShortLength } from '../quantity/short-length';

/**
 * A value of a recipe or a habit as it is typed or chosen, in the member's own units.
 *
 * Method: by the row's kind and unit: a short length, a rate, a pH with its tenth, a whole number; a choice by its key; a day of the
 * year. A bare rate is the member's customary one; a unit that stands beside it wins.
 *
 * @param text   what was typed, not empty
 * @param units  what the member measures in
 * @returns      a value that the row allows, or null
 * @source       units: `area-rate`, `length`
 * @example      4 oz where the row is in g/m² → 136; 24 in → 61 cm; `1 Nov` → 11-01
 */
export function readTyped(row: Setting, text: string, units: Units): string | number | null {
  const value = valueOf(row, text.trim(), units);
  return allows(row, value) ? value : null;
}

function valueOf(row: Setting, text: string, units: Units): string | number | null {
  if (row.kind === 'choice') return text;
  if (row.kind === 'month-day') return parseMonthDay(text);
  if (row.unit === 'cm') {
    const length = parseShortLength(text, units);
    return length.ok ? Math.round(length.tenthMm / 100) : null;
  }
  if (row.unit === 'g/m²') return readRate(row, text, units);
  const plain = text.endsWith(row.unit) ? text.slice(0, -row.unit.length).trim() : text;
  if (row.unit === 'tenths of pH') return /^\d{1,2}(?:[.,]\d)?$/.test(plain) ? Math.round(numberOf(plain) * 10) : null;
  return /^\d{1,9}$/.test(plain) ? Number(plain) : null;
}

function readRate(row: WholeSetting, text: string, units: Units): number | null {
  const found = /^(\d{1,6}(?:\.\d{1,4}|,\d{1,2})?) ?(\D.*)?$/.exec(text);
  if (!found?.[1]) return null;
  const unit = found[2] === undefined ? customaryUnit(row, units) : unitNamed.get(nameOf(found[2]));
  if (!unit) return null;
  const amount = numberOf(found[1]);
  return amount === 0 ? 0 : Math.round(gPerM2Of(amount, unit));
}

function customaryUnit({ typedIn }: WholeSetting, units: Units): RateUnit {
  if (units === 'metric') return typedIn === 'kg' ? 'kg/m²' : 'g/m²';
  return typedIn === 'kg' ? 'lb/sq yd' : 'oz/sq yd';
}

const unitNamed = new Map<string, RateUnit>([
  ['g', 'g/m²'],
  ['kg', 'kg/m²'],
  ['oz', 'oz/sq yd'],
  ['lb', 'lb/sq yd'],
  ...rateUnits.map((unit) => [nameOf(unit), unit] as const),
]);

// m2 as m², whatever its case.
function nameOf(unit: string): string {
  return unit.normalize('NFKC').toLowerCase();
}

function numberOf(text: string): number {
  return Number(text.replace(',', '.'));
}

/**
 * A value as it would be typed, so that reading it gives the same value again.
 *
 * Method: rates and lengths with the fewest figures that read back; units stand beside them.
 *
 * @param value  one that the row allows
 * @returns      text that `readTyped` takes
 * @throws RangeError where the row does not allow the value
 * @example      136 g/m², imperial → '4 oz/sq yd'; 61 cm → '24 in'
 */
export function asTyped(row: Setting, value: string | number, units: Units): string {
  if (!allows(row, value)) throw new RangeError(`not allowed here: ${value}`);
  if (row.kind === 'month-day') return formatMonthDay(String(value));
  if (row.kind === 'choice') return String(value);
  const number = Number(value);
  if (row.unit === 'cm') return formatShortLength(number, units);
  if (row.unit === 'tenths of pH') return (number / 10).toFixed(1);
  return row.unit === 'g/m²' ? rateAsTyped(row, number, units) : String(value);
}

/**
 * The least and the most that may be typed into a row's field, in the member's own units.
 *
 * Method: as typed; rates to the tenth, the most rounded down and the least up, so that typing what is shown is taken.
 *
 * @returns  texts that `readTyped` takes
 * @example  manure, imperial → '0 lb/sq yd' to '36.8 lb/sq yd'; trench, metric → '30 cm' to '100 cm'
 */
export function boundsAsTyped(row: Setting & WholeSetting, units: Units): { least: string; most: string } {
  const { least, most } = row;
  if (row.unit !== 'g/m²') return { least: asTyped(row, least, units), most: asTyped(row, most, units) };
  const unit = customaryUnit(row, units);
  const tenths = (gPerM2: number, round: (value: number) => number) =>
    `${gPerM2 === 0 ? 0 : round(rateIn(gPerM2, unit) * 10) / 10} ${unit}`;
  return { least: tenths(least, Math.ceil), most: tenths(most, Math.floor) };
}

function rateAsTyped(row: Setting & WholeSetting, rateGPerM2: number, units: Units): string {
  const unit = customaryUnit(row, units);
  if (rateGPerM2 === 0) return `0 ${unit}`;
  const texts = [0, 1, 2, 3, 4].map((digits) => `${rateIn(rateGPerM2, unit).toFixed(digits)} ${unit}`);
  return texts.find((text) => readTyped(row, text, units) === rateGPerM2) ?? `${rateGPerM2} g/m²`;
}
