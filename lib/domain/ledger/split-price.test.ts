import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitPrice } from './split-price';

const taken = (loads: Record<string, number>) => Object.entries(loads).map(([id, count]) => ({ id, loads: count }));
const minors = (totalMinor: number, loads: Record<string, number>, lot: readonly string[]) =>
  Object.fromEntries(splitPrice(totalMinor, taken(loads), lot).shares.map(({ id, minor }) => [id, minor]));

describe('by loads taken', () => {
  test('in whole pence', () =>
    expect(minors(600, { a: 1, b: 2, c: 3 }, ['a', 'b', 'c'])).toEqual({ a: 100, b: 200, c: 300 }));
  test('one taker pays it all', () => expect(minors(101, { a: 7 }, ['a'])).toEqual({ a: 101 }));
  test('an odd penny falls to the first of the lot', () => {
    expect(minors(100, { a: 1, b: 1, c: 1 }, ['b', 'c', 'a'])).toEqual({ a: 33, b: 34, c: 33 });
    expect(minors(101, { a: 1, b: 1, c: 1 }, ['b', 'c', 'a'])).toEqual({ a: 33, b: 34, c: 34 });
  });
  test('and not to one whose part is whole', () =>
    expect(minors(5, { a: 2, b: 1, c: 1 }, ['a', 'b', 'c'])).toEqual({ a: 3, b: 1, c: 1 }));
  test('nor to one who took nothing', () => {
    expect(minors(3, { a: 0, b: 1, c: 1 }, ['a', 'b', 'c'])).toEqual({ a: 0, b: 2, c: 1 });
    expect(minors(3, { z: 0, b: 1, c: 1 }, ['b', 'c'])).toEqual({ z: 0, b: 2, c: 1 });
  });
  test('the lot decides, not the part of a penny, where a load costs a penny or more', () => {
    // 100 × 2 ÷ 7 is 28 4/7, 100 × 5 ÷ 7 is 71 3/7.
    expect(minors(100, { a: 2, b: 5 }, ['b', 'a'])).toEqual({ a: 28, b: 72 });
    expect(minors(100, { a: 2, b: 5 }, ['a', 'b'])).toEqual({ a: 29, b: 71 });
  });
  test('where a load costs less than a penny, who took more pays first', () => {
    expect(minors(1, { a: 1, b: 5 }, ['a', 'b'])).toEqual({ a: 0, b: 1 });
    expect(minors(2, { a: 1, b: 1, c: 2 }, ['a', 'b', 'c'])).toEqual({ a: 1, b: 0, c: 1 });
  });
});

describe('nothing to split', () => {
  test('a heap that was free', () => {
    const { shares, leftMinor } = splitPrice(0, taken({ a: 3, b: 0 }), ['a', 'b']);
    expect(shares).toEqual([
      { id: 'a', loads: 3, minor: 0, reason: { code: 'exact' } },
      { id: 'b', loads: 0, minor: 0, reason: { code: 'nothing-taken' } },
    ]);
    expect(leftMinor).toBe(0);
  });
  test('nobody took a load: the price is left', () => {
    const { shares, leftMinor } = splitPrice(900, taken({ a: 0 }), []);
    expect(shares).toEqual([{ id: 'a', loads: 0, minor: 0, reason: { code: 'nothing-taken' } }]);
    expect(leftMinor).toBe(900);
    expect(splitPrice(900, [], [])).toMatchObject({ shares: [], leftMinor: 900 });
  });
});

test('reasons say the part and how many pennies were odd', () => {
  const { shares, method } = splitPrice(100, taken({ a: 1, b: 1, c: 4 }), ['c', 'b', 'a']);
  expect(shares.map(({ minor, reason }) => [minor, reason])).toEqual([
    [16, { code: 'odd-penny-spared', wholeMinor: 16, over: 4, overOf: 6, odd: 2 }],
    [17, { code: 'odd-penny', wholeMinor: 16, over: 4, overOf: 6, odd: 2 }],
    [67, { code: 'odd-penny', wholeMinor: 66, over: 4, overOf: 6, odd: 2 }],
  ]);
  expect(method).toEqual({ name: 'by loads taken, odd pennies by lot', version: 1 });
});

describe('refusals', () => {
  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('a price of %s', (price) =>
    expect(() => splitPrice(price, taken({ a: 1 }), ['a'])).toThrow(RangeError),
  );
  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%s loads', (loads) =>
    expect(() => splitPrice(1, taken({ a: loads }), ['a'])).toThrow(RangeError),
  );
  test('a price and loads whose product is not exact', () => {
    expect(() => splitPrice(2 ** 50, taken({ a: 9 }), ['a'])).toThrow(RangeError);
    // In whole-number arithmetic without bounds: 482,528,531,503,981 5/7 and 643,371,375,338,642 2/7.
    expect(minors(2 ** 50, { a: 3, b: 4 }, ['a', 'b'])).toEqual({ a: 482_528_531_503_982, b: 643_371_375_338_642 });
  });
  test('who took a load is not in the lot, or stands twice', () => {
    expect(() => splitPrice(1, taken({ a: 1 }), ['b'])).toThrow(RangeError);
    expect(() => splitPrice(1, taken({ a: 1 }), ['a', 'a'])).toThrow(RangeError);
    expect(() => splitPrice(1, [...taken({ a: 1 }), ...taken({ a: 2 })], ['a'])).toThrow(RangeError);
  });
});

/** Loads, the lot, and the takers in another order. */
const deliveries = fc.array(fc.nat(12), { maxLength: 20 }).chain((loads) => {
  const takers = loads.map((count, at) => ({ id: `h${at}`, loads: count }));
  const ids = takers.map(({ id }) => id);
  return fc.record({
    takers: fc.constant(takers),
    shuffled: fc.shuffledSubarray(takers, { minLength: takers.length }),
    lot: fc.shuffledSubarray(ids, { minLength: ids.length }),
  });
});
const price = fc.oneof(fc.nat(60), fc.nat(50_000));
const total = (numbers: readonly number[]) => numbers.reduce((sum, value) => sum + value, 0);

test('sums to the penny, and everybody pays their part rounded down or up', () => {
  fc.assert(
    fc.property(price, deliveries, (totalMinor, { takers, lot }) => {
      const { shares, leftMinor } = splitPrice(totalMinor, takers, lot);
      expect(total(shares.map(({ minor }) => minor)) + leftMinor).toBe(totalMinor);
      const all = BigInt(total(takers.map(({ loads }) => loads)));
      for (const { loads, minor } of shares) {
        // Off by less than a penny: |minor × all − price × loads| < all, in exact whole numbers.
        const off = BigInt(minor) * all - BigInt(totalMinor) * BigInt(loads);
        if (all > 0n) expect(off > -all && off < all).toBe(true);
        if (loads === 0) expect(minor).toBe(0);
      }
    }),
    { numRuns: 500 },
  );
});

test('more loads never pay less, and equal loads differ by a penny at most', () => {
  fc.assert(
    fc.property(price, deliveries, (totalMinor, { takers, lot }) => {
      const { shares } = splitPrice(totalMinor, takers, lot);
      for (const one of shares)
        for (const other of shares) {
          if (one.loads > other.loads) expect(one.minor).toBeGreaterThanOrEqual(other.minor);
          if (one.loads === other.loads) expect(Math.abs(one.minor - other.minor)).toBeLessThanOrEqual(1);
        }
    }),
    { numRuns: 500 },
  );
});

test('the order in which takers are listed changes nothing', () => {
  fc.assert(
    fc.property(price, deliveries, (totalMinor, { takers, shuffled, lot }) => {
      const byId = (list: readonly { id: string }[]) => new Map(list.map((share) => [share.id, share]));
      expect(byId(splitPrice(totalMinor, shuffled, lot).shares)).toEqual(
        byId(splitPrice(totalMinor, takers, lot).shares),
      );
    }),
  );
});

test('where a load costs a penny or more, the odd pennies are the first of the lot, plainly', () => {
  fc.assert(
    fc.property(fc.integer({ min: 240, max: 50_000 }), deliveries, (totalMinor, { takers, lot }) => {
      const all = total(takers.map(({ loads }) => loads));
      fc.pre(all > 0);
      const expected = new Map(takers.map(({ id, loads }) => [id, Math.floor((totalMinor * loads) / all)]));
      let odd = totalMinor - total([...expected.values()]);
      for (const id of lot) {
        const loads = takers.find((taker) => taker.id === id)?.loads ?? 0;
        if (odd === 0 || (totalMinor * loads) % all === 0) continue;
        expected.set(id, (expected.get(id) ?? 0) + 1);
        odd--;
      }
      const { shares } = splitPrice(totalMinor, takers, lot);
      expect(new Map(shares.map(({ id, minor }) => [id, minor]))).toEqual(expected);
    }),
  );
});

test('what was given is left as it was', () => {
  const takers = Object.freeze(taken({ a: 2, b: 5 }).map((taker) => Object.freeze(taker)));
  expect(() => splitPrice(100, takers, Object.freeze(['b', 'a']))).not.toThrow();
});
