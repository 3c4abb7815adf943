import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostDressingGPerM2, nutrientMgPerM2 } from './dressing';

test('the heaviest dressing stays within the limit with what the ground has had, and a gram more does not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 500, max: 150_000 }),
      fc.integer({ min: 0, max: 1000 }),
      fc.integer({ min: 0, max: 100_000 }),
      (nitrogenGPerT, limitKgPerHa, already) => {
        const most = mostDressingGPerM2(nitrogenGPerT, limitKgPerHa, already);
        // 1 kg/ha is 100 mg/m², so everything is compared in thousandths of a milligram.
        const left = (limitKgPerHa * 100 - already) * 1000;
        expect(most === 0 || most * nitrogenGPerT <= left).toBe(true);
        expect((most + 1) * nitrogenGPerT > left).toBe(true);
      },
    ),
  );
});

test('a dressing of nothing brings nothing, and a limit used up leaves none', () => {
  expect(nutrientMgPerM2(0, 6000)).toBe(0);
  expect(mostDressingGPerM2(6000, 250, 25_000)).toBe(0);
  expect(mostDressingGPerM2(6000, 250, 90_000)).toBe(0);
});

test('a part of it is rounded once', () => {
  expect(nutrientMgPerM2(10_000, 6000, 15)).toBe(9000);
  // 0.333 mg, and not a tenth of a rounded 3.33 mg.
  expect(nutrientMgPerM2(333, 10, 10)).toBe(0);
  expect(nutrientMgPerM2(333, 10, 16)).toBe(1);
});

test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (value) => {
  expect(() => nutrientMgPerM2(value, 6000)).toThrow(RangeError);
  expect(() => nutrientMgPerM2(5000, value)).toThrow(RangeError);
  expect(() => nutrientMgPerM2(5000, 6000, value)).toThrow(RangeError);
  expect(() => mostDressingGPerM2(value, 250)).toThrow(RangeError);
  expect(() => mostDressingGPerM2(6000, value)).toThrow(RangeError);
  expect(() => mostDressingGPerM2(6000, 250, value)).toThrow(RangeError);
});

test('a material without nitrogen has no heaviest dressing', () =>
  expect(() => mostDressingGPerM2(0, 250)).toThrow(RangeError));
