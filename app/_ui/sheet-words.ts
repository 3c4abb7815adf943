import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { mealOf } from '@/lib/domain/catalogue/meals';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { formatJars } from '@/lib/domain/quantity/meal-jar';
import type { Span } from '@/lib/domain/quantity/span';
import type { LayoutBy } from '@/lib/domain/sheet/settled-layout';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import type { Amounts, BarrowCount, MealAmount } from '@/lib/domain/trench/layers';

/** What is dug one after another: a trench where something is opened, else a strip. */
export function trenchWord({ method }: Pick<SheetOrder, 'method'>): 'trench' | 'strip' {
  return diggingMethodOf(method).opensTrench ? 'trench' : 'strip';
}

/** So many of them. */
export function trenchesWords(order: Pick<SheetOrder, 'method'>, count: number): string {
  const word = trenchWord(order);
  return `${count} ${count === 1 ? word : word === 'trench' ? 'trenches' : 'strips'}`;
}

/** A volume in litres: to the tenth where it is little. */
export function litres(volumeMl: number): string {
  const value = volumeMl / 1000;
  return `${value.toLocaleString('en-GB', { maximumFractionDigits: value < 10 ? 1 : 0 })} L`;
}

/** Soil in litres, or in cubic metres where it is much. */
export function soilVolume(volumeMl: number): string {
  if (volumeMl < 1_000_000) return litres(volumeMl);
  return `${(volumeMl / 1_000_000).toLocaleString('en-GB', { maximumFractionDigits: 1 })} m³`;
}

/** Soil by its weight, as finely as such a range deserves: to the hundredweight or so where it is tonnes. */
function soilMass(massG: number, units: Units): string {
  const step = massG >= 1_000_000 ? 100_000 : massG >= 100_000 ? 10_000 : 1000;
  return formatMassIn(Math.round(massG / step) * step, units);
}

/** A range in words; one figure where both ends are told alike. */
export function spanWords(span: Span | null, told: (value: number) => string): string {
  if (!span) return 'not known';
  const [least, most] = [told(span.least), told(span.most)];
  return least === most ? least : `${least} to ${most}`;
}

/** What soil weighs, from least to most; where nobody has published it, that. */
export function soilWeight(massG: Span | null, units: Units): string {
  return massG ? spanWords(massG, (value) => soilMass(value, units)) : 'its weight not known';
}

/** How high something lies, from least to most, to the tenth. */
export function heightWords(span: Span, units: Units): string {
  const [size, unit] = units === 'metric' ? [1, 'cm'] : [2.54, 'in'];
  return `${spanWords(span, (cm) => (cm / size).toLocaleString('en-GB', { maximumFractionDigits: 1 }))} ${unit}`;
}

/** Loads, to the tenth. */
export function loadsOf(loads: number): string {
  const tenths = Math.round(loads * 10) / 10;
  if (tenths === 0 && loads > 0) return 'under 0.1 of a load';
  return `${tenths.toLocaleString('en-GB')} ${tenths === 1 ? 'load' : 'loads'}`;
}

/** Meal by the jar and by weight; by weight alone where nobody knows what a jar of it weighs. */
export function mealAmount({ massG, jars }: Pick<MealAmount, 'massG' | 'jars'>, units: Units): string {
  const weight = formatMassIn(massG, units);
  return jars && jars > 0 ? `${formatJars(massG, massG / jars)} (${weight})` : weight;
}

/** A meal's name in the middle of a sentence. */
export function mealName(key: string): string {
  return mealOf(key)?.name.toLowerCase() ?? key;
}

/** The manure's name in the middle of a sentence. */
export function manureName({ manure }: Pick<SheetOrder, 'manure'>): string {
  return materialOf(manure?.materialKey ?? '')?.name.toLowerCase() ?? 'manure';
}

const nth = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** Whether a meal that limes would lie with manure. */
export function limesWithManure({ manure, meal }: Pick<SheetOrder, 'manure' | 'meal'>): boolean {
  return manure !== null && mealOf(meal?.key ?? '')?.limes === true;
}

/** Which barrow it is: the second, the 11th. */
export function barrowName(number: number): string {
  return `${nth[number] ?? `${number}th`} barrow`;
}

/** From which barrow a trench's manure comes, and what is left in it afterwards. */
export function barrowWords(before: BarrowCount, put: Amounts & { readonly barrow: BarrowCount }): string {
  const { number, leftMl } = put.barrow;
  const left = leftMl === 0 ? 'empty afterwards' : `${litres(leftMl)} left in it afterwards`;
  if (number === before.number) return `From the ${barrowName(number)}: ${left}.`;
  const fetched = number - before.number;
  if (fetched > 1) return `Fetch ${fetched} barrows: in the ${barrowName(number)}, ${left}.`;
  const rest = before.leftMl > 0 ? `The ${litres(before.leftMl)} left in the ${barrowName(before.number)}, then` : '';
  return `${rest ? `${rest} fetch` : 'Fetch'} the ${barrowName(number)}: ${left}.`;
}

/** Why the work is laid out as it is. */
export const layoutReasons: Readonly<Record<LayoutBy, string>> = {
  asked: 'as you have it',
  'less-carrying': 'it is less carrying',
  'halves-too-short': 'half a trench would be a hole of less than 90 cm',
  'no-trench': 'nothing is opened',
};

/** How many times over, in plain figures. */
export function timesWords(times: number): string {
  const tenths = Math.round(times * 10) / 10;
  if (times > 0 && tenths === 0) return 'under 0.1 times';
  return tenths === 1 ? 'once' : tenths === 2 ? 'twice' : `${tenths.toLocaleString('en-GB')} times`;
}
