import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runningShares } from './running-shares';

const weights = fc.array(fc.nat(100_000), { maxLength: 40 });
const rate = fc.integer({ min: 0, max: 50_000 });
const total = (numbers: readonly number[]) => numbers.reduce((sum, value) => sum + value, 0);

test('halves go to whole numbers in turn', () => {
  expect(runningShares([1, 1, 1], (sum) => sum / 2)).toEqual([1, 0, 1]);
  expect(runningShares([1, 1, 1], (sum) => sum / 2, Math.ceil)).toEqual([1, 0, 1]);
  expect(runningShares([1, 1, 1], (sum) => sum / 2, Math.floor)).toEqual([0, 1, 0]);
});

test('nothing shared is nothing, and a weight of nothing takes nothing', () => {
  expect(runningShares([], (sum) => sum)).toEqual([]);
  expect(runningShares([0, 5, 0], (sum) => sum)).toEqual([0, 5, 0]);
});

test('the parts sum to the rounded whole, and none is a whole one away from its own', () => {
  fc.assert(
    fc.property(weights, rate, fc.constantFrom(Math.round, Math.ceil, Math.floor), (given, perWeight, round) => {
      const amountOf = (weight: number) => (weight * perWeight) / 10_000;
      const shares = runningShares(given, amountOf, round);
      expect(total(shares)).toBe(round(amountOf(total(given))));
      shares.forEach((share, at) => {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(Math.abs(share - amountOf(given[at] ?? 0))).toBeLessThanOrEqual(1 + 1e-9);
      });
    }),
  );
});

test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%s is no weight', (weight) =>
  expect(() => runningShares([weight], (sum) => sum)).toThrow(RangeError),
);

test('an amount that falls, or is no number, is refused', () => {
  expect(() => runningShares([1, 1], (sum) => -sum)).toThrow(RangeError);
  expect(() => runningShares([1], () => Number.NaN)).toThrow(RangeError);
});
