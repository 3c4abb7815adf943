import { type PriceShare, splitPrice } from '../ledger/split-price';
import { wholeFrom } from '../quantity/checked';
import { cheapestPacks, type Packs, type PackSize } from './cheapest-packs';

/** What one member wants of an item, in the unit of its packs. */
export type SeedWant = { readonly memberId: string; readonly amount: number };

/** An item of the society's list: one crop and variety, in the packs it is sold in. */
export type PooledItem = {
  readonly id: string;
  readonly sizes: readonly PackSize[];
  readonly wants: readonly SeedWant[];
};

export type PooledLine = {
  readonly itemId: string;
  readonly wanted: number;
  readonly packs: Packs;
  /** Each member's part of the price, exact to the penny: they sum to the price of the packs. */
  readonly shares: readonly PriceShare[];
};

export type SocietyOrder = {
  readonly lines: readonly PooledLine[];
  /** What each member owes over all items, by id [minor units, pence]; sums to the price of the whole order. */
  readonly owed: readonly { readonly memberId: string; readonly minor: number }[];
  readonly priceMinor: number;
};

/**
 * One order of seed for the society: the packs to buy of each item, how they are split, and who owes what.
 *
 * Method: wants of an item are pooled and covered by whole packs for the least money (`cheapestPacks`); the price is split by what each
 * wants (`splitPrice`), odd pennies by lot. What is over is paid by those who wanted the item, and is for the society to give away.
 *
 * @param items     unique ids; amounts whole numbers ≥ 0, each member once an item
 * @param lotOrder  every member that wants anything, once
 * @returns         a line for each item in the order given, those nobody wants with no packs
 * @throws RangeError on numbers that are none, on an item or a member that stands twice, on a member not in the lot
 * @source          as `splitPrice`; packs: arithmetic
 * @example         packs of 100 at 150p; a wants 60, b 90 → 2 packs, 300p: a 120p, b 180p, 50 over
 */
export function societyOrder(items: readonly PooledItem[], lotOrder: readonly string[]): SocietyOrder {
  if (new Set(items.map(({ id }) => id)).size < items.length) throw new RangeError('an item stands twice');
  const lines = items.map((item) => lineOf(item, lotOrder));
  const owed = new Map<string, number>();
  for (const { id, minor } of lines.flatMap(({ shares }) => shares)) owed.set(id, (owed.get(id) ?? 0) + minor);
  return {
    lines,
    owed: [...owed]
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([memberId, minor]) => ({ memberId, minor: wholeFrom(0, minor) })),
    priceMinor: wholeFrom(
      0,
      lines.reduce((sum, { packs }) => sum + packs.priceMinor, 0),
    ),
  };
}

function lineOf({ id, sizes, wants }: PooledItem, lotOrder: readonly string[]): PooledLine {
  const wanted = wants.reduce((sum, { amount }) => sum + wholeFrom(0, amount), 0);
  const packs = cheapestPacks(wanted, sizes);
  const taken = wants.map(({ memberId, amount }) => ({ id: memberId, loads: amount }));
  return { itemId: id, wanted, packs, shares: splitPrice(packs.priceMinor, taken, lotOrder).shares };
}
