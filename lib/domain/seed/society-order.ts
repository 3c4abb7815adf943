import { type PriceShare, splitPrice } from '../ledger/split-price';
import { wholeFrom } from '../quantity/checked';
import { cheapestPacks, type Packs, type PackSize } from './cheapest-packs';
import { type SeedWant, shareArrived } from './share-arrived';

/** An item of the society's list: one crop and variety, in the packs it is sold in. */
export type PooledItem = {
  readonly id: string;
  readonly sizes: readonly PackSize[];
  readonly wants: readonly SeedWant[];
  /** How many of each size were ordered, or came; null: as many as cover what is wanted for the least money. */
  readonly counts?: readonly number[] | null;
};

export type PooledLine = {
  readonly itemId: string;
  readonly wanted: number;
  readonly packs: Packs;
  /** Nobody is given more than this where too little came; null where all wants are met. */
  readonly level: number | null;
  /** What each is given, as its loads, and its part of the price, exact to the penny. */
  readonly shares: readonly PriceShare[];
};

export type Owed = {
  readonly holdingId: string;
  readonly seedMinor: number;
  readonly extraMinor: number;
  readonly minor: number;
};

export type SocietyOrder = {
  readonly lines: readonly PooledLine[];
  /** What each holding owes over all items and for the extra, by id [minor units, pence]. */
  readonly owed: readonly Owed[];
  /** Of the packs; with the extra it is what all owe and what nobody pays. */
  readonly seedMinor: number;
  /** What nobody pays, since nobody was given anything. */
  readonly leftMinor: number;
};

/**
 * One order of seed for the society: the packs of each item, how they are split, and who owes what.
 *
 * Method: wants of an item are pooled and covered by whole packs for the least money (`cheapestPacks`), or by the packs that came,
 * which are shared up to one level where they are too few (`shareArrived`). The price of an item is split by what each is given, postage
 * and the like by what each owes for seed (`splitPrice`), odd pennies by lot. What is over is paid by those who wanted the item, and is for
 * the society to give away. Where all seed is free, the extra is split evenly.
 *
 * @param items       unique ids; amounts whole numbers ≥ 0, each holding once an item
 * @param lotOrder    every holding that wants anything, once
 * @param extraMinor  postage and the like; whole number ≥ 0 [minor units, pence]
 * @returns           a line for each item in the order given; Σ owed + leftMinor = seedMinor + extraMinor
 * @throws RangeError on numbers that are none, on an item or a holding that stands twice, on a holding not in the lot
 * @source            as `splitPrice` and `shareArrived`; packs: arithmetic
 * @example           packs of 100 at 150p; a wants 60, b 90 → 2 packs, 300p: a 120p, b 180p, 50 over
 */
export function societyOrder(items: readonly PooledItem[], lotOrder: readonly string[], extraMinor = 0): SocietyOrder {
  if (new Set(items.map(({ id }) => id)).size < items.length) throw new RangeError('an item stands twice');
  const lines = items.map((item) => lineOf(item, lotOrder));
  const seedOf = summed(lines.flatMap(({ shares }) => shares.map(({ id, minor }) => [id, minor] as const)));
  const givenOf = summed(lines.flatMap(({ shares }) => shares.map(({ id, loads }) => [id, Math.sign(loads)] as const)));
  const isFree = [...seedOf.values()].every((minor) => minor === 0);
  const parts = [...seedOf].map(([id, minor]) => ({ id, loads: isFree ? Math.sign(givenOf.get(id) ?? 0) : minor }));
  const extra = splitPrice(extraMinor, parts, lotOrder);
  const seedMinor = lines.reduce((sum, { packs }) => wholeFrom(0, sum + packs.priceMinor), 0);
  const owedForSeed = [...seedOf.values()].reduce((sum, minor) => sum + minor, 0);
  return {
    lines,
    owed: extra.shares
      .map(({ id, minor }) => ({ holdingId: id, seedMinor: seedOf.get(id) ?? 0, extraMinor: minor }))
      .map((one) => ({ ...one, minor: wholeFrom(0, one.seedMinor + one.extraMinor) }))
      .sort((one, other) => (one.holdingId < other.holdingId ? -1 : 1)),
    seedMinor,
    leftMinor: extra.leftMinor + seedMinor - owedForSeed,
  };
}

function summed(amounts: readonly (readonly [string, number])[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const [id, amount] of amounts) sums.set(id, wholeFrom(0, (sums.get(id) ?? 0) + amount));
  return sums;
}

function lineOf({ id, sizes, wants, counts }: PooledItem, lotOrder: readonly string[]): PooledLine {
  const wanted = wants.reduce((sum, { amount }) => sum + wholeFrom(0, amount), 0);
  const packs = counts ? countedPacks(counts, sizes, wanted) : cheapestPacks(wanted, sizes);
  const { level, given } = shareArrived(packs.amount, wants, lotOrder);
  const taken = given.map(({ holdingId, amount }) => ({ id: holdingId, loads: amount }));
  return { itemId: id, wanted, packs, level, shares: splitPrice(packs.priceMinor, taken, lotOrder).shares };
}

function countedPacks(counts: readonly number[], sizes: readonly PackSize[], wanted: number): Packs {
  if (counts.length !== sizes.length) throw new RangeError(`${counts.length} counts of ${sizes.length} sizes`);
  const sumOf = (key: 'amount' | 'priceMinor') =>
    sizes.reduce((sum, size, at) => wholeFrom(0, sum + wholeFrom(0, counts[at] ?? 0) * wholeFrom(0, size[key])), 0);
  const amount = sumOf('amount');
  return { counts, priceMinor: sumOf('priceMinor'), amount, over: Math.max(0, amount - wanted) };
}
