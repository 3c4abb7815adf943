import type { Held } from './bed-result';

/** Beds that belong together. */
export type Cell<Bed> = { readonly key: string; readonly beds: readonly Bed[] };

export type Shown<Bed> = {
  readonly shown: readonly Cell<Bed>[];
  /** Not known, of too few, or held back beside those: shown together, as one, and compared with nothing. */
  readonly apart: readonly Bed[];
};

/** Of fewer holders, the reader left out, nothing is told. */
export const leastHolders = 3;

/**
 * How many holders beside the reader some beds belong to.
 *
 * @example two beds of one neighbour and one of the reader's own → 1
 */
export function neighboursIn(beds: readonly Held[]): number {
  return new Set(beds.filter(({ isOwn }) => !isOwn).map(({ holdingId }) => holdingId)).size;
}

/** Whether beds may be told: of three neighbours or more, or of the reader alone. */
export function canBeTold(beds: readonly Held[]): boolean {
  const count = neighboursIn(beds);
  return count === 0 || count >= leastHolders;
}

/**
 * Beds by groups, so that no group and no difference of groups and their total belongs to fewer than three neighbours.
 *
 * Method: groups of fewer than three, and beds whose group is not known, stand apart together. Where those are still of fewer than three, the
 * smallest group is put to them, since whoever knows the total could take the others from it. What can be reckoned is then always a
 * union of parts of three or more.
 *
 * @param beds   whose total is, or may become, known
 * @param keyOf  the group of a bed; null where it is not known
 * @returns      groups by key; with the beds apart they are all the beds, or none at all where all of them are of fewer than three
 * @source       complementary suppression: L. Willenborg and T. de Waal, Elements of Statistical Disclosure Control, 2001, from memory
 * @example      a of five holders, b of four, c of one → a alone; b and c stand apart
 */
export function shownCells<Bed extends Held>(beds: readonly Bed[], keyOf: (bed: Bed) => string | null): Shown<Bed> {
  const keys = [...new Set(beds.map(keyOf).filter((key) => key !== null))].sort(byCount);
  const cells = keys.map((key): Cell<Bed> => ({ key, beds: beds.filter((bed) => keyOf(bed) === key) }));
  const shown = cells.filter((cell) => neighboursIn(cell.beds) >= leastHolders);
  while (shown.length && !canBeTold(apartFrom(beds, shown))) shown.splice(shown.indexOf(smallest(shown)), 1);
  const apart = apartFrom(beds, shown);
  return { shown, apart: canBeTold(apart) ? apart : [] };
}

function apartFrom<Bed>(beds: readonly Bed[], shown: readonly Cell<Bed>[]): Bed[] {
  const told = new Set(shown.flatMap((cell) => cell.beds));
  return beds.filter((bed) => !told.has(bed));
}

function smallest<Bed extends Held>(cells: readonly Cell<Bed>[]): Cell<Bed> {
  return cells.reduce((least, cell) => (neighboursIn(cell.beds) < neighboursIn(least.beds) ? cell : least));
}

const counting = new Intl.Collator('en-GB', { numeric: true });
function byCount(one: string, other: string): number {
  return counting.compare(one, other) || (one < other ? -1 : 1);
}
