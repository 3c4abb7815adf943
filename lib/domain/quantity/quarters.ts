import { wholeFrom } from './checked';

/**
 * A count of quarters as it is written: ¾, 1, 2½.
 *
 * @param quarters  whole number ≥ 1
 * @throws RangeError otherwise
 * @example         formatQuarters(10) → '2½'
 */
export function formatQuarters(quarters: number): string {
  const whole = Math.floor(wholeFrom(1, quarters) / 4);
  const part = ['', '¼', '½', '¾'][quarters % 4] ?? '';
  return `${whole || ''}${part}`;
}
