import { describe, expect, test } from 'vitest';
import { crops } from '../catalogue/crops';
import { balanceOf } from './balance';
import { demandOf } from './demand';
import { type Dressing, supplyOf } from './supply';

const supply = (materialKey: string, rateGPerM2: number, over: Partial<Dressing> = {}) =>
  supplyOf({
    materialKey,
    rateGPerM2,
    age: 'old',
    applied: 'winter',
    soil: 'medium-heavy',
    incorporated: true,
    ...over,
  });
const codes = (...given: Parameters<typeof balanceOf>) => balanceOf(...given).reasons.map(({ code }) => code);

describe('what a crop demands', () => {
  test('leeks', () =>
    expect(demandOf('leek')).toMatchObject({
      demands: [
        {
          totalNitrogenMgPerM2: 25_000,
          soilDepthCm: 60,
          yieldGPerM2: 6000,
          removedNitrogenMgPerM2: 15_000,
          removedPhosphateMgPerM2: 4800,
          residueMgPerM2: 5500,
        },
      ],
      ceiling: { mgPerM2: 37_000, source: 'from-memory' },
    }));

  test('a year without a harvest removes nothing that is known', () =>
    expect(demandOf('asparagus').demands[0]).toMatchObject({ yieldGPerM2: 0, removedNitrogenMgPerM2: null }));

  test('a crop that the tables do not name has neither', () =>
    expect(demandOf('tomato')).toEqual({ demands: [], ceiling: null }));

  test('no crop is given anything but whole numbers from 0', () => {
    for (const { key } of crops)
      for (const { name: _, source: __, contentsSource: ___, ...numbers } of demandOf(key).demands)
        for (const value of Object.values(numbers))
          expect(value === null || (Number.isSafeInteger(value) && value >= 0)).toBe(true);
  });
});

describe('the balance', () => {
  test('sets what is supplied beside what is demanded, and subtracts nothing', () => {
    const balance = balanceOf('leek', [supply('horse-manure', 5000)], 0);
    expect(balance.nitrogen).toEqual({ mgPerM2: 2500, leastMgPerM2: 2500, mostMgPerM2: 6250 });
    expect(balance.demands).toEqual(demandOf('leek').demands);
    expect(balance.reasons).toEqual([
      { code: 'demand-counts-the-soil' },
      { code: 'less-than-removed', nutrient: 'nitrogen', name: 'Leek', byMgPerM2: 8750 },
      { code: 'more-than-removed', nutrient: 'phosphate', name: 'Leek', byMgPerM2: 7700 },
    ]);
  });

  test('counts a tenth of last year’s', () => {
    expect(balanceOf('leek', [], 60_000).nitrogen?.mgPerM2).toBe(6000);
    expect(balanceOf('leek', [supply('horse-manure', 5000)], 60_000).nitrogen?.mgPerM2).toBe(8500);
    expect(codes('leek', [], null)).toContain('last-year-not-known');
  });

  test('is not known where a part is not', () => {
    const balance = balanceOf('leek', [supply('horse-manure', 5000), supply('straw', 500)], 0);
    expect([balance.nitrogen, balance.phosphate]).toEqual([null, null]);
    expect(balance.reasons).toContainEqual({ code: 'supply-not-known', nutrient: 'nitrogen' });
    expect(balance.reasons).toContainEqual({ code: 'supply-not-known', nutrient: 'phosphate' });
  });

  test('says what is over the demand and over the ceiling', () => {
    const much = [supply('hoof-and-horn', 500)];
    // 500 g/m² × 140 g/kg × 62 % = 43.4 g/m².
    expect(balanceOf('onion', much, 0).reasons).toContainEqual({
      code: 'over-demand',
      name: 'Bulb onion (dry)',
      byMgPerM2: 43_400 - 15_500,
    });
    expect(balanceOf('onion', much, 0).reasons).toContainEqual({ code: 'over-ceiling', byMgPerM2: 43_400 - 28_000 });
    expect(codes('pea', [supply('horse-manure', 5000)], 0)).toContain('over-ceiling');
    expect(codes('pea', [], 0)).not.toContain('over-ceiling');
  });

  test('of a crop without a row says so and nothing else of it', () =>
    expect(codes('tomato', [], 0)).toEqual(['no-official-demand', 'no-official-removal']));

  test('of swede knows the contents but no yield to remove them with', () =>
    expect(codes('swede', [], 0)).toEqual(['no-official-demand', 'no-official-removal']));

  test('refuses a total that is none', () => {
    for (const wrong of [-1, 0.5, Number.NaN]) expect(() => balanceOf('leek', [], wrong)).toThrow(RangeError);
  });
});
