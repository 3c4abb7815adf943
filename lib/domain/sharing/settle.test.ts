import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { settle } from './settle';
import { shareOut } from './share-out';

const lotSeed = '5eed';

/** Settle claims of `asked, need, collected` with no credit from before; loads, not millionths, for reading. */
function settled(loads: number, rows: readonly (readonly [asked: number, need: number, collected: number])[]) {
  const claims = rows.map(([asked, need, collected], at) => ({
    id: `claim-${at}`,
    asked,
    need,
    collected,
    creditMillionths: 0,
  }));
  const { changes, lapsedMillionths } = settle({ loads, claims, lotSeed });
  return {
    changes: changes.map(({ changeMillionths }) => changeMillionths / 1_000_000),
    lapsed: lapsedMillionths / 1_000_000,
  };
}

describe('settling', () => {
  test('an odd load: half to each of two, and one of them had it', () => {
    const claims = ['a', 'b'].map((id) => ({
      id,
      asked: 1,
      need: 1,
      creditMillionths: 0,
      collected: id === 'a' ? 1 : 0,
    }));
    expect(settle({ loads: 1, claims, lotSeed })).toEqual({
      changes: [
        { id: 'a', dueMillionths: 500_000, receivedMillionths: 1_000_000, changeMillionths: -500_000 },
        { id: 'b', dueMillionths: 500_000, receivedMillionths: 0, changeMillionths: 500_000 },
      ],
      lapsedMillionths: 0,
    });
  });
  test('whole rounds, all collected', () =>
    expect(
      settled(4, [
        [2, 2, 2],
        [2, 0, 2],
      ]),
    ).toEqual({ changes: [0, 0], lapsed: 0 }));
  test('two too many are owed to who went short by them', () =>
    expect(
      settled(10, [
        [5, 5, 7],
        [5, 5, 3],
      ]),
    ).toEqual({ changes: [-2, 2], lapsed: 0 }));
  test('two too many that nobody had asked for fall to the lapsed line', () =>
    expect(
      settled(20, [
        [5, 5, 7],
        [5, 5, 5],
      ]),
    ).toEqual({ changes: [-2, 0], lapsed: 2 }));
  test('a heap that ran short, measured again: who came late is owed', () =>
    expect(
      settled(14, [
        [10, 10, 10],
        [10, 10, 4],
      ]),
    ).toEqual({ changes: [-3, 3], lapsed: 0 }));
  test('a share given up changes no credit', () =>
    expect(
      settled(10, [
        [1, 1, 1],
        [5, 5, 5],
      ]),
    ).toEqual({ changes: [0, 0], lapsed: 0 }));
  test('loads that lay uncollected fall to the lapsed line', () =>
    expect(
      settled(4, [
        [2, 2, 2],
        [2, 2, 1],
      ]),
    ).toEqual({ changes: [0, 1], lapsed: -1 }));
  test('nobody asked', () => expect(settled(4, [])).toEqual({ changes: [], lapsed: 0 }));
  test('more collected than the heap held is refused', () => expect(() => settled(4, [[5, 5, 5]])).toThrow(RangeError));
});

const taking = fc
  .array(
    fc.record({
      asked: fc.nat(9),
      need: fc.nat(9),
      credit: fc.integer({ min: -900_000, max: 900_000 }),
      collected: fc.nat(6),
    }),
    {
      maxLength: 12,
    },
  )
  .map((rows) => rows.map(({ credit, ...row }, at) => ({ ...row, id: `claim-${at}`, creditMillionths: credit })));

test('whatever was taken, the changes and the lapsed line sum to exactly zero', () => {
  fc.assert(
    fc.property(taking, fc.nat(40), (claims, rest) => {
      const loads = rest + claims.reduce((sum, { collected }) => sum + collected, 0);
      const { changes, lapsedMillionths } = settle({ loads, claims, lotSeed });
      expect(changes.reduce((sum, { changeMillionths }) => sum + changeMillionths, lapsedMillionths)).toBe(0);
    }),
  );
});

test('where everybody collected their share, credits are those that the share-out announced', () => {
  fc.assert(
    fc.property(taking, fc.nat(70), (rows, loads) => {
      const claims = rows.map((row) => ({ ...row, collected: 0 }));
      const { shares } = shareOut({ loads, claims, lotSeed });
      const collected = claims.map((claim, at) => ({ ...claim, collected: shares[at]?.share ?? 0 }));
      const { changes, lapsedMillionths } = settle({ loads, claims: collected, lotSeed });
      expect(lapsedMillionths).toBe(0);
      expect(changes.map(({ changeMillionths }, at) => changeMillionths + (claims[at]?.creditMillionths ?? 0))).toEqual(
        shares.map(({ creditAfterMillionths }) => creditAfterMillionths),
      );
    }),
  );
});
