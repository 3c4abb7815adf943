import { wholeFrom } from '../quantity/checked';

/** What one holding wants, or is given, of an item, in the unit of its packs. */
export type SeedWant = { readonly holdingId: string; readonly amount: number };

export type Arrived = {
  /** Nobody is given more than this, but for the odd ones; null where all wants are met. */
  readonly level: number | null;
  readonly given: readonly SeedWant[];
};

/**
 * What came of an item, shared between those who wanted it: small wants first.
 *
 * Method: as the queue shares a heap: round by round everybody who still wants some is given one, in whole units, so that nobody is given
 * more than a level while somebody else is below it and wants more; the odd ones of the last round go by lot.
 *
 * @param amount    what came; whole number ≥ 0, in the unit of the wants
 * @param wants     unique holdings; whole numbers ≥ 0
 * @param lotOrder  every holding that wants some, once, and any others
 * @returns         one share for each want in the order given, 0 ≤ share ≤ want, summing to min(amount, Σ wants)
 * @throws RangeError on numbers that are none, on a holding that stands twice or is not in the lot
 * @source          constrained equal awards: W. Thomson, Math. Social Sciences 45 (2003); whole units: common practice
 * @example         100 came; wanted 20, 90, 90 → 20, 40, 40
 */
export function shareArrived(amount: number, wants: readonly SeedWant[], lotOrder: readonly string[]): Arrived {
  const places = new Map(lotOrder.map((id, at) => [id, at]));
  if (new Set(wants.map(({ holdingId }) => holdingId)).size < wants.length)
    throw new RangeError('a holding stands twice');
  if (wants.some(({ holdingId }) => !places.has(holdingId))) throw new RangeError('a holding is not in the lot');
  const wanted = wants.reduce((sum, want) => wholeFrom(0, sum + wholeFrom(0, want.amount)), 0);
  if (wholeFrom(0, amount) >= wanted) return { level: null, given: wants };
  const level = levelOf(amount, wants);
  const above = wants
    .filter((want) => want.amount > level)
    .sort((one, other) => (places.get(one.holdingId) ?? 0) - (places.get(other.holdingId) ?? 0));
  const odd = amount - wants.reduce((sum, want) => sum + Math.min(level, want.amount), 0);
  const lucky = new Set(above.slice(0, odd).map(({ holdingId }) => holdingId));
  const given = wants.map(({ holdingId, amount: want }) => ({
    holdingId,
    amount: Math.min(level, want) + (lucky.has(holdingId) ? 1 : 0),
  }));
  return { level, given };
}

// The highest level at which what came is enough.
function levelOf(amount: number, wants: readonly SeedWant[]): number {
  let [left, open] = [amount, wants.length];
  for (const want of wants.map((one) => one.amount).sort((one, other) => one - other)) {
    if (want * open > left) break;
    left -= want;
    open -= 1;
  }
  return Math.floor(left / open);
}
