import { celsiusOf } from './temperature';

const typedTemperature = /^([-−–]?)(\d{1,3}(?:[.,]\d)?)\s*(?:°?\s*([cf]))?$/i;
const mostTenthC = 500;

/**
 * A temperature as it is typed: degrees Celsius, unless it says Fahrenheit.
 *
 * @returns  whole tenths from −500 to 500, to the nearest [tenths of °C]; null where it is none of these
 * @example  readTemperature('−2.5') → −25; readTemperature('40 °F') → 44
 */
export function readTemperature(text: string): number | null {
  const [, minus, digits = '', unit = 'c'] = typedTemperature.exec(text.trim()) ?? [];
  if (digits === '') return null;
  const degrees = Number(digits.replace(',', '.')) * (minus ? -1 : 1);
  const tenthC = Math.round((unit.toLowerCase() === 'f' ? celsiusOf(degrees) : degrees) * 10);
  // A nought below nought is none.
  return Math.abs(tenthC) <= mostTenthC ? tenthC || 0 : null;
}

/**
 * A temperature in words.
 *
 * @param tenthC  whole tenths [tenths of °C]
 * @throws RangeError on anything else
 * @example       formatTemperature(−25) → '−2.5 °C'
 */
export function formatTemperature(tenthC: number): string {
  if (!Number.isSafeInteger(tenthC)) throw new RangeError(`whole tenths of a degree are wanted: ${tenthC}`);
  return `${tenthC < 0 ? '−' : ''}${Math.abs(tenthC) / 10} °C`;
}
