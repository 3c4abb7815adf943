import type { Units } from '../quantity/length';
import { cwtG, formatMassIn, ounceG, readMass } from '../quantity/mass';
import type { StoreLot } from './lot';

type Measure = StoreLot['measure'];

/** Up to here a kitchen balance is told in full [g]. */
const fineBelowG = cwtG;

/** More than any shed holds: ten tonnes, or a hundred thousand pieces. */
const most: Readonly<Record<Measure, number>> = { grams: 10_000_000, pieces: 100_000 };

/**
 * An amount of a lot as it is typed: pieces as a whole number, else a weight.
 *
 * @param units  what the member weighs in, for a bare number
 * @returns      whole grams or pieces ≥ 0; null where it is neither, or more than any shed holds
 * @source       weights as `readMass`
 * @example      readAmount('12,5', 'grams', 'metric') → 12,500; readAmount('60', 'pieces', 'metric') → 60
 */
export function readAmount(text: string, measure: Measure, units: Units): number | null {
  const amount = measure === 'grams' ? readMass(text, units) : readCount(text);
  return amount !== null && amount <= most[measure] ? amount : null;
}

function readCount(text: string): number | null {
  return /^\d{1,9}$/.test(text.trim()) ? Number(text.trim()) : null;
}

/**
 * An amount of a lot in a member's units: a bare number where pieces are counted.
 *
 * Method: finer than other weights are told, since what was there, used and bad is to add up before one's eyes: to ten grams, or to the
 * ounce, up to a hundredweight or so.
 *
 * @param amount  whole grams or pieces ≥ 0
 * @throws RangeError on anything else
 * @example       formatAmount(12_530, 'grams', 'metric') → '12.53 kg'; formatAmount(60, 'pieces', 'metric') → '60'
 */
export function formatAmount(amount: number, measure: Measure, units: Units): string {
  if (!Number.isSafeInteger(amount) || amount < 0) throw new RangeError(`an amount is whole, from 0: ${amount}`);
  if (measure === 'pieces') return amount.toLocaleString('en-GB');
  if (amount < 1000 || amount >= fineBelowG) return formatMassIn(amount, units);
  if (units === 'metric') return `${(amount / 1000).toLocaleString('en-GB', { maximumFractionDigits: 2 })} kg`;
  const ounces = Math.round(amount / ounceG);
  return `${Math.floor(ounces / 16)} lb${ounces % 16 ? ` ${ounces % 16} oz` : ''}`;
}
