import type { AmountUnit } from '../quantity/load';
import { wholeFrom } from '../quantity/checked';

/** How a supplier counts what they bring. */
export const supplierUnits = ['trailer', 'm3', 'tonnes', 'bales'] as const;

/** One unit of a supplier's: a trailer of so many litres, a bale of so many grams, a cubic metre, a tonne. */
export type UnitOfSupplier =
  | { readonly unit: 'trailer'; readonly trailerLitres: number }
  | { readonly unit: 'bales'; readonly baleMassG: number }
  | { readonly unit: 'm3' }
  | { readonly unit: 'tonnes' };

/**
 * What one of a supplier's units weighs.
 *
 * @param one           litres, grams ≥ 1; whole numbers
 * @param densityGPerL  of the material as it lies; whole number ≥ 1 [g/L]
 * @returns             whole grams ≥ 1
 * @throws RangeError   on anything else
 * @source              1 m³ = 1,000 L; 1 t = 1,000,000 g
 * @example             a trailer of 6,000 L at 400 g/L → 2,400,000
 */
export function unitMassG(one: UnitOfSupplier, densityGPerL: number): number {
  wholeFrom(1, densityGPerL);
  if (one.unit === 'trailer') return wholeFrom(1, wholeFrom(1, one.trailerLitres) * densityGPerL);
  if (one.unit === 'bales') return wholeFrom(1, one.baleMassG);
  return one.unit === 'm3' ? 1000 * densityGPerL : 1_000_000;
}

/**
 * So many of a supplier's units as a delivery's amount is written: trailers by their cubic metres.
 *
 * @param units  whole number ≥ 1
 * @returns      thousandths of the unit, whole
 * @throws RangeError on anything else
 * @source       1 m³ = 1,000 L
 * @example      5 trailers of 6,000 L → 30,000 thousandths of a cubic metre
 */
export function amountOf(one: UnitOfSupplier, units: number): { thousandths: number; unit: AmountUnit } {
  wholeFrom(1, units);
  if (one.unit === 'trailer') return { thousandths: wholeFrom(1, units * wholeFrom(1, one.trailerLitres)), unit: 'm3' };
  if (one.unit === 'bales') wholeFrom(1, one.baleMassG);
  return { thousandths: units * 1000, unit: one.unit };
}
