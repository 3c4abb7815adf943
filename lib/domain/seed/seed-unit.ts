/** What seed is counted or weighed in: seeds, milligrams, or sets, cloves and tubers. */
export const seedUnits = ['seeds', 'milligrams', 'sets'] as const;
export type SeedUnit = (typeof seedUnits)[number];

/**
 * An amount as it is typed, in the unit's own whole numbers: weights are typed in grams.
 *
 * @returns  whole seeds, sets or milligrams ≥ 0; null where the text is no such amount
 * @example  amountTyped('milligrams', '1.5') → 1500; amountTyped('seeds', '1.5') → null
 */
export function amountTyped(unit: SeedUnit, text: string): number | null {
  const shape = unit === 'milligrams' ? /^\d{1,4}([.,]\d{1,3})?$/ : /^\d{1,6}$/;
  if (!shape.test(text)) return null;
  return unit === 'milligrams' ? Math.round(Number(text.replace(',', '.')) * 1000) : Number(text);
}

/**
 * The same as a field shows it.
 *
 * @param amount  whole number ≥ 0
 * @example       plainAmount('milligrams', 1500) → '1.5'
 */
export function plainAmount(unit: SeedUnit, amount: number): string {
  return String(unit === 'milligrams' ? amount / 1000 : amount);
}
