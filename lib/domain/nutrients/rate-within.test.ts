import fc from 'fast-check';
import { expect, test } from 'vitest';
import { materials } from '../catalogue/materials';
import { meals } from '../catalogue/meals';
import { rateWithin } from './rate-within';
import { contentsOf } from './supply';

test('for a year, for three, and with what the ground has had', () => {
  expect(rateWithin('horse-manure', 250)).toEqual({ rateGPerM2: 5000, nitrogenGPerT: 5000, source: 'rb209-manure' });
  expect(rateWithin('horse-manure', 250, 0, 3)?.rateGPerM2).toBe(15_000);
  expect(rateWithin('horse-manure', 250, 10_000)?.rateGPerM2).toBe(3000);
  expect(rateWithin('horse-manure', 250, 25_000)?.rateGPerM2).toBe(0);
  expect(rateWithin('hoof-and-horn', 250)?.rateGPerM2).toBe(178);
});

test('none where nobody knows the nitrogen, or there is none to limit', () => {
  expect(rateWithin('straw', 250)).toBeNull();
  expect(rateWithin('wood-ash', 250)).toBeNull();
});

test('what will not do is refused', () => {
  expect(() => rateWithin('gravel', 250)).toThrow(RangeError);
  expect(() => rateWithin('horse-manure', -1)).toThrow(RangeError);
  expect(() => rateWithin('horse-manure', 250, -1)).toThrow(RangeError);
  expect(() => rateWithin('horse-manure', 250, 0, 0)).toThrow(RangeError);
  expect(() => rateWithin('straw', 250, 0, 0.5)).toThrow(RangeError);
});

test('is the largest whole rate within the limit', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...[...materials, ...meals].map(({ key }) => key)),
      fc.integer({ min: 0, max: 500 }),
      fc.integer({ min: 0, max: 60_000 }),
      fc.integer({ min: 1, max: 6 }),
      (key, limitKgPerHa, already, years) => {
        const rate = rateWithin(key, limitKgPerHa, already, years)?.rateGPerM2;
        const gPerT = contentsOf(key).nitrogen?.gPerT ?? 0;
        if (rate === undefined) {
          expect(gPerT).toBe(0);
          return;
        }
        // In whole micrograms on a square metre.
        const left = limitKgPerHa * years * 100_000 - already * 1000;
        expect(rate === 0 || rate * gPerT <= left).toBe(true);
        expect((rate + 1) * gPerT).toBeGreaterThan(left);
      },
    ),
  );
});
