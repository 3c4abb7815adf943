/**
 * Whether a typed number could be read two ways: a comma before three digits parts thousands for some and decimals for others.
 *
 * @example isTwoWays('1,000 kg') → true; isTwoWays('1,5 kg') → false; isTwoWays('1.250') → false
 */
export function isTwoWays(text: string): boolean {
  return /\d,\d{3}(?!\d)/.test(text);
}
