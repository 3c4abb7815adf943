/**
 * A smallest set of wishes that can't all be met together; null when all of them can.
 *
 * Method: implicit hitting sets. Whatever is impossible must meet the complement of every largest possible set; so a
 * smallest set that meets all complements seen so far is asked about: when it is impossible it is the answer, and when it
 * is possible it is grown to a largest possible one, whose complement is new. It asks by yielding, so that whoever runs
 * it decides how a question is answered.
 *
 * @param count    how many wishes there are, numbered from 0
 * @returns        yields sets of wishes, takes whether all of each can be met together, and returns the smallest conflict
 * @throws RangeError on a count that is not a whole number ≥ 0
 * @source         A. Ignatiev et al., Smallest MUS extraction with minimal hitting set dualization, CP 2015; from memory
 * @example        three wishes of which 0 and 2 clash → [0, 2]
 */
export function* smallestConflict(count: number): Generator<readonly number[], readonly number[] | null, boolean> {
  if (!Number.isSafeInteger(count) || count < 0) throw new RangeError(`wishes are counted: ${count}`);
  const all = Array.from({ length: count }, (_, wish) => wish);
  if (yield all) return null;
  const complements: number[][] = [];
  for (;;) {
    const hitting = smallestHitting(complements);
    if (!(yield hitting)) return hitting;
    let met = hitting;
    for (const wish of all) {
      if (met.includes(wish)) continue;
      const more = [...met, wish].sort((a, b) => a - b);
      if (yield more) met = more;
    }
    complements.push(all.filter((wish) => !met.includes(wish)));
  }
}

/** A smallest set that meets each of some sets; the first in order where several are as small. */
function smallestHitting(sets: readonly (readonly number[])[]): number[] {
  for (let size = 0; ; size++) {
    const found = hittingOf(sets, size);
    if (found) return found.sort((a, b) => a - b);
  }
}

function hittingOf(sets: readonly (readonly number[])[], size: number): number[] | null {
  const [first] = sets;
  if (!first) return [];
  if (size === 0) return null;
  for (const wish of first) {
    const rest = hittingOf(
      sets.filter((set) => !set.includes(wish)),
      size - 1,
    );
    if (rest) return [wish, ...rest];
  }
  return null;
}
