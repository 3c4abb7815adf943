import { positive, wholeFrom } from './checked';
import { formatQuarters } from './quarters';

/** The measure for meal, and how it was come by: one that was weighed goes before any that was reckoned. */
export type JarOrder = {
  /** What the jar holds; > 0 [mL]. */
  readonly jarMl: number;
  /** One jarful without its jar [g]; null while nobody has weighed one. */
  readonly weighedG: number | null;
  /** Of the meal, as published; null where no figure was found. A proxy is another meal whose figure stands in. */
  readonly density: { readonly leastGPerL: number; readonly mostGPerL: number; readonly proxy: string | null } | null;
};

export type Jar =
  | { readonly basis: 'weighed'; readonly jarG: number }
  /** least ≤ jarG ≤ most; to be shown as an estimate, with its proxy, and with the advice to weigh one. */
  | {
      readonly basis: 'estimated';
      readonly jarG: number;
      readonly leastG: number;
      readonly mostG: number;
      readonly proxy: string | null;
    }
  | { readonly basis: 'not-known' };

/**
 * What a jarful of meal weighs.
 *
 * Method: as it was weighed; else what the jar holds × the published density, from its least to its most, and their middle.
 *
 * @param order  jar > 0 [mL], weight > 0 [g], densities > 0 and in order [g/L]
 * @returns      whole grams ≥ 1, or that nothing is known
 * @throws RangeError on anything else, or on a jarful of less than half a gram
 * @source       arithmetic; densities: the catalogue
 * @example      370 mL at 590 to 640 g/L → 228 g, estimated, from 218 to 237
 */
export function jarOf({ jarMl, weighedG, density }: JarOrder): Jar {
  positive(jarMl, 'a jar');
  if (weighedG !== null) return { basis: 'weighed', jarG: wholeGrams(positive(weighedG, 'a jarful')) };
  if (!density) return { basis: 'not-known' };
  const least = (jarMl * positive(density.leastGPerL, 'a density')) / 1000;
  const most = (jarMl * positive(density.mostGPerL, 'a density')) / 1000;
  if (least > most) throw new RangeError('a density ranges from less to more');
  return {
    basis: 'estimated',
    jarG: wholeGrams((least + most) / 2),
    leastG: wholeGrams(least),
    mostG: wholeGrams(most),
    proxy: density.proxy,
  };
}

function wholeGrams(massG: number): number {
  return wholeFrom(1, Math.round(massG));
}

/**
 * A weight of meal by the jar, to the nearest quarter of one.
 *
 * @param massG  > 0 [g]
 * @param jarG   what a jarful weighs; > 0 [g]
 * @returns      as it is said: ½ jar, 2¼ jars; something is never no jar
 * @throws RangeError otherwise
 * @source       arithmetic
 * @example      formatJars(110, 225) → '½ jar'
 */
export function formatJars(massG: number, jarG: number): string {
  const quarters = Math.round((4 * positive(massG, 'meal')) / positive(jarG, 'a jarful'));
  if (quarters === 0) return 'under ¼ jar';
  return `${formatQuarters(quarters)} ${quarters > 4 ? 'jars' : 'jar'}`;
}
