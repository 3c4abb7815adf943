import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mostDressingGPerM2, nitrogenMgPerM2 } from './nitrogen';

test('the heaviest dressing stays within the limit, and a gram more does not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 500, max: 40_000 }),
      fc.integer({ min: 0, max: 1000 }),
      (nitrogenGPerT, limitKgPerHa) => {
        const most = mostDressingGPerM2(nitrogenGPerT, limitKgPerHa);
        // 1 kg/ha is 100 mg/m², so content × dressing is compared in thousandths of a milligram.
        expect(
          most * nitrogenGPerT <= limitKgPerHa * 100_000 && (most + 1) * nitrogenGPerT > limitKgPerHa * 100_000,
        ).toBe(true);
        expect(nitrogenMgPerM2(most, nitrogenGPerT)).toBeLessThanOrEqual(limitKgPerHa * 100);
      },
    ),
  );
});

test('a dressing of nothing brings nothing', () => expect(nitrogenMgPerM2(0, 6000)).toBe(0));

test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (value) => {
  expect(() => nitrogenMgPerM2(value, 6000)).toThrow(RangeError);
  expect(() => nitrogenMgPerM2(5000, value)).toThrow(RangeError);
  expect(() => mostDressingGPerM2(value, 250)).toThrow(RangeError);
  expect(() => mostDressingGPerM2(6000, value)).toThrow(RangeError);
});

test('a material without nitrogen has no heaviest dressing', () =>
  expect(() => mostDressingGPerM2(0, 250)).toThrow(RangeError));
