import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOfQuarterRodsCm2 } from './area';
import { formatRate, gPerM2Of, rateIn, rateUnits } from './area-rate';

describe('rates', () => {
  test.each([
    [1, 'kg/m²', 1000],
    [50, 't/ha', 5000],
    [250, 'kg/ha', 25],
    [1, 'oz/sq yd', 33.9057],
    [1, 'lb/sq yd', 542.492],
    [1, 'lb/100 sq ft', 48.8243],
    [1, 'lb/rod', 17.9336],
    [1, 'cwt/rod', 2008.56],
    [1, 'cwt/acre', 12.5535],
    [20, 'tons/acre', 5021.4],
  ] as const)('%s %s is %s g/m²', (amount, unit, rate) =>
    expect(Math.abs(gPerM2Of(amount, unit) / rate - 1)).toBeLessThan(1e-5),
  );

  test('there and back', () => {
    const amount = fc.double({ min: 0.001, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(amount, fc.constantFrom(...rateUnits), (value, unit) => {
        expect(rateIn(gPerM2Of(value, unit), unit) / value).toBeCloseTo(1, 12);
      }),
    );
  });

  test('so much to the rod is so much on ten rods of ground', () => {
    const grams = (gPerM2Of(3, 'lb/rod') * areaOfQuarterRodsCm2(40)) / 10_000;
    expect(Math.abs(grams - 30 * 453.59237)).toBeLessThan(0.01);
  });

  test('twenty hundredweight are a ton, sixteen ounces a pound, a tenth of a kilogram a hectare a gram on ten square metres', () => {
    expect(gPerM2Of(20, 'cwt/acre')).toBeCloseTo(gPerM2Of(1, 'tons/acre'), 9);
    expect(gPerM2Of(16, 'oz/sq yd')).toBeCloseTo(gPerM2Of(1, 'lb/sq yd'), 9);
    expect(gPerM2Of(1, 't/ha')).toBeCloseTo(gPerM2Of(1000, 'kg/ha'), 9);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e300])('%s is refused', (value) => {
    for (const unit of rateUnits) {
      expect(() => gPerM2Of(value, unit)).toThrow(RangeError);
      expect(() => rateIn(value, unit)).toThrow(RangeError);
    }
    expect(() => formatRate(value, 'metric')).toThrow(RangeError);
  });
});

test('meals by the ounce, manure by the pound', () => {
  expect([170, 999, 1000, 5000].map((rate) => formatRate(rate, 'metric'))).toEqual([
    '170 g/m²',
    '999 g/m²',
    '1 kg/m²',
    '5 kg/m²',
  ]);
  expect([34, 170, 999, 5000].map((rate) => formatRate(rate, 'imperial'))).toEqual([
    '1 oz/sq yd',
    '5 oz/sq yd',
    '29.5 oz/sq yd',
    '9.2 lb/sq yd',
  ]);
});
