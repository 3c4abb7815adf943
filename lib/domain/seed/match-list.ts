import { massOfSeeds } from './seed-mass';
import type { SeedUnit } from './seed-unit';

/** What a grower has to buy: seeds, or sets, of a variety or of any. */
export type Wanted = { readonly cropKey: string; readonly variety: string | null } & (
  | { readonly seeds: number }
  | { readonly sets: number }
);

/** Something that can be ordered. */
export type Listed = {
  readonly id: string;
  readonly cropKey: string;
  readonly variety: string;
  readonly unit: SeedUnit;
};

export type Matched = {
  /** By item, in its own unit. */
  readonly amounts: ReadonlyMap<string, number>;
  /** What stands on no list, or can't be weighed. */
  readonly unlisted: readonly Wanted[];
};

/**
 * A grower's own list, as amounts of what the society orders.
 *
 * Method: a named variety is looked for by its name, however it is capitalised, and nothing else will do; any variety is the first of its
 * crop that is listed. Seeds that are ordered by weight are weighed (`massOfSeeds`).
 *
 * @param wanted  whole numbers ≥ 0; what is nothing is left out
 * @param listed  in the order in which it stands
 * @returns       whole numbers ≥ 1 in the unit of each item
 * @throws RangeError on numbers that are none
 * @source        as `massOfSeeds`
 * @example       100 seeds of “Autumn King” wanted; listed in grams as “autumn king” → its milligrams
 */
export function matchList(wanted: readonly Wanted[], listed: readonly Listed[]): Matched {
  const amounts = new Map<string, number>();
  const unlisted: Wanted[] = [];
  for (const want of wanted) {
    if (countOf(want) === 0) continue;
    const item = listed.find((one) => serves(one, want));
    const amount = item ? amountIn(item, want) : null;
    if (item && amount !== null) amounts.set(item.id, (amounts.get(item.id) ?? 0) + amount);
    else unlisted.push(want);
  }
  return { amounts, unlisted };
}

function countOf(want: Wanted): number {
  return 'seeds' in want ? want.seeds : want.sets;
}

function serves(item: Listed, want: Wanted): boolean {
  const isNamed = want.variety === null || folded(want.variety) === folded(item.variety);
  return item.cropKey === want.cropKey && isNamed && (item.unit === 'sets') === 'sets' in want;
}

function amountIn({ cropKey, unit }: Listed, want: Wanted): number | null {
  return unit === 'milligrams' ? (massOfSeeds(cropKey, countOf(want))?.massMg ?? null) : countOf(want);
}

function folded(variety: string): string {
  return variety.trim().toLowerCase();
}
