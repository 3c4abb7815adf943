import { describe, expect, test } from 'vitest';
import { shareOut } from '@/lib/domain/sharing/share-out';

/** Shares of a heap between claims, all of them need, or all of them want; credits and lot cannot matter where awards are whole. */
function awards(loads: number, asked: readonly number[], stage: 'needs' | 'wants'): number[] {
  const claims = asked.map((loadsAsked, at) => ({
    id: `claim-${at}`,
    asked: loadsAsked,
    need: stage === 'needs' ? loadsAsked : 0,
    creditMillionths: 0,
  }));
  return shareOut({ loads, claims, lotSeed: '5eed' }).shares.map(({ share }) => share);
}

describe.each(['needs', 'wants'] as const)('as %s', (stage) => {
  // Constrained equal awards, encyclopaedia article after W. Thomson, Mathematical Social Sciences 45 (2003), 249–297.
  test.each([
    [[60, 90], 100, [50, 50]],
    [[50, 100, 150], 200, [50, 75, 75]],
    [[50, 100, 150], 300, [50, 100, 150]],
    [[100, 200, 300], 300, [100, 100, 100]],
  ])('constrained equal awards: claims %j on %s', (asked, loads, published) =>
    expect(awards(loads, asked, stage)).toEqual(published),
  );

  // The same article: claims 50, 100, 150 on 100 give 33⅓ each. In thirds of a unit the awards are whole.
  test('constrained equal awards in thirds: claims 50, 100, 150 on 100', () =>
    expect(awards(300, [150, 300, 450], stage)).toEqual([100, 100, 100]));

  // R. Aumann and M. Maschler, Journal of Economic Theory 36 (1985), 195–213, as reported by S. Schecter, How the Talmud
  // divides an estate among creditors: claims 100, 200, 300 on 100 give 33⅓ each, by equal awards too. In thirds.
  test('the smallest estate of the Talmud’s three', () =>
    expect(awards(300, [300, 600, 900], stage)).toEqual([100, 100, 100]));

  // S. Keshav, An Engineering Approach to Computer Networking, 1997, pp. 215–217: demands 2, 2.6, 4, 5 on a capacity of
  // 10 give 2, 2.6, 2.7, 2.7. In tenths.
  test('max-min fair shares, in tenths', () => expect(awards(100, [20, 26, 40, 50], stage)).toEqual([20, 26, 27, 27]));

  // Derived, not published: each award is the divisible one, 2⅔ at most, rounded down or up, and equal claims within one.
  test('derived: claims 2, 4, 7, 8 on 10 give 2 and, in some order, 2, 3, 3', () => {
    const [least, ...others] = awards(10, [2, 4, 7, 8], stage);
    expect([least, others.sort()]).toEqual([2, [2, 3, 3]]);
  });
});

// The example of the rule itself: ten loads; asked 6 need 4, asked 6 need 0.
test('two stages', () => {
  const claims = [
    { id: 'a', asked: 6, need: 4, creditMillionths: 0 },
    { id: 'b', asked: 6, need: 0, creditMillionths: 0 },
  ];
  expect(shareOut({ loads: 10, claims, lotSeed: '5eed' }).shares.map(({ share }) => share)).toEqual([6, 4]);
});
