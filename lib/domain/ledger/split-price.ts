import { wholeFrom } from '../quantity/checked';

/** Saved with each split, so that it can be worked out again by the same rule. */
const splitMethod = { name: 'by loads taken, odd pennies by lot', version: 1 } as const;

/** Why a holding pays what it pays: a code and its numbers, for words on a screen. */
export type PriceReason =
  | { readonly code: 'nothing-taken' }
  /** Its part comes to whole pence. */
  | { readonly code: 'exact' }
  /** Its part is wholeMinor and overOf (over of so many) of a penny; the odd pennies went by lot, so many of them. */
  | {
      readonly code: 'odd-penny' | 'odd-penny-spared';
      readonly wholeMinor: number;
      readonly over: number;
      readonly overOf: number;
      readonly odd: number;
    };

export type PriceShare = {
  readonly id: string;
  readonly loads: number;
  readonly minor: number;
  readonly reason: PriceReason;
};

export type PriceSplit = {
  readonly shares: readonly PriceShare[];
  /** What nobody pays: all of it where nobody took a load, else nothing. */
  readonly leftMinor: number;
  readonly method: typeof splitMethod;
};

type Taken = { readonly id: string; readonly loads: number };
type Part = Taken & { readonly wholeMinor: number; readonly over: number };

/**
 * The price of a delivery between those who took loads of it, exact to the penny.
 *
 * Method: each part is price × loads ÷ all loads, rounded down; the pennies left over go one each, in lot order, to those whose
 * part is not whole. Where a load costs less than a penny, several numbers of loads come to the same whole pence: of those,
 * whoever took more pays first, so that more loads never pay less. Everybody pays their part rounded down or up.
 * (No rule that keeps so close can promise that a penny more on the price costs nobody a penny less; the price is split once.)
 *
 * @param totalMinor  whole number ≥ 0 [minor units, pence]
 * @param taken       unique ids; loads taken, whole numbers ≥ 0 [barrow-loads]
 * @param lotOrder    the delivery's lot: every id that took a load, once, and any others
 * @returns           one share for each of taken, in the order given; with leftMinor they sum to exactly totalMinor
 * @throws RangeError on amounts that are not whole, on an id that stands twice or is not in the lot, on products beyond exactness
 * @source            lower and upper quota: Mathematical Excursions, 4th ed., section 4.1; the lot: common practice
 * @example           100 pence, one load each, lot b, c, a → b 34, c 33, a 33
 */
export function splitPrice(totalMinor: number, taken: readonly Taken[], lotOrder: readonly string[]): PriceSplit {
  const allLoads = checkedLoads(totalMinor, taken);
  const places = placesIn(lotOrder, taken);
  if (allLoads === 0) return { shares: taken.map(nothing), leftMinor: totalMinor, method: splitMethod };
  const parts = taken.map(({ id, loads }): Part => {
    const over = (totalMinor * loads) % allLoads;
    return { id, loads, wholeMinor: (totalMinor * loads - over) / allLoads, over };
  });
  const odd = totalMinor - parts.reduce((sum, { wholeMinor }) => sum + wholeMinor, 0);
  const payers = oddPayers(parts, odd, places);
  const shares = parts.map((part) => shareOf(part, payers.has(part.id), { odd, overOf: allLoads }));
  return { shares, leftMinor: 0, method: splitMethod };
}

function checkedLoads(totalMinor: number, taken: readonly Taken[]): number {
  const allLoads = taken.reduce((sum, { loads }) => sum + wholeFrom(0, loads), 0);
  wholeFrom(0, wholeFrom(0, totalMinor) * allLoads);
  if (new Set(taken.map(({ id }) => id)).size < taken.length)
    throw new RangeError('somebody stands twice among the takers');
  return allLoads;
}

function placesIn(lotOrder: readonly string[], taken: readonly Taken[]): ReadonlyMap<string, number> {
  const places = new Map(lotOrder.map((id, at) => [id, at]));
  if (places.size < lotOrder.length) throw new RangeError('somebody stands twice in the lot');
  const missing = taken.find(({ id, loads }) => loads > 0 && !places.has(id));
  if (missing) throw new RangeError(`who took loads is not in the lot: ${missing.id}`);
  return places;
}

// By lot; then, among those of the same whole pence, the pennies that fell to them go to the most loads first.
function oddPayers(parts: readonly Part[], odd: number, places: ReadonlyMap<string, number>): ReadonlySet<string> {
  const byLot = parts
    .filter(({ over }) => over > 0)
    .sort((one, other) => (places.get(one.id) ?? 0) - (places.get(other.id) ?? 0));
  const fell = byLot.slice(0, odd);
  const alike = (wholeMinor: number) => (part: Part) => part.wholeMinor === wholeMinor;
  const levels = new Set(fell.map(({ wholeMinor }) => wholeMinor));
  return new Set(
    [...levels].flatMap((level) =>
      byLot
        .filter(alike(level))
        // Sorting keeps the lot's order between equals.
        .sort((one, other) => other.loads - one.loads)
        .slice(0, fell.filter(alike(level)).length)
        .map(({ id }) => id),
    ),
  );
}

function nothing({ id, loads }: Taken): PriceShare {
  return { id, loads, minor: 0, reason: { code: 'nothing-taken' } };
}

function shareOf(part: Part, paysOdd: boolean, { odd, overOf }: { odd: number; overOf: number }): PriceShare {
  const { id, loads, wholeMinor, over } = part;
  if (loads === 0) return nothing(part);
  if (over === 0) return { id, loads, minor: wholeMinor, reason: { code: 'exact' } };
  const code = paysOdd ? 'odd-penny' : 'odd-penny-spared';
  return { id, loads, minor: wholeMinor + (paysOdd ? 1 : 0), reason: { code, wholeMinor, over, overOf, odd } };
}
