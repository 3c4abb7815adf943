/**
 * Degrees Fahrenheit as Celsius.
 *
 * @param fahrenheit   a finite number
 * @returns            [°C], not rounded
 * @throws RangeError  on NaN or Infinity
 * @source             (°F − 32) × 5/9, by definition
 * @example            celsiusOf(131) → 55
 */
export function celsiusOf(fahrenheit: number): number {
  if (!Number.isFinite(fahrenheit)) throw new RangeError(`a temperature is a number: ${fahrenheit}`);
  return ((fahrenheit - 32) * 5) / 9;
}
