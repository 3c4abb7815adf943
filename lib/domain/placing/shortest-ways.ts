/** Ways out of a node, each to another, so long [whole cm]. */
export type Ways = readonly { readonly to: number; readonly lengthCm: number }[];

type Reached = { readonly node: number; readonly cm: number };

/**
 * The shortest way from one node of a network to every other.
 *
 * Method: Dijkstra, with a binary heap from which outdated entries are dropped as they come up; for n nodes and m ways it
 * takes time in proportion to (n + m) log m.
 *
 * @param ways  for each node the ways out of it; lengths are whole numbers ≥ 0 [cm], the same there and back
 * @param from  the number of a node
 * @returns     centimetres, exact; Infinity where no way leads
 * @source      E. W. Dijkstra, Numerische Mathematik 1 (1959)
 * @example     0 –5– 1 –2– 2, from 0 → 0, 5, 7
 */
export function shortestWays(ways: readonly Ways[], from: number): number[] {
  const least = ways.map(() => Number.POSITIVE_INFINITY);
  least[from] = 0;
  const heap: Reached[] = [{ node: from, cm: 0 }];
  for (let nearest = takeNearest(heap); nearest; nearest = takeNearest(heap)) {
    const { node, cm } = nearest;
    if (cm > (least[node] ?? 0)) continue;
    for (const { to, lengthCm } of ways[node] ?? []) {
      if (cm + lengthCm >= (least[to] ?? 0)) continue;
      least[to] = cm + lengthCm;
      put(heap, { node: to, cm: cm + lengthCm });
    }
  }
  return least;
}

// The heap is a list in which nothing is nearer than what stands at half its place.
function put(heap: Reached[], entry: Reached): void {
  let at = heap.length;
  while (at > 0) {
    const above = (at - 1) >> 1;
    const parent = heap[above] as Reached;
    if (parent.cm <= entry.cm) break;
    heap[at] = parent;
    at = above;
  }
  heap[at] = entry;
}

function takeNearest(heap: Reached[]): Reached | undefined {
  const nearest = heap[0];
  const last = heap.pop();
  if (!nearest || !last || heap.length === 0) return nearest;
  let at = 0;
  for (;;) {
    const [left, right] = [heap[2 * at + 1], heap[2 * at + 2]];
    const child = left && right && right.cm < left.cm ? right : left;
    if (!child || child.cm >= last.cm) break;
    heap[at] = child;
    at = child === left ? 2 * at + 1 : 2 * at + 2;
  }
  heap[at] = last;
  return nearest;
}
