import type { Units } from '@/lib/domain/quantity/length';
import { rateIn } from '@/lib/domain/quantity/area-rate';

type Range = { readonly leastMgPerM2: number; readonly mostMgPerM2: number };

/** The unit in which a nutrient is told. */
export function nutrientUnit(units: Units): string {
  return units === 'metric' ? 'g/m²' : 'oz/sq yd';
}

/** A nutrient on its ground, without the unit. */
export function nutrientFigure(mgPerM2: number, units: Units): string {
  const value = mgPerM2 === 0 ? 0 : units === 'metric' ? mgPerM2 / 1000 : rateIn(mgPerM2 / 1000, 'oz/sq yd');
  return value.toLocaleString('en-GB', { maximumFractionDigits: units === 'metric' ? 1 : 2 });
}

/** A range without the unit: one figure where its ends are told alike. */
export function rangeFigure({ leastMgPerM2, mostMgPerM2 }: Range, units: Units): string {
  const [least, most] = [nutrientFigure(leastMgPerM2, units), nutrientFigure(mostMgPerM2, units)];
  return least === most ? least : `${least} to ${most}`;
}

/** A nutrient with its unit. */
export function nutrientWords(mgPerM2: number, units: Units): string {
  return `${nutrientFigure(mgPerM2, units)} ${nutrientUnit(units)}`;
}

/** A range with its unit. */
export function rangeWords(range: Range, units: Units): string {
  return `${rangeFigure(range, units)} ${nutrientUnit(units)}`;
}
