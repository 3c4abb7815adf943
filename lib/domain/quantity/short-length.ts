import { parseLength, type TypedLength, type Units } from './length';

const inchCm = 2.54;

// A number with no word or mark of a unit beside it.
const bare = /^[^\p{L}'"`′’‘″”“]*\p{N}[^\p{L}'"`′’‘″”“]*$/u;

/**
 * A length of a spade's size as it is typed: as `parseLength`, but a bare number is centimetres, or inches for whoever
 * measures in feet: nobody gives a spit in metres.
 *
 * @param units  what the member measures in
 * @returns      tenths of a millimetre, ≥ 0, or why it is no length
 * @source       inch 25.4 mm: Weights and Measures Act 1985, Schedule 1
 * @example      parseShortLength('8', 'metric') → 800; parseShortLength('2 ft', 'metric') → 6,096
 */
export function parseShortLength(text: string, units: Units): TypedLength {
  return parseLength(bare.test(text) ? `${text} ${units === 'metric' ? 'cm' : 'in'}` : text, units);
}

/**
 * A spade-sized length in a member's units, so that typing what is shown gives the same whole centimetres again.
 *
 * Method: inches to the tenth where whole ones would not read back: a tenth is 0.25 cm, under half a centimetre.
 *
 * @param lengthCm  whole number ≥ 0 [cm]
 * @throws RangeError otherwise
 * @example formatShortLength(60, 'metric') → '60 cm'; formatShortLength(60, 'imperial') → '23.6 in'
 */
export function formatShortLength(lengthCm: number, units: Units): string {
  if (!Number.isSafeInteger(lengthCm) || lengthCm < 0) throw new RangeError(`whole centimetres from 0: ${lengthCm}`);
  if (units === 'metric') return `${lengthCm} cm`;
  const whole = Math.round(lengthCm / inchCm);
  return `${Math.round(whole * inchCm) === lengthCm ? whole : (lengthCm / inchCm).toFixed(1)} in`;
}
