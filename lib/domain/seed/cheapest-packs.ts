import { wholeFrom } from '../quantity/checked';

/** A pack as it is sold: so many seeds, or milligrams, or sets, at a price. */
export type PackSize = { readonly amount: number; readonly priceMinor: number };

export type Packs = {
  /** How many of each size, in the order of the sizes. */
  readonly counts: readonly number[];
  readonly priceMinor: number;
  readonly amount: number;
  readonly over: number;
};

type Cover = { readonly price: number; readonly amount: number; readonly packs: number; readonly size: number };

const mostUnits = 1_000_000;

/**
 * The packs that cover what is wanted for the least money.
 *
 * Method: by ever larger amounts, what covers each from what covers less (dynamic programming in units of the sizes' greatest common
 * divisor), so that nothing cheaper exists. Of equal price the one that leaves less over, then the one with fewer packs.
 *
 * @param wanted  whole number ≥ 0, in the unit of the sizes
 * @param sizes   at least one; amounts whole numbers ≥ 1, prices whole numbers ≥ 0 [minor units, pence]
 * @returns       counts of whole packs; amount ≥ wanted, over = amount − wanted
 * @throws RangeError on numbers that are none, no sizes, and more than a million units
 * @source        dynamic programming over the amount: the unbounded knapsack, any textbook
 * @example       450 wanted; 100 for 150p, 250 for 290p → two of 250, 580p, 50 over
 */
export function cheapestPacks(wanted: number, sizes: readonly PackSize[]): Packs {
  const unit = sizes.map(({ amount }) => wholeFrom(1, amount)).reduce(commonDivisor, 0);
  for (const { priceMinor } of sizes) wholeFrom(0, priceMinor);
  const units = Math.ceil(wholeFrom(0, wanted) / wholeFrom(1, unit));
  if (units > mostUnits) throw new RangeError(`too many units to pack: ${units}`);
  const covers: Cover[] = [{ price: 0, amount: 0, packs: 0, size: -1 }];
  for (let at = 1; at <= units; at++) covers.push(cheapestCover(covers, { sizes, unit, at }));
  const counts = sizes.map(() => 0);
  for (let at = units; at > 0; ) {
    const { size } = covers[at] ?? { size: 0 };
    counts[size] = (counts[size] ?? 0) + 1;
    at -= (sizes[size]?.amount ?? unit) / unit;
  }
  const { price, amount } = covers[units] ?? { price: 0, amount: 0 };
  return { counts, priceMinor: wholeFrom(0, price), amount, over: amount - wanted };
}

function cheapestCover(
  covers: readonly Cover[],
  { sizes, unit, at }: { readonly sizes: readonly PackSize[]; readonly unit: number; readonly at: number },
): Cover {
  return sizes
    .map(({ amount, priceMinor }, size): Cover => {
      const before = covers[Math.max(0, at - amount / unit)] ?? { price: 0, amount: 0, packs: 0 };
      const { price, packs } = before;
      return { price: price + priceMinor, amount: before.amount + amount, packs: packs + 1, size };
    })
    .reduce((best, one) => {
      const worse = one.price - best.price || one.amount - best.amount || one.packs - best.packs;
      return worse < 0 ? one : best;
    });
}

function commonDivisor(one: number, other: number): number {
  return other === 0 ? one : commonDivisor(other, one % other);
}
