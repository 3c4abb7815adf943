import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calibrateBarrow } from './barrow-calibration';

describe('calibrateBarrow', () => {
  test('to the rim, and heaped', () => {
    expect(calibrateBarrow(10, 8.5, null)).toEqual({ struckLitres: 85, heaped: null });
    expect(calibrateBarrow(10, 8.5, 11)).toEqual({ struckLitres: 85, heaped: { litres: 110, overPercent: 29 } });
    expect(calibrateBarrow(14, 6, 6)).toEqual({ struckLitres: 84, heaped: { litres: 84, overPercent: 0 } });
  });

  test('there and back: the bucketfuls are in the litres, within half a litre', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 30 }), fc.integer({ min: 1, max: 80 }), (bucketLitres, quarters) => {
        const { struckLitres } = calibrateBarrow(bucketLitres, quarters / 4, null);
        expect(Math.abs(struckLitres - (bucketLitres * quarters) / 4)).toBeLessThanOrEqual(0.5);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused wherever it stands', (value) => {
    expect(() => calibrateBarrow(value, 8, null)).toThrow(RangeError);
    expect(() => calibrateBarrow(10, value, null)).toThrow(RangeError);
    expect(() => calibrateBarrow(10, 8, value)).toThrow(RangeError);
  });

  test('heaped is never less than level, and no barrow holds nothing', () => {
    expect(() => calibrateBarrow(10, 8, 7.75)).toThrow(RangeError);
    expect(() => calibrateBarrow(0.01, 1, null)).toThrow(RangeError);
  });
});
