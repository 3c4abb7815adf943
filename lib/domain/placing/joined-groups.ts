/**
 * Which things hang together, when some pairs of them are joined.
 *
 * Method: disjoint sets, each with its smallest member at its head.
 *
 * @param count  whole number ≥ 0; the things are 0 to count − 1
 * @param pairs  of things
 * @returns      for each thing the number of its group; groups are numbered from 0 in the order of their smallest members
 * @source       disjoint sets, textbook
 * @example      joinedGroups(4, [[1, 3]]) → 0, 1, 2, 1
 */
export function joinedGroups(count: number, pairs: readonly (readonly [number, number])[]): number[] {
  const head = Array.from({ length: count }, (_, at) => at);
  const above = (thing: number) => head[thing] ?? thing;
  const headOf = (thing: number): number => {
    let at = thing;
    while (above(at) !== at) {
      // Halving the way up keeps the next one short.
      head[at] = above(above(at));
      at = above(at);
    }
    return at;
  };
  for (const [one, other] of pairs) {
    const [a, b] = [headOf(one), headOf(other)];
    head[Math.max(a, b)] = Math.min(a, b);
  }
  const numbers = new Map<number, number>();
  return head.map((_, thing) => {
    const group = headOf(thing);
    const number = numbers.get(group) ?? numbers.size;
    numbers.set(group, number);
    return number;
  });
}
