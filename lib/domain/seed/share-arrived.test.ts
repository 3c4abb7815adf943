import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shareArrived } from './share-arrived';

const lot = ['c', 'a', 'b', 'd'];
const wantsOf = (...amounts: number[]) => amounts.map((amount, at) => ({ holdingId: 'abcd'[at] ?? '', amount }));
const given = (amount: number, ...amounts: number[]) =>
  shareArrived(amount, wantsOf(...amounts), lot).given.map((one) => one.amount);

describe('what came too short', () => {
  it.each([
    [100, [20, 90, 90], [20, 40, 40]],
    [101, [20, 90, 90], [20, 40, 41]],
    [0, [20, 90], [0, 0]],
    [1, [5, 5, 5], [0, 0, 1]],
    [2, [5, 5, 5], [1, 0, 1]],
    [109, [20, 90], [20, 89]],
    [110, [20, 90], [20, 90]],
    [500, [20, 90], [20, 90]],
    [3, [0, 7], [0, 3]],
  ])('%i of %j is given as %j', (amount, wants, shares) => expect(given(amount, ...wants)).toEqual(shares));

  it('has a level, and none where there is enough', () => {
    expect(shareArrived(100, wantsOf(20, 90, 90), lot).level).toBe(40);
    expect(shareArrived(110, wantsOf(20, 90), lot).level).toBeNull();
    expect(shareArrived(0, [], lot)).toEqual({ level: null, given: [] });
  });

  it('refuses what is no number, stands twice, or is not in the lot', () => {
    expect(() => given(-1, 5)).toThrow(RangeError);
    expect(() => given(1, 5.5)).toThrow(RangeError);
    expect(() => shareArrived(1, [...wantsOf(5), ...wantsOf(5)], lot)).toThrow(RangeError);
    expect(() => shareArrived(1, wantsOf(5), ['b'])).toThrow(RangeError);
  });

  it('is what going round and giving one at a time comes to', () => {
    const amounts = fc.array(fc.nat(30), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.nat(90), amounts, fc.shuffledSubarray(lot, { minLength: 4 }), (amount, wanted, order) => {
        const shares = shareArrived(amount, wantsOf(...wanted), order).given;
        expect(new Map(shares.map((one) => [one.holdingId, one.amount]))).toEqual(roundByRound(amount, wanted, order));
      }),
    );
  });
});

// Slow and obvious.
function roundByRound(amount: number, wanted: readonly number[], order: readonly string[]): Map<string, number> {
  const wants = new Map(wantsOf(...wanted).map((one) => [one.holdingId, one.amount]));
  const shares = new Map([...wants.keys()].map((id) => [id, 0]));
  for (let left = amount, before = -1; left > 0 && left !== before; ) {
    before = left;
    for (const id of order) {
      const has = shares.get(id);
      if (left === 0 || has === undefined || has >= (wants.get(id) ?? 0)) continue;
      shares.set(id, has + 1);
      left -= 1;
    }
  }
  return shares;
}
