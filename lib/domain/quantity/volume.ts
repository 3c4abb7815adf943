import { isTwoWays } from './two-ways';

/** A gallon, the imperial one [L]. */
export const gallonL = 4.54609;

const mostMl = 1_000_000_000;
const oneMl = { ml: 1, l: 1000, gal: gallonL * 1000, pt: (gallonL * 1000) / 8 };

const typedVolume =
  /^(\d{1,7}(?:[.,]\d{1,3})?)\s*(ml|millilit(?:re|er)s?|l|lit(?:re|er)s?|gal|gals|gallons?|pt|pts|pints?)?$/i;

/**
 * What a bucket or a jar holds, as it is typed: `20`, `20 L`, `370 ml`, `2 gallons`, `1 pint`.
 *
 * Method: a bare number is litres, or millilitres for a jar, for everybody: loads and jars are kept in them.
 *
 * @param text  a number, and its unit
 * @param bare  what a number by itself is
 * @returns     whole millilitres ≥ 0, up to a thousand cubic metres; null where it is no volume, or could be read two ways
 * @source      gallon 4.54609 L, eight pints: from memory; eight of them are the bushel of the Weights and Measures Act 1878
 * @example     readVolumeMl('2 gallons', 'l') → 9,092; readVolumeMl('370', 'ml') → 370
 */
export function readVolumeMl(text: string, bare: 'l' | 'ml'): number | null {
  const typed = typedVolume.exec(text.trim());
  if (!typed || isTwoWays(text)) return null;
  const volumeMl = Math.round(Number(typed[1]?.replace(',', '.')) * oneMl[unitOf(typed[2]) ?? bare]);
  return volumeMl <= mostMl ? volumeMl : null;
}

function unitOf(unit: string | undefined): keyof typeof oneMl | null {
  const plain = unit?.toLowerCase();
  if (!plain) return null;
  if (plain.startsWith('m')) return 'ml';
  if (plain.startsWith('l')) return 'l';
  return plain.startsWith('g') ? 'gal' : 'pt';
}
