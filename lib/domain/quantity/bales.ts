import { positive, wholeFrom } from './checked';

/**
 * How many bales a piece of ground wants.
 *
 * Method: area × rate ÷ the weight of a bale, as a fraction of whole numbers, rounded up once: a bale is bought whole.
 *
 * @param areaCm2     ground to be strawed; whole number ≥ 1 [cm²]
 * @param rateGPerM2  straw laid; whole number ≥ 1 [g/m²]
 * @param baleG       what a bale weighs; whole number ≥ 1 [g]
 * @returns           whole bales ≥ 1
 * @throws RangeError on anything else, or on more straw than can be counted exactly
 * @source            arithmetic; weights of bales: the catalogue
 * @example           balesFor(1_200_000, 500, 13_000) → 5 (60 kg)
 */
export function balesFor(areaCm2: number, rateGPerM2: number, baleG: number): number {
  const straw = exact(wholeFrom(1, areaCm2) * wholeFrom(1, rateGPerM2));
  return Math.ceil(straw / exact(wholeFrom(1, baleG) * 10_000));
}

/**
 * The ground that so many bales cover.
 *
 * @param bales       whole number ≥ 1
 * @param rateGPerM2  straw laid; whole number ≥ 1 [g/m²]
 * @param baleG       what a bale weighs; whole number ≥ 1 [g]
 * @returns           [cm²], rounded down: balesFor of it is never more than these bales
 * @throws RangeError on anything else, or on more straw than can be counted exactly
 * @source            arithmetic
 * @example           areaOfBalesCm2(5, 500, 13_000) → 1,300,000 (130 m²)
 */
export function areaOfBalesCm2(bales: number, rateGPerM2: number, baleG: number): number {
  const straw = exact(exact(wholeFrom(1, bales) * wholeFrom(1, baleG)) * 10_000);
  return Math.floor(straw / wholeFrom(1, rateGPerM2));
}

/**
 * The straw in a layer of a given thickness.
 *
 * Method: a centimetre over a square metre is ten litres.
 *
 * @param thicknessCm   as laid; > 0 [cm]
 * @param densityGPerL  of straw as it lies: shaken out far below that of the bale it came from; > 0 [g/L]
 * @returns             whole grams ≥ 1, to the nearest [g/m²]
 * @throws RangeError   on anything else, or on less than half a gram
 * @source              arithmetic; density of straw: the catalogue
 * @example             strawRateGPerM2(5, 70) → 3,500
 */
export function strawRateGPerM2(thicknessCm: number, densityGPerL: number): number {
  const rate = positive(thicknessCm, 'a thickness') * 10 * positive(densityGPerL, 'a density');
  return wholeFrom(1, Math.round(rate));
}

function exact(product: number): number {
  return wholeFrom(1, product);
}
