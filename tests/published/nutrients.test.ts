import { describe, expect, test } from 'vitest';
import { calendarDate } from '@/lib/domain/calendar/calendar-date';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { mealOf } from '@/lib/domain/catalogue/meals';
import { settings } from '@/lib/domain/catalogue/settings';
import { footprint } from '@/lib/domain/ground/footprint';
import { nitrogenOver } from '@/lib/domain/nutrients/nitrogen-over';
import { potatoAdviceOf } from '@/lib/domain/nutrients/potato-advice';
import { rateWithin } from '@/lib/domain/nutrients/rate-within';
import { type Dressing, supplyOf } from '@/lib/domain/nutrients/supply';

const supply = (materialKey: string, rateGPerM2: number, over: Partial<Dressing> = {}) =>
  supplyOf({
    materialKey,
    rateGPerM2,
    age: 'old',
    applied: 'spring',
    soil: 'medium-heavy',
    incorporated: true,
    ...over,
  });
/** Total nitrogen of a tonne [g]: of 1 kg as many milligrams. */
const nitrogenGPerT = (materialKey: string) => supply(materialKey, 1000).nitrogen?.mgPerM2;

describe('total nitrogen', () => {
  // AHDB, Nutrient Management Guide (RB209), Section 2, Using farmyard manure: kg of nitrogen in a tonne as it lies.
  test.each([
    ['cattle-manure', 6.0],
    ['pig-manure', 7.0],
    ['sheep-manure', 7.0],
    ['duck-manure', 6.5],
    ['horse-manure', 5.0],
    ['goat-manure', 9.5],
  ])('%s holds %s kg in a tonne', (key, kgPerT) => expect(nitrogenGPerT(key)).toBe(kgPerT * 1000));

  // Swiss Federal Office for Agriculture, Gehaltstabelle HODUFLU, 2024: nitrogen and P2O5, kg a tonne.
  test.each([
    ['rabbit-manure', 8.9, 6.9],
    ['hen-manure', 21, 17],
    ['hen-litter', 27, 30],
    ['broiler-litter', 32, 17],
  ])('%s holds %s kg N and %s kg P2O5 in a tonne', (key, nitrogen, phosphate) =>
    expect(supply(key, 1000)).toMatchObject({
      nitrogen: { mgPerM2: nitrogen * 1000, source: 'hoduflu' },
      phosphate: { mgPerM2: phosphate * 1000, source: 'hoduflu' },
    }),
  );

  // The same: nitrogen a cubic metre over nitrogen a tonne is the density.
  test.each([
    ['sheep-manure', 4.1 / 8.2],
    ['goat-manure', 4.1 / 8.2],
    ['pig-manure', 6.61 / 8.8],
    ['rabbit-manure', 6.2 / 8.9],
    ['hen-manure', 16.8 / 21],
    ['hen-litter', 13.5 / 27],
    ['broiler-litter', 19.2 / 32],
  ])('%s weighs %s t/m³', (key, tPerM3) =>
    expect(Math.abs((materialOf(key)?.densityGPerL ?? 0) / 1000 - tPerM3)).toBeLessThan(0.005),
  );

  // WRAP, Compost for potatoes: 250 kg of nitrogen is in about 30 t of green compost, about 20 t of compost with food
  // waste.
  test('250 kg/ha is about 30 t of green compost, and about 20 t with food waste', () => {
    expect((rateWithin('green-compost', 250)?.rateGPerM2 ?? 0) / 100).toBeCloseTo(30, 0);
    expect((rateWithin('food-compost', 250)?.rateGPerM2 ?? 0) / 100).toBeCloseTo(20, 0);
  });
});

describe('nitrogen for the next crop', () => {
  // AHDB, RB209 Section 2, percent of total nitrogen available to the next crop from farmyard manure.
  // biome-ignore format: one row of the table a line
  test.each([
    ['old', false, 'autumn', 5, 10], ['old', false, 'winter', 10, 10], ['old', false, 'spring', 10, 10], ['old', false, 'summer', 10, 10],
    ['fresh', false, 'autumn', 5, 10], ['fresh', false, 'winter', 10, 10], ['fresh', false, 'spring', 10, 10], ['fresh', false, 'summer', 10, 10],
    ['old', true, 'autumn', 5, 10], ['old', true, 'winter', 10, 10], ['old', true, 'spring', 10, 10],
    ['fresh', true, 'autumn', 5, 10], ['fresh', true, 'winter', 10, 10], ['fresh', true, 'spring', 15, 15],
  ] as const)('%s, incorporated %s, %s: %s %% on sandy, %s %% on heavier soil', (age, incorporated, applied, sandy, heavier) => {
    // 10 kg/m² of a manure with 6.0 kg/t brings 60 g: a percent of it is 600 mg.
    const freed = (soil: Dressing['soil']) =>
      supply('cattle-manure', 10_000, { age, incorporated, applied, soil }).firstYear?.mgPerM2;
    expect([freed('sandy-shallow'), freed('medium-heavy')]).toEqual([sandy * 600, heavier * 600]);
  });

  // The same table on 10 kg/m² of cattle manure, the dressing of RHS, Alternatives to fertiliser, for hungry crops.
  test('10 kg/m² of old cattle manure in spring frees 60 kg/ha; fresh and dug in at once 90 kg/ha', () => {
    expect(supply('cattle-manure', 10_000).firstYear?.mgPerM2).toBe(6000);
    expect(supply('cattle-manure', 10_000, { age: 'fresh' }).firstYear?.mgPerM2).toBe(9000);
  });

  // Germany, Düngeverordnung, Anlage 3: least efficiency in the year of application, percent of total nitrogen.
  test.each([
    ['cattle-manure', 25],
    ['sheep-manure', 25],
    ['goat-manure', 25],
    ['horse-manure', 25],
    ['pig-manure', 30],
    ['rabbit-manure', 30],
    ['hen-manure', 30],
    ['green-compost', 3],
    ['food-compost', 5],
    ['mushroom-compost', 10],
    ['poultry-pellets', 60],
  ])('of %s German law counts %s %% at the least', (key, percent) => {
    const { firstYear, nitrogen } = supply(key, 10_000);
    expect(firstYear?.mostMgPerM2).toBe(((nitrogen?.mgPerM2 ?? 0) * percent) / 100);
  });

  // Owen, Winsor and Long, J. Sci. Food Agric. 4, 1953, abstract: 19 samples with 12.98 to 15.10 % N, of which 62 to 76
  // % in ten weeks. Texas A&M Earth-Kind: 14-0-0.
  test('100 g/m² of hoof and horn bring 14 g of nitrogen, 62 to 76 % of it in ten weeks', () => {
    const horn = supply('hoof-and-horn', 100);
    expect(horn.nitrogen).toMatchObject({ mgPerM2: 14_000, leastMgPerM2: 12_980, mostMgPerM2: 15_100 });
    expect([horn.firstYear?.leastMgPerM2, horn.firstYear?.mostMgPerM2]).toEqual([8680, 10_640]);
    expect(horn.firstYear?.shares[0]?.days).toBe(7 * 10);
  });

  // Texas A&M Earth-Kind: raw bone meal 4-22-0, blood 10-1.5-0, wood ash 0-2-6 (percent N, P2O5, K2O).
  test.each([
    ['bone-meal', 4, 22, 0],
    ['dried-blood', 10, 1.5, 0],
    ['wood-ash', 0, 2, 6],
  ])('%s is %s-%s-%s', (key, nitrogen, phosphate, potash) =>
    expect(supply(key, 100)).toMatchObject({
      nitrogen: { mgPerM2: nitrogen * 1000 },
      phosphate: { mgPerM2: phosphate * 1000 },
      potash: { mgPerM2: potash * 1000 },
    }),
  );

  // FAO, S4314E, Appendix XI: bone meal 0.80–0.96, blood meal 0.61, meat meal 0.59–0.64 t/m³. Of hoof and horn none was
  // found: meat meal stands in.
  test.each([
    ['bone-meal', 800, 960, null],
    ['dried-blood', 610, 610, null],
    ['hoof-and-horn', 590, 640, 'meat meal'],
  ])('%s weighs %s to %s g/L', (key, leastGPerL, mostGPerL, proxy) =>
    expect(mealOf(key)?.density).toMatchObject({ leastGPerL, mostGPerL, proxy }),
  );
});

describe('250 kg of nitrogen a hectare', () => {
  const bed = footprint(0, 0, 120, 360);
  const over = (nitrogenMgPerM2: number | null) =>
    nitrogenOver(bed, [{ footprint: bed, on: calendarDate('2026-11-15'), nitrogenMgPerM2 }], 3);

  // Limit: Nitrate Pollution Prevention Regulations 2015, SI 2015/668, regulation 8(1). Contents: AHDB, RB209 Section
  // 2.
  test('is 41.67 t/ha of cattle manure, 35.7 t/ha of pig or sheep manure, exactly 5 kg/m² of horse manure', () => {
    expect(rateWithin('cattle-manure', 250)?.rateGPerM2).toBe(4166);
    expect(rateWithin('pig-manure', 250)?.rateGPerM2).toBe(3571);
    expect(rateWithin('sheep-manure', 250)?.rateGPerM2).toBe(3571);
    expect(rateWithin('horse-manure', 250)?.rateGPerM2).toBe(5000);
  });

  // Thrive, Feeding your soil: 5 kg/m². The default dressing of horse manure therefore keeps within it.
  test('is kept by the default dressing of horse manure, to the milligram', () => {
    const { nitrogen } = supply('horse-manure', Number(settings.manureRateGPerM2.value));
    expect(over(nitrogen?.mgPerM2 ?? null)).toMatchObject({ timesLimit: 1, overCm2: 0, unknownCm2: 0 });
  });

  // Royal Horticultural Society, Alternatives to fertiliser: 10 kg/m² for hungry crops.
  test('is passed 2.4 times by 10 kg/m² of cattle manure, 600 kg/ha; 200 a year over three', () => {
    const { nitrogen } = supply('cattle-manure', 10_000);
    expect(nitrogen?.mgPerM2).toBe(60_000);
    expect(over(nitrogen?.mgPerM2 ?? null)).toMatchObject({
      timesLimit: 2.4,
      overCm2: 43_200,
      worstMeanMgPerM2: 20_000,
    });
  });
});

// Defra, Fertiliser Manual (RB209), 8th edition, 2010, potatoes: at 50 t/ha by index; the source's own example, potash
// index 1 and 70 t/ha: 446 kg/ha.
describe('potatoes', () => {
  const advice = (index: number, yieldTPerHa: number) =>
    Object.values(potatoAdviceOf({ phosphorus: index, potassium: index, magnesium: index }, yieldTPerHa * 100)).map(
      (mgPerM2) => mgPerM2 / 100,
    );
  test.each([
    [0, [250, 360, 120]],
    [1, [210, 330, 80]],
    [2, [170, 300, 40]],
    [3, [100, 150, 0]],
    [4, [0, 0, 0]],
  ])('index %s: P2O5, K2O, MgO %s kg/ha', (index, kgPerHa) => expect(advice(index, 50)).toEqual(kgPerHa));
  test('index 1, 70 t/ha: 446 kg K2O, and phosphate as at 50', () => expect(advice(1, 70)).toEqual([210, 446, 80]));
});
