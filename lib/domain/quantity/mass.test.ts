import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Units } from './length';
import { formatMassIn, poundG, readMass, readSmallMass } from './mass';

describe('formatMassIn', () => {
  test.each([
    [0, '0 g', '0 oz'],
    [170, '170 g', '6 oz'],
    [453.59237, '454 g', '1 lb'],
    [5556.5, '5.6 kg', '12 lb 4 oz'],
    [6350.3, '6.4 kg', '14 lb'],
    [34_000, '34 kg', '75 lb'],
    [50_802.34544, '51 kg', '1 cwt'],
    [152_407, '152 kg', '3 cwt'],
    [157_850, '158 kg', '3 cwt 12 lb'],
    [1_016_046.9, '1.02 t', '1 ton'],
    [3_000_000, '3 t', '2 tons 19 cwt'],
  ])('%s g: %s, %s', (massG, metric, imperial) => {
    expect(formatMassIn(massG, 'metric')).toBe(metric);
    expect(formatMassIn(massG, 'imperial')).toBe(imperial);
  });

  test('never so many ounces as a pound, pounds as a hundredweight, or hundredweight as a ton', () => {
    const parts = { oz: 16, lb: 112, cwt: 20 };
    fc.assert(
      fc.property(fc.nat(50_000_000), (massG) => {
        const small = / (\d+) (oz|lb|cwt)$/.exec(formatMassIn(massG, 'imperial'));
        if (small) expect(Number(small[1])).toBeLessThan(parts[small[2] as keyof typeof parts]);
      }),
    );
  });

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (massG) => {
    expect(() => formatMassIn(massG, 'metric')).toThrow(RangeError);
    expect(() => formatMassIn(massG, 'imperial')).toThrow(RangeError);
  });
});

describe('readMass', () => {
  test.each<[string, Units, number | null]>([
    ['5', 'metric', 5000],
    ['5', 'imperial', 2268],
    ['5,5 kg', 'imperial', 5500],
    ['480 g', 'metric', 480],
    ['1.2 t', 'metric', 1_200_000],
    ['2 tonnes', 'metric', 2_000_000],
    ['12 lb 4 oz', 'metric', 5557],
    ['12lbs, 4oz', 'metric', 5557],
    ['12 lb 15.5 oz', 'metric', 5883],
    ['12 LB', 'metric', 5443],
    ['4 oz', 'metric', 113],
    ['1 cwt', 'metric', 50_802],
    ['3 cwt 12 lb', 'metric', 157_850],
    ['1 ton', 'metric', 1_016_047],
    ['2 tons 19 cwt', 'metric', 2_997_338],
    ['0', 'metric', 0],
    ['12 lb 16 oz', 'metric', null],
    ['1 cwt 112 lb', 'metric', null],
    ['12 4 oz', 'imperial', null],
    ['5 kg 4 oz', 'metric', null],
    ['4 oz 2 lb', 'metric', null],
    ['3 cwt 4 oz', 'metric', null],
    ['-1 kg', 'metric', null],
    ['1e3 kg', 'metric', null],
    ['NaN', 'metric', null],
    ['heavy', 'metric', null],
    ['', 'metric', null],
    ['1000 t', 'metric', 1_000_000_000],
    ['1001 t', 'metric', null],
    ['1,000 kg', 'metric', null],
    ['1,000', 'metric', null],
    ['1,25 kg', 'metric', 1250],
    ['1.250 kg', 'metric', 1250],
  ])('%s, %s: %s', (text, units, massG) => expect(readMass(text, units)).toBe(massG));

  test('whatever is typed, it is a weight from 0 or none', () => {
    const typed = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789., lbozkgctwn-') }));
    fc.assert(
      fc.property(typed, fc.constantFrom<Units>('metric', 'imperial'), (text, units) => {
        const massG = readMass(text, units);
        if (massG !== null) expect(Number.isSafeInteger(massG) && massG >= 0 && massG <= 1e9).toBe(true);
      }),
    );
  });

  test('pounds and ounces, once printed, read back to within half an ounce', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 6000 }), (massG) => {
        const again = readMass(formatMassIn(massG, 'imperial'), 'metric');
        expect(Math.abs((again ?? Number.NaN) - massG)).toBeLessThanOrEqual(poundG / 32 + 0.5);
      }),
    );
  });
});

describe('readSmallMass', () => {
  test.each<[string, Units, number | null]>([
    ['225', 'metric', 225],
    [' 225 ', 'metric', 225],
    ['8', 'imperial', 227],
    ['0,5 kg', 'imperial', 500],
    ['1 lb 2 oz', 'metric', 510],
    ['0', 'metric', 0],
    ['', 'metric', null],
    ['1 2', 'metric', null],
    ['-3', 'metric', null],
    ['a jar', 'metric', null],
  ])('%s (%s) → %s', (text, units, massG) => {
    expect(readSmallMass(text, units)).toBe(massG);
  });
});
