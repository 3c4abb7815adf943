import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { baleOf, bales } from '../catalogue/bales';
import { sources } from '../catalogue/sources';
import { areaOfBalesCm2, balesFor, strawRateGPerM2 } from './bales';

const area = fc.integer({ min: 1, max: 100_000_000 });
const rate = fc.integer({ min: 1, max: 20_000 });
const bale = fc.integer({ min: 1000, max: 600_000 });

describe('bales', () => {
  test('exactly full, and a square centimetre more', () => {
    expect(balesFor(1_300_000, 500, 13_000)).toBe(5);
    expect(balesFor(1_300_001, 500, 13_000)).toBe(6);
    expect(balesFor(1, 1, 13_000)).toBe(1);
    expect(areaOfBalesCm2(5, 500, 13_000)).toBe(1_300_000);
  });

  test('counted out bale by bale, the same', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200_000 }),
        fc.integer({ min: 1, max: 2000 }),
        bale,
        (cm2, gPerM2, baleG) => {
          let bales = 0;
          for (let left = BigInt(cm2) * BigInt(gPerM2); left > 0n; left -= BigInt(baleG) * 10_000n) bales++;
          expect(balesFor(cm2, gPerM2, baleG)).toBe(bales);
        },
      ),
    );
  });

  test('there and back: bales bought for ground cover it, and one fewer would not', () => {
    fc.assert(
      fc.property(area, rate, bale, (cm2, gPerM2, baleG) => {
        const bales = balesFor(cm2, gPerM2, baleG);
        expect(areaOfBalesCm2(bales, gPerM2, baleG)).toBeGreaterThanOrEqual(cm2);
        if (bales > 1) expect(areaOfBalesCm2(bales - 1, gPerM2, baleG)).toBeLessThan(cm2);
      }),
    );
  });

  test('what so many bales cover wants no more of them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), rate, bale, (bales, gPerM2, baleG) => {
        expect(balesFor(areaOfBalesCm2(bales, gPerM2, baleG), gPerM2, baleG)).toBeLessThanOrEqual(bales);
      }),
    );
  });

  test.each([0, -1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])(
    '%s is refused wherever it stands',
    (value) => {
      expect(() => balesFor(value, 500, 13_000)).toThrow(RangeError);
      expect(() => balesFor(1, value, 13_000)).toThrow(RangeError);
      expect(() => balesFor(1, 500, value)).toThrow(RangeError);
      expect(() => areaOfBalesCm2(value, 500, 13_000)).toThrow(RangeError);
      expect(() => areaOfBalesCm2(1, value, 13_000)).toThrow(RangeError);
      expect(() => areaOfBalesCm2(1, 500, value)).toThrow(RangeError);
    },
  );

  test('more straw than can be counted exactly is refused', () =>
    expect(() => balesFor(2 ** 40, 2 ** 20, 13_000)).toThrow(RangeError));
});

describe('strawRateGPerM2', () => {
  test('a centimetre is ten litres to the square metre', () => {
    expect(strawRateGPerM2(5, 70)).toBe(3500);
    expect(strawRateGPerM2(0.1, 1)).toBe(1);
  });

  test('twice as thick, twice the straw, within the gram of rounding', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), fc.integer({ min: 1, max: 400 }), (cm, density) => {
        expect(Math.abs(strawRateGPerM2(2 * cm, density) - 2 * strawRateGPerM2(cm, density))).toBeLessThanOrEqual(1);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (value) => {
    expect(() => strawRateGPerM2(value, 70)).toThrow(RangeError);
    expect(() => strawRateGPerM2(5, value)).toThrow(RangeError);
  });

  test('a layer of no weight is refused', () => expect(() => strawRateGPerM2(0.01, 1)).toThrow(RangeError));
});

test('a kind of bale weighs within its published range', () => {
  for (const { key, massG, leastG, mostG, source } of bales) {
    expect([key, leastG <= massG && massG <= mostG && Object.hasOwn(sources, source)]).toEqual([key, true]);
    expect(baleOf(key)?.key).toBe(key);
  }
  expect(baleOf('stook')).toBeUndefined();
});
