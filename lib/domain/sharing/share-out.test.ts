import { describe, expect, test } from 'vitest';
import type { Claim } from './claim';
import { shareOut } from './share-out';

const lotSeed = '5eed';

/** A claim from `asked, need, credit, collected`; ids a, b, c … in the order listed. */
function claims(
  ...rows: readonly (readonly [asked: number, need: number, credit?: number, collected?: number])[]
): Claim[] {
  return rows.map(([asked, need, creditMillionths = 0, collected = 0], at) => ({
    id: String.fromCharCode(97 + at),
    asked,
    need,
    creditMillionths,
    collected,
  }));
}

function sharesOf(loads: number, listed: readonly Claim[]): number[] {
  return shareOut({ loads, claims: listed, lotSeed }).shares.map(({ share }) => share);
}

describe('needs come first, then wants', () => {
  test('ten loads; asked 6 need 4, asked 6 need 0', () => expect(sharesOf(10, claims([6, 4], [6, 0]))).toEqual([6, 4]));
  test('needs are levelled before any want is served', () => {
    expect(sharesOf(6, claims([9, 2], [9, 4], [9, 0]))).toEqual([2, 4, 0]);
    expect(sharesOf(9, claims([9, 2], [9, 4], [9, 0]))).toEqual([3, 5, 1]);
  });
  test('a need counts only as far as it is asked for', () =>
    expect(sharesOf(4, claims([1, 9], [9, 9]))).toEqual([1, 3]));
});

describe('edges', () => {
  test('no claims', () => {
    const { shares, ended, lotOrder } = shareOut({ loads: 5, claims: [], lotSeed });
    expect({ shares, ended, lotOrder }).toEqual({
      shares: [],
      ended: { stage: 'all-met', round: 0, contenders: 0, left: 0 },
      lotOrder: [],
    });
  });
  test('no loads', () => {
    const { shares, ended } = shareOut({ loads: 0, claims: claims([3, 2], [1, 0], [0, 0]), lotSeed });
    expect(shares.map(({ share, dueMillionths, reason }) => [share, dueMillionths, reason.code])).toEqual([
      [0, 0, 'level'],
      [0, 0, 'needs-first'],
      [0, 0, 'met-in-full'],
    ]);
    expect(ended).toEqual({ stage: 'needs', round: 0, contenders: 1, left: 0 });
  });
  test('exactly enough, and one short of it', () => {
    expect(shareOut({ loads: 7, claims: claims([4, 4], [3, 0]), lotSeed }).ended.stage).toBe('all-met');
    expect(shareOut({ loads: 6, claims: claims([4, 4], [3, 0]), lotSeed })).toMatchObject({
      shares: [{ share: 4 }, { share: 2 }],
      ended: { stage: 'wants', round: 2, contenders: 1, left: 0 },
    });
  });
  test('the greatest heap there may be', () => {
    const loads = 4_503_599_627;
    expect(sharesOf(loads, claims([Number.MAX_SAFE_INTEGER, 0], [2, 2]))).toEqual([loads - 2, 2]);
    expect(() => sharesOf(loads + 1, [])).toThrow(RangeError);
  });
});

describe('the last, partial round', () => {
  test('goes to the highest credit, and each contender was due an equal part', () => {
    const { shares, ended } = shareOut({
      loads: 7,
      claims: claims([4, 4, -600_000], [4, 4, 400_000], [4, 4, 200_000]),
      lotSeed,
    });
    expect(
      shares.map(({ share, dueMillionths, creditAfterMillionths }) => [share, dueMillionths, creditAfterMillionths]),
    ).toEqual([
      [2, expect.closeTo(2_333_333, -1), expect.closeTo(-266_667, -1)],
      [3, expect.closeTo(2_333_333, -1), expect.closeTo(-266_667, -1)],
      [2, expect.closeTo(2_333_333, -1), expect.closeTo(533_333, -1)],
    ]);
    expect(shares[1]?.reason).toEqual({
      code: 'odd-load',
      stage: 'needs',
      level: 2,
      left: 1,
      contenders: 3,
      by: 'credit',
    });
    expect(shares[2]?.reason).toMatchObject({ code: 'odd-load-missed', by: 'credit' });
    expect(ended).toEqual({ stage: 'needs', round: 3, contenders: 3, left: 1 });
  });
  test('goes by lot between equal credits; a leftover millionth too', () => {
    const { shares, lotOrder } = shareOut({ loads: 4, claims: claims([2, 2], [2, 2], [2, 2]), lotSeed });
    const inLotOrder = lotOrder.map((id) => shares.find((share) => share.id === id));
    expect(inLotOrder.map((share) => [share?.share, share?.dueMillionths])).toEqual([
      [2, 1_333_334],
      [1, 1_333_333],
      [1, 1_333_333],
    ]);
    expect(inLotOrder.map((share) => share?.reason)).toMatchObject([{ by: 'lot' }, { by: 'lot' }, { by: 'lot' }]);
  });
  test('gives leftover millionths in lot order, whoever is owed more', () => {
    const seeds = Array.from({ length: 20 }, (_, at) => at.toString(16));
    for (const seed of seeds) {
      const { shares, lotOrder } = shareOut({
        loads: 1,
        claims: claims([1, 1, 3], [1, 1, 2], [1, 1, 1]),
        lotSeed: seed,
      });
      expect(shares.find(({ dueMillionths }) => dueMillionths === 333_334)?.id).toBe(lotOrder[0]);
    }
  });
  test('says lot only between claims that were owed the same', () => {
    const decided = (loads: number, credits: readonly number[]) =>
      shareOut({ loads, claims: claims(...credits.map((credit) => [1, 1, credit] as const)), lotSeed })
        .shares.map(({ reason }) => ('by' in reason ? `${reason.code} by ${reason.by}` : reason.code))
        .sort();
    expect(decided(1, [0, 0, -5])).toEqual(['odd-load by lot', 'odd-load-missed by credit', 'odd-load-missed by lot']);
    expect(decided(2, [5, 0, 0])).toEqual(['odd-load by credit', 'odd-load by lot', 'odd-load-missed by lot']);
    expect(decided(1, [5, 0, 0])).toEqual([
      'odd-load by credit',
      'odd-load-missed by credit',
      'odd-load-missed by credit',
    ]);
  });
  test('changes no credit of those who did not contend', () => {
    const { shares } = shareOut({ loads: 6, claims: claims([1, 1, 7], [4, 4], [4, 4]), lotSeed });
    expect(shares[0]).toMatchObject({
      share: 1,
      dueMillionths: 1_000_000,
      creditAfterMillionths: 7,
      reason: { code: 'met-in-full' },
    });
  });
});

describe('reasons', () => {
  const codesOf = (loads: number, listed: readonly Claim[]) =>
    shareOut({ loads, claims: listed, lotSeed }).shares.map(({ reason }) => reason);

  test('a whole round leaves nobody odd', () =>
    expect(codesOf(4, claims([5, 5], [5, 5]))).toEqual([
      { code: 'level', stage: 'needs', level: 2 },
      { code: 'level', stage: 'needs', level: 2 },
    ]));
  test('needs took the heap, to its end or to its last load', () => {
    const needsFirst = [
      { code: 'needs-first', needMet: true },
      { code: 'needs-first', needMet: false },
    ];
    expect(codesOf(4, claims([5, 2], [5, 0], [9, 9])).slice(0, 2)).toEqual(needsFirst);
    expect(codesOf(2, claims([5, 2], [5, 0]))).toEqual(needsFirst);
  });
  test('wants are levelled too', () =>
    expect(codesOf(6, claims([9, 2], [9, 0]))).toEqual([
      { code: 'level', stage: 'wants', level: 2 },
      { code: 'level', stage: 'wants', level: 2 },
    ]));
});

describe('run again, with loads collected', () => {
  const shareAndDue = (loads: number, listed: readonly Claim[]) =>
    shareOut({ loads, claims: listed, lotSeed }).shares.map(({ share, dueMillionths }) => [
      share,
      dueMillionths / 1_000_000,
    ]);

  test('a heap that ran short: who came early keeps it, and owes it', () =>
    expect(shareAndDue(14, claims([10, 10, 0, 10], [10, 10]))).toEqual([
      [10, 7],
      [4, 7],
    ]));
  test('a share given up goes round again to the others', () => {
    expect(sharesOf(15, claims([5, 5, 0, 1], [9, 9, 0, 4], [9, 9]))).toEqual([5, 5, 5]);
    expect(shareAndDue(15, claims([1, 1, 0, 1], [9, 9, 0, 4], [9, 9]))).toEqual([
      [1, 1],
      [7, 7],
      [7, 7],
    ]);
  });
  test('loads taken beyond a share shorten the others', () => {
    const { shares } = shareOut({ loads: 10, claims: claims([5, 5, 0, 7], [5, 5]), lotSeed });
    expect(shares.map(({ share, creditAfterMillionths }) => [share, creditAfterMillionths])).toEqual([
      [7, -2_000_000],
      [3, 2_000_000],
    ]);
    expect(shares[0]?.reason.code).toBe('already-collected');
  });
});

describe('refusals', () => {
  test.each([
    ['a negative heap', -1, claims([1, 1])],
    ['half a load in the heap', 0.5, claims([1, 1])],
    ['a heap that is no number', Number.NaN, claims([1, 1])],
    ['a negative asking', 1, claims([-1, 1])],
    ['half a load needed', 1, claims([1, 0.5])],
    ['an endless asking', 1, claims([Number.POSITIVE_INFINITY, 1])],
    ['a part of a millionth', 1, claims([1, 1, 0.5])],
    ['a credit too great to be exact', 1, claims([1, 1, 2 ** 52 + 1])],
    ['more collected than the heap held', 1, claims([2, 2, 0, 1], [2, 2, 0, 1])],
    ['a claim listed twice', 1, [...claims([1, 1]), ...claims([1, 1])]],
  ])('%s', (_, loads, listed) => expect(() => shareOut({ loads, claims: listed, lotSeed })).toThrow(RangeError));
});

test('what was given is left as it was', () => {
  const listed = Object.freeze(claims([4, 2, 5], [3, 0, -5], [9, 9]).map((claim) => Object.freeze(claim)));
  expect(() => shareOut(Object.freeze({ loads: 6, claims: listed, lotSeed }))).not.toThrow();
});

test('the method is named with its version', () =>
  expect(shareOut({ loads: 0, claims: [], lotSeed }).method).toEqual({ name: 'queue of whole loads', version: 2 }));
