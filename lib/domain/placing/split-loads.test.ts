import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitLoads } from './split-loads';

const split = (loads: number, ...weights: number[]) => [
  ...splitLoads(
    loads,
    weights.map((weight, at) => ({ id: String(at), weight })),
  ).values(),
];

describe('loads of a holding, to its plots', () => {
  test.each([
    [7, [2, 1], [5, 2]],
    [7, [1], [7]],
    [0, [3, 5], [0, 0]],
    [3, [1, 1], [2, 1]],
    [3, [0, 0], [2, 1]],
    [4, [0, 9], [0, 4]],
    [1, [1, 2, 3], [0, 0, 1]],
  ])('%d by %j', (loads, weights, shares) => expect(split(loads, ...weights)).toEqual(shares));
  test('refuses what is no number of loads, and nowhere to go', () => {
    for (const wrong of [-1, 0.5, Number.NaN]) expect(() => split(wrong, 1)).toThrow(RangeError);
    for (const wrong of [-1, 0.5, Number.NaN]) expect(() => split(1, wrong)).toThrow(RangeError);
    expect(() => split(1)).toThrow(RangeError);
  });
  test('every load goes somewhere, and nobody is a load away from the exact share', () => {
    const weights = fc.array(fc.nat(5_000_000), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(fc.nat(500), weights, (loads, all) => {
        const shares = split(loads, ...all);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBe(loads);
        const total = all.reduce((sum, weight) => sum + weight, 0);
        for (const [at, share] of shares.entries()) {
          const exact = total ? (loads * (all[at] ?? 0)) / total : loads / all.length;
          expect(Math.abs(share - exact)).toBeLessThan(1);
        }
      }),
    );
  });
});
