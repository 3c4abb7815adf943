import type { HarvestRecord, Yield } from '@/lib/domain/harvest/yield-per-area';
import { squareYardCm2 } from '@/lib/domain/quantity/area';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';

/** How much it was: a weight in the member's units, or a count. */
export function amountWords(measure: HarvestRecord['measure'], amount: number, units: Units): string {
  if (amount === 0) return 'nothing';
  return measure === 'grams' ? formatMassIn(amount, units) : amount.toLocaleString('en-GB');
}

/** An amount as it is typed again, to the gram. */
export function typedAgain(measure: HarvestRecord['measure'], amount: number, units: Units): string {
  if (measure === 'pieces') return String(amount);
  return units === 'metric' ? `${amount / 1000} kg` : `${amount} g`;
}

/** What a square metre or yard gave. */
export function yieldWords({ measure, perM2, amount, areaCm2 }: Omit<Yield, 'harvests'>, units: Units): string {
  if (amount === 0) return 'nothing';
  if (measure === 'grams') return perM2 === 0 ? `under ${formatRate(1, units)}` : formatRate(perM2, units);
  const [one, unit] = units === 'metric' ? [10_000, 'm²'] : [squareYardCm2, 'sq yd'];
  const pieces = (amount * one) / areaCm2;
  return `${pieces.toLocaleString('en-GB', { maximumSignificantDigits: pieces < 10 ? 2 : 3 })} on 1 ${unit}`;
}

/** A printed range of yields. */
export function rangeWords(leastGPerM2: number, mostGPerM2: number, units: Units): string {
  const [least, most] = [formatRate(leastGPerM2, units), formatRate(mostGPerM2, units)];
  if (least === most) return least;
  const unitOf = (words: string) => words.slice(words.indexOf(' '));
  return unitOf(least) === unitOf(most) ? `${least.slice(0, least.indexOf(' '))} to ${most}` : `${least} to ${most}`;
}
