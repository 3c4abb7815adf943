import { describe, expect, it } from 'vitest';
import { orderOf, plainGround } from '@/tests/fixtures/sheet-orders';
import { recipeGroups } from '../catalogue/recipes';
import { footprint } from '../ground/footprint';
import { stagesOf } from '../trench/stages';
import { diggingOf } from './sheet-order';

describe('orderFromRecipe', () => {
  it('is the recipe of alliums on a bed of loam', () =>
    expect(orderOf('alliums')).toEqual({
      version: 'sheet-1',
      method: 'double-digging',
      across: 'width',
      trenchWidthCm: 60,
      spitDepthCm: 25,
      layout: 'straight-through',
      layoutBy: 'halves-too-short',
      soil: 'loamy',
      barrowLitres: 85,
      manure: { materialKey: 'horse-manure', ageMonths: null, densityGPerL: 400, bottomGPerM2: 3750, topGPerM2: 1250 },
      meal: { key: 'hoof-and-horn', gPerM2: 70, into: 'bottom', jarG: 228, jarBasis: 'estimated' },
      strawGPerM2: 500,
      limeToPhTenths: null,
      limeApartMonths: 3,
      firmness: 'firm',
      leftHigh: true,
      springFinishCm: 8,
      from: '2026-10-01',
      until: '2026-12-01',
    }));

  it.each(recipeGroups)('of %s can be drawn on any soil and ground', (group) => {
    for (const soil of ['sandy', 'silty', 'loamy', 'clayey', 'peaty'])
      for (const ground of [plainGround, footprint(0, 0, 700, 200), footprint(5, 5, 60, 60)])
        expect(stagesOf(diggingOf(orderOf(group, { 'habit.soil': soil }, { ground }), ground)).length).toBeGreaterThan(
          2,
        );
  });

  it('goes by an expert’s own habits: trench, spit, layout, barrow, jar', () => {
    const own = {
      'habit.trenchWidthCm': 46,
      'habit.spitDepthCm': 28,
      'habit.layout': 'two-halves',
      'habit.soil': 'sandy',
      'habit.barrowLitres': 100,
      'habit.jarWeighedG': 250,
    };
    expect(orderOf('alliums', own)).toMatchObject({
      trenchWidthCm: 46,
      spitDepthCm: 28,
      layout: 'two-halves',
      layoutBy: 'asked',
      barrowLitres: 100,
      meal: { jarG: 250, jarBasis: 'weighed' },
      from: '2027-02-01',
      until: '2027-03-10',
    });
    expect(orderOf('leaves', own).trenchWidthCm).toBe(46);
  });

  it('takes a method’s own width where nobody set one, and no wider strips than the ground', () => {
    expect(orderOf('potatoes').trenchWidthCm).toBe(38);
    expect(orderOf('leaves').trenchWidthCm).toBe(60);
    expect(orderOf('leaves', {}, { ground: footprint(0, 0, 40, 50) })).toMatchObject({
      method: 'forking',
      across: 'width',
      trenchWidthCm: 50,
    });
    expect(() => orderOf('alliums', {}, { ground: footprint(0, 0, 40, 50) })).toThrow(RangeError);
  });

  it('lays its trenches along the shorter side, or as they are wished', () => {
    const ground = footprint(0, 0, 700, 200);
    expect(orderOf('alliums', {}, { ground })).toMatchObject({ across: 'length', layout: 'two-halves' });
    expect(orderOf('alliums', {}, { ground, across: 'width' })).toMatchObject({ across: 'width' });
  });

  it('takes no manure where the rate is none, and no meal where the recipe has none', () => {
    expect(orderOf('roots')).toMatchObject({ manure: null, meal: null });
    expect(orderOf('alliums', { 'recipe.alliums.meal': 'none' }).meal).toBeNull();
  });

  it('puts into the top what would go into a bottom that is not opened', () => {
    const forked = orderOf('alliums', { 'recipe.alliums.method': 'forking' });
    expect(forked).toMatchObject({ manure: { bottomGPerM2: 0, topGPerM2: 5000 }, meal: { into: 'top' } });
    expect(orderOf('alliums', { 'recipe.alliums.method': 'mulch' })).toMatchObject({
      layoutBy: 'no-trench',
      manure: { bottomGPerM2: 0, topGPerM2: 5000 },
    });
  });

  it('splits an odd rate to the gram', () => {
    const { manure } = orderOf('alliums', {
      'recipe.alliums.rateGPerM2': 5001,
      'recipe.alliums.manureBottomPercent': 33,
    });
    expect(manure).toMatchObject({ bottomGPerM2: 1650, topGPerM2: 3351 });
  });

  it('has no jar for a meal of which nobody knows the weight', () =>
    expect(orderOf('alliums', { 'recipe.alliums.meal': 'wood-ash' }).meal).toMatchObject({
      jarG: null,
      jarBasis: 'not-known',
    }));
});
