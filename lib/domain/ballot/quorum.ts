/** How many hands must be raised for a count to hold: a number of them, or percent of those entitled. */
export type Quorum = { readonly kind: 'number' | 'percent'; readonly amount: number };

/**
 * The hands that a quorum asks for.
 *
 * @param quorum    amount an integer ≥ 0 [hands], or 0 to 100 [% of those entitled]
 * @param entitled  hands that could be raised; integer ≥ 0
 * @returns         hands needed, a part of a hand rounded up to a whole one; abstentions count among them
 * @throws RangeError on a fractional or negative value, or more than 100 %
 * @source          common practice
 * @example         handsNeeded({ kind: 'percent', amount: 25 }, 42) → 11
 */
export function handsNeeded({ kind, amount }: Quorum, entitled: number): number {
  for (const value of [amount, entitled])
    if (!Number.isInteger(value) || value < 0) throw new RangeError('a quorum is counted in whole hands or percent');
  if (kind === 'number') return amount;
  if (amount > 100) throw new RangeError('a quorum is at most 100 % of those entitled');
  return Math.ceil((entitled * amount) / 100);
}
