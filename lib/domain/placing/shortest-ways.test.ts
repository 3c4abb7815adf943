import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shortestWays } from './shortest-ways';

type Edge = readonly [number, number, number];

function waysOf(count: number, edges: readonly Edge[]) {
  return Array.from({ length: count }, (_, node) =>
    edges.flatMap(([a, b, lengthCm]) => [
      ...(a === node ? [{ to: b, lengthCm }] : []),
      ...(b === node ? [{ to: a, lengthCm }] : []),
    ]),
  );
}

/** Floyd and Warshall: three loops and nothing to get wrong. */
function allWays(count: number, edges: readonly Edge[]): number[][] {
  const cm = Array.from({ length: count }, (_, a) =>
    Array.from({ length: count }, (_, b) => (a === b ? 0 : Number.POSITIVE_INFINITY)),
  );
  const of = (a: number, b: number) => cm[a]?.[b] ?? Number.NaN;
  const set = (a: number, b: number, value: number) => cm[a]?.splice(b, 1, Math.min(of(a, b), value));
  for (const [a, b, length] of edges) {
    set(a, b, length);
    set(b, a, length);
  }
  for (let via = 0; via < count; via++)
    for (let a = 0; a < count; a++) for (let b = 0; b < count; b++) set(a, b, of(a, via) + of(via, b));
  return cm;
}

test('a row of three', () => {
  expect(
    shortestWays(
      waysOf(3, [
        [0, 1, 5],
        [1, 2, 2],
      ]),
      0,
    ),
  ).toEqual([0, 5, 7]);
});

test('one node, and one that no way leads to', () => {
  expect(shortestWays([[]], 0)).toEqual([0]);
  expect(shortestWays(waysOf(3, [[0, 1, 0]]), 1)).toEqual([0, 0, Number.POSITIVE_INFINITY]);
});

test('agrees with Floyd and Warshall on every pair', () => {
  const network = fc
    .integer({ min: 1, max: 14 })
    .chain((count) =>
      fc.tuple(
        fc.constant(count),
        fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1), fc.nat(30)), { maxLength: 40 }),
      ),
    );
  fc.assert(
    fc.property(network, ([count, edges]) => {
      const expected = allWays(count, edges);
      const ways = waysOf(count, edges);
      for (let from = 0; from < count; from++) expect(shortestWays(ways, from)).toEqual(expected[from]);
    }),
    { numRuns: 300 },
  );
});
