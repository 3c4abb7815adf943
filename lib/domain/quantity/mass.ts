import type { Units } from './length';
import { formatMass } from './load';
import { isTwoWays } from './two-ways';

/** A pound [g], exactly. */
export const poundG = 453.59237;
/** An ounce [g]. */
export const ounceG = poundG / 16;
/** A hundredweight, the long one of 112 lb [g]. */
export const cwtG = 112 * poundG;
/** A ton of twenty hundredweight [g]. */
export const tonG = 20 * cwtG;
const mostG = 1_000_000_000;

/**
 * A weight in a member's units: grams, kilograms and tonnes, or ounces, pounds, hundredweight and tons.
 *
 * Method: below a stone to the nearest ounce, below a ton to the nearest pound, above to the nearest hundredweight.
 *
 * @param massG  ≥ 0, up to 10¹² [g]
 * @throws RangeError otherwise
 * @source       pound: Weights and Measures Act 1985, Schedule 1; the hundredweight is the long one, of 112 lb
 * @example      formatMassIn(152_407, 'imperial') → '3 cwt'; formatMassIn(170, 'metric') → '170 g'
 */
export function formatMassIn(massG: number, units: Units): string {
  if (!(massG >= 0 && massG <= 1e12)) throw new RangeError(`a weight is a number from 0: ${massG}`);
  if (units === 'metric') return massG < 1000 ? `${Math.round(massG)} g` : formatMass(massG);
  const ounces = Math.round(massG / ounceG);
  if (ounces < 16) return `${ounces} oz`;
  if (ounces < 14 * 16) return both(ounces, 16, 'lb', 'oz');
  const pounds = Math.round(massG / poundG);
  if (pounds < 112) return `${pounds} lb`;
  if (pounds < 20 * 112) return both(pounds, 112, 'cwt', 'lb');
  const hundredweight = Math.round(massG / cwtG);
  return both(hundredweight, 20, hundredweight < 40 ? 'ton' : 'tons', 'cwt');
}

function both(count: number, inOne: number, large: string, small: string): string {
  const whole = `${Math.floor(count / inOne).toLocaleString('en-GB')} ${large}`;
  return count % inOne === 0 ? whole : `${whole} ${count % inOne} ${small}`;
}

const typedMass =
  /^(\d{1,9}(?:[.,]\d{1,4})?)\s*(kg|g|t|tonnes?|tons?|cwt|lbs?|oz)?(?:\s*,?\s*(\d{1,3}(?:[.,]\d{1,2})?)\s*(cwt|lbs?|oz))?$/i;
const unitG = { kg: 1000, g: 1, t: 1_000_000, tonne: 1_000_000, ton: tonG, cwt: cwtG, lb: poundG, oz: ounceG };
const below = { ton: 'cwt', cwt: 'lb', lb: 'oz' } as const;

/**
 * A weight as it is typed: `5 kg`, `500 g`, `12 lb 4 oz`, `3 cwt`; a bare number is kilograms, or pounds for whoever weighs in them.
 *
 * @param units  what the member weighs in
 * @returns      whole grams ≥ 0, up to a thousand tonnes; null where it is no weight, or could be read two ways
 * @source       pound: Weights and Measures Act 1985, Schedule 1; the hundredweight is the long one, of 112 lb
 * @example      readMass('1 cwt', 'metric') → 50,802; readMass('1 lb 2 oz', 'metric') → 510
 */
export function readMass(text: string, units: Units): number | null {
  const typed = typedMass.exec(text.trim());
  if (!typed || isTwoWays(text)) return null;
  const unit = typed[2] ? singular(typed[2]) : units === 'metric' ? 'kg' : 'lb';
  const rest = typed[4] ? singular(typed[4]) : null;
  if (rest !== null && (typed[2] === undefined || below[unit as keyof typeof below] !== rest)) return null;
  const restG = rest === null ? 0 : decimal(typed[3]) * unitG[rest];
  // Twelve pounds and twenty ounces is a slip, not a weight.
  if (restG >= unitG[unit] && rest !== null) return null;
  const massG = Math.round(decimal(typed[1]) * unitG[unit] + restG);
  return massG <= mostG ? massG : null;
}

/**
 * A weight of a jar's size as it is typed: as `readMass`, but a bare number is grams, or ounces for whoever weighs in pounds.
 *
 * @param units  what the member weighs in
 * @returns      whole grams ≥ 0, up to a thousand tonnes; null where it is no weight
 * @source       as `readMass`
 * @example      readSmallMass('225', 'metric') → 225; readSmallMass('8', 'imperial') → 227
 */
export function readSmallMass(text: string, units: Units): number | null {
  const isBare = /^[\d.,\s]*$/.test(text);
  return readMass(isBare ? `${text} ${units === 'metric' ? 'g' : 'oz'}` : text, units);
}

function singular(unit: string): keyof typeof unitG {
  const plain = unit.toLowerCase();
  return (plain.length > 2 && plain.endsWith('s') ? plain.slice(0, -1) : plain) as keyof typeof unitG;
}

function decimal(digits: string | undefined): number {
  return Number(digits?.replace(',', '.') ?? 0);
}
