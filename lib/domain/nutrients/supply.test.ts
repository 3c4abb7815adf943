import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { materials } from '../catalogue/materials';
import { meals } from '../catalogue/meals';
import { nutrients } from '../catalogue/nutrient-contents';
import { seasonApplied } from './season-applied';
import { contentsOf, type Dressing, supplyOf } from './supply';

const dressing = (over: Partial<Dressing> = {}): Dressing => ({
  materialKey: 'cattle-manure',
  rateGPerM2: 10_000,
  age: 'old',
  applied: 'spring',
  soil: 'medium-heavy',
  incorporated: true,
  ...over,
});
const nextCrop = (over: Partial<Dressing>) =>
  supplyOf(dressing(over)).firstYear?.shares.find(({ kind }) => kind === 'next-crop')?.leastPercent;
const codes = (over: Partial<Dressing>) => supplyOf(dressing(over)).reasons.map(({ code }) => code);

test.each([
  [1, 'winter'],
  [2, 'spring'],
  [4, 'spring'],
  [5, 'summer'],
  [7, 'summer'],
  [8, 'autumn'],
  [10, 'autumn'],
  [11, 'winter'],
  [12, 'winter'],
])('month %s is %s', (month, season) => expect(seasonApplied(month)).toBe(season));

test.each([0, 13, 1.5, Number.NaN])('%s is no month', (month) =>
  expect(() => seasonApplied(month)).toThrow(RangeError),
);

describe('a dressing', () => {
  test('says what it brings, what others say it brings, and what is only remembered', () => {
    const supply = supplyOf(dressing());
    expect(supply.nitrogen).toEqual({
      mgPerM2: 60_000,
      leastMgPerM2: 45_000,
      mostMgPerM2: 60_000,
      source: 'rb209-manure',
    });
    expect(supply.reasons).toContainEqual({ code: 'from-memory', nutrient: 'potash' });
    expect(supply.reasons).toContainEqual({
      code: 'sources-differ',
      nutrient: 'nitrogen',
      leastMgPerM2: 45_000,
      mostMgPerM2: 60_000,
    });
  });

  test('frees nitrogen by the first account, within the range of all', () => {
    expect(supplyOf(dressing()).firstYear).toMatchObject({ mgPerM2: 6000, leastMgPerM2: 6000, mostMgPerM2: 15_000 });
    expect(supplyOf(dressing({ age: 'fresh' })).firstYear?.mgPerM2).toBe(9000);
    expect(supplyOf(dressing({ materialKey: 'horse-manure', rateGPerM2: 5000 })).firstYear?.mgPerM2).toBe(2500);
  });

  test('of nothing brings nothing', () => {
    const supply = supplyOf(dressing({ rateGPerM2: 0 }));
    expect(supply.nitrogen).toMatchObject({ mgPerM2: 0, leastMgPerM2: 0, mostMgPerM2: 0 });
    expect(supply.firstYear).toMatchObject({ mgPerM2: 0, mostMgPerM2: 0 });
  });

  test('whose content nobody knows is not known, never nothing', () => {
    const supply = supplyOf(dressing({ materialKey: 'straw' }));
    expect(supply).toMatchObject({ nitrogen: null, phosphate: null, potash: null, magnesia: null, firstYear: null });
    expect(supply.reasons).toHaveLength(5);
    expect(supplyOf(dressing({ materialKey: 'mixed-manure' }))).toMatchObject({
      nitrogen: { leastMgPerM2: 50_000, mostMgPerM2: 70_000 },
      phosphate: null,
    });
  });

  test('in summer stands in the table on grass alone', () => {
    expect(codes({ applied: 'summer' })).toContain('summer-not-in-table');
    expect(codes({ applied: 'summer', incorporated: false })).toContain('summer-is-for-grass');
    expect(nextCrop({ applied: 'summer' })).toBeUndefined();
    expect(supplyOf(dressing({ applied: 'summer' })).firstYear?.mgPerM2).toBe(15_000);
    expect(codes({ applied: 'autumn' })).toContain('rain-assumed');
    expect(codes({})).not.toContain('rain-assumed');
  });

  test('of compost and of poultry manure goes by German law alone', () => {
    expect(supplyOf(dressing({ materialKey: 'green-compost' })).firstYear).toMatchObject({ mgPerM2: 2490 });
    expect(supplyOf(dressing({ materialKey: 'hen-manure' })).firstYear?.shares).toHaveLength(1);
  });

  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('of %s g/m² is refused', (rateGPerM2) => {
    expect(() => supplyOf(dressing({ rateGPerM2 }))).toThrow(RangeError);
    expect(() => supplyOf(dressing({ materialKey: 'straw', rateGPerM2 }))).toThrow(RangeError);
  });

  test('of what is no material is refused', () => {
    expect(() => supplyOf(dressing({ materialKey: 'gravel' }))).toThrow(RangeError);
    expect(() => contentsOf('')).toThrow(RangeError);
  });
});

describe('a meal', () => {
  test('frees what was measured, whatever the season', () => {
    const horn = supplyOf(dressing({ materialKey: 'hoof-and-horn', rateGPerM2: 100, applied: 'summer' }));
    expect(horn.nitrogen).toMatchObject({ mgPerM2: 14_000, leastMgPerM2: 12_980, mostMgPerM2: 15_100 });
    expect(horn.firstYear).toMatchObject({ mgPerM2: 8680, leastMgPerM2: 8680, mostMgPerM2: 10_640 });
    expect(horn.reasons.map(({ code }) => code)).not.toContain('summer-not-in-table');
  });

  test('without a measured release is not known; of none, none comes free', () => {
    expect(supplyOf(dressing({ materialKey: 'bone-meal', rateGPerM2: 100 })).firstYear).toBeNull();
    expect(codes({ materialKey: 'bone-meal' })).toContain('availability-not-known');
    expect(supplyOf(dressing({ materialKey: 'wood-ash', rateGPerM2: 100 })).firstYear?.mostMgPerM2).toBe(0);
  });
});

const anyDressing = fc.record<Dressing>({
  materialKey: fc.constantFrom(...[...materials, ...meals].map(({ key }) => key)),
  rateGPerM2: fc.integer({ min: 0, max: 50_000 }),
  age: fc.constantFrom('old', 'fresh'),
  applied: fc.constantFrom('autumn', 'winter', 'spring', 'summer'),
  soil: fc.constantFrom('sandy-shallow', 'medium-heavy'),
  incorporated: fc.boolean(),
});

test('supply grows in proportion to the rate, to within its one rounding', () => {
  fc.assert(
    fc.property(anyDressing, fc.integer({ min: 0, max: 50_000 }), (one, rateGPerM2) => {
      const more = supplyOf({ ...one, rateGPerM2 });
      const both = supplyOf({ ...one, rateGPerM2: one.rateGPerM2 + rateGPerM2 });
      const first = supplyOf(one);
      for (const part of [...nutrients, 'firstYear'] as const) {
        const sum = (first[part]?.mgPerM2 ?? 0) + (more[part]?.mgPerM2 ?? 0);
        expect(Math.abs((both[part]?.mgPerM2 ?? 0) - sum)).toBeLessThanOrEqual(1);
      }
    }),
  );
});

test('a figure lies within its range, is never negative, and nothing free exceeds what is there', () => {
  fc.assert(
    fc.property(anyDressing, (one) => {
      const before = structuredClone(one);
      const supply = supplyOf(one);
      for (const part of [...nutrients, 'firstYear'] as const) {
        const amount = supply[part];
        if (!amount) continue;
        expect(amount.leastMgPerM2 >= 0 && amount.leastMgPerM2 <= amount.mgPerM2).toBe(true);
        expect(amount.mgPerM2 <= amount.mostMgPerM2 && Number.isSafeInteger(amount.mostMgPerM2)).toBe(true);
      }
      expect(supply.firstYear?.mostMgPerM2 ?? 0).toBeLessThanOrEqual(supply.nitrogen?.mgPerM2 ?? 0);
      expect(one).toEqual(before);
    }),
  );
});
