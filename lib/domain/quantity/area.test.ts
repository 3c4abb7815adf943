import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { areaOfQuarterRodsCm2, formatArea, formatRods, percent, quarterRodsOfCm2, readArea } from './area';

test('rods are printed by the quarter', () => {
  expect([1, 2, 3, 4, 5, 6, 40, 42].map(formatRods)).toEqual([
    '¼ rod',
    '½ rod',
    '¾ rod',
    '1 rod',
    '1¼ rods',
    '1½ rods',
    '10 rods',
    '10½ rods',
  ]);
});

test('rods grow in step, within the half square centimetre of rounding', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 100_000 }), (a, b) => {
      expect(
        Math.abs(areaOfQuarterRodsCm2(a + b) - areaOfQuarterRodsCm2(a) - areaOfQuarterRodsCm2(b)),
      ).toBeLessThanOrEqual(1);
    }),
  );
});

test.each([0, -4, 1.5, Number.NaN, Number.POSITIVE_INFINITY])('%s quarter rods are refused', (quarterRods) => {
  expect(() => areaOfQuarterRodsCm2(quarterRods)).toThrow(RangeError);
  expect(() => formatRods(quarterRods)).toThrow(RangeError);
});

test('quarter rods, there and back', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (quarterRods) => {
      expect(quarterRodsOfCm2(areaOfQuarterRodsCm2(quarterRods))).toBe(quarterRods);
    }),
  );
  expect([0, 31_616, 31_617, 2_500_000].map(quarterRodsOfCm2)).toEqual([0, 0, 1, 40]);
  for (const areaCm2 of [-1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => quarterRodsOfCm2(areaCm2)).toThrow(RangeError);
});

test('areas to a tenth below a hundred, whole above', () => {
  expect(formatArea(12_345, 'metric')).toBe('1.2 m²');
  expect(formatArea(1_234_500, 'metric')).toBe('123 m²');
  expect(formatArea(2_529_285, 'imperial')).toBe('2,722 sq ft');
  expect(() => formatArea(-1, 'metric')).toThrow(RangeError);
  expect(() => formatArea(Number.NaN, 'imperial')).toThrow(RangeError);
});

test('something is never 0 %, and less than all never 100 %', () => {
  expect([percent(0, 9), percent(1, 1000), percent(1, 3), percent(999, 1000), percent(9, 9)]).toEqual([
    '0 %',
    'under 1 %',
    '33 %',
    'over 99 %',
    '100 %',
  ]);
  expect(percent(0, 0)).toBe('–');
  expect(() => percent(Number.NaN, 1)).toThrow(RangeError);
});

describe('an area as it is typed', () => {
  it.each([
    ['12.5', 'metric', 125_000],
    ['12,5 m²', 'imperial', 125_000],
    ['120', 'imperial', 111_484],
    ['120 sq ft', 'metric', 111_484],
    ['1 sq yd', 'metric', 8361],
    ['30.25 sq yds', 'imperial', 252_929],
    ['1 rod', 'metric', 252_929],
    ['10 poles', 'imperial', 2_529_285],
    ['2.5 perches', 'metric', 632_321],
    ['3 rod ft', 'metric', null],
    ['0', 'metric', 0],
    ['-1', 'metric', null],
    ['1e3', 'metric', null],
    ['many', 'metric', null],
    ['', 'metric', null],
  ] as const)('%s in %s → %s', (text, units, expected) => expect(readArea(text, units)).toBe(expected));
});
