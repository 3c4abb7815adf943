export type AmountUnit = 'loads' | 'm3' | 'tonnes' | 'bales';

/**
 * Whole loads in an amount of material, rounded down once: a load that is not there can't be promised. A bale is a load.
 *
 * @param thousandths   the amount in thousandths of its unit; whole number ≥ 0
 * @param barrowLitres  what a barrow holds; whole number ≥ 1 [L]
 * @param densityGPerL  bulk density; whole number ≥ 1 [g/L]
 * @throws RangeError   otherwise
 * @source              1 m³ = 1,000 L; 1 t = 1,000,000 g
 * @example             1 m³ at 85 L a barrow → 11 loads (11.76)
 */
export function loadsIn(
  amount: { readonly thousandths: number; readonly unit: AmountUnit },
  barrowLitres: number,
  densityGPerL: number,
): number {
  const { thousandths, unit } = amount;
  for (const value of [thousandths, barrowLitres, densityGPerL])
    if (!Number.isSafeInteger(value) || value < 0) throw new RangeError(`whole numbers are wanted: ${value}`);
  if (barrowLitres === 0 || densityGPerL === 0)
    throw new RangeError('a barrow holds something, and material weighs something');
  if (unit === 'loads' || unit === 'bales') return Math.floor(thousandths / 1000);
  // Beyond this the arithmetic would not be exact; it is 9,000 million tonnes.
  if (!Number.isSafeInteger(thousandths * 1000)) throw new RangeError(`no heap is so large: ${thousandths}`);
  if (unit === 'm3') return Math.floor(thousandths / barrowLitres);
  return Math.floor((thousandths * 1000) / (barrowLitres * densityGPerL));
}

/** A weight in kilograms or tonnes. */
export function formatMass(massG: number): string {
  if (massG >= 1_000_000) return `${(massG / 1_000_000).toLocaleString('en-GB', { maximumFractionDigits: 2 })} t`;
  return `${(massG / 1000).toLocaleString('en-GB', { maximumFractionDigits: massG < 10_000 ? 1 : 0 })} kg`;
}
