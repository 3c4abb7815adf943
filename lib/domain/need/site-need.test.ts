import { describe, expect, it } from 'vitest';
import { footprint } from '../ground/footprint';
import { type KeptBy } from '../recipe/told';
import { recipesOf } from '../recipe/recipe-of';
import { turnOf } from '../rotation/turn';
import { holdingNeed, siteNeed } from './site-need';
import { strawAndMeals } from './straw-and-meals';

const bed = footprint(0, 0, 300, 400);
const half = footprint(0, 0, 300, 200);
const kept: KeptBy = { member: {}, society: {} };
const recipes = recipesOf(kept);
const onions = { footprint: bed, cropGroup: 'alliums' as const };
const grams = (...given: Parameters<typeof strawAndMeals>) =>
  Object.fromEntries([...strawAndMeals(...given)].map(([key, value]) => [key, value / 10_000]));

describe('straw and meals', () => {
  it('follow the recipe of what is planned, by area', () => {
    expect(grams(bed, [onions], recipes, [])).toEqual({ straw: 6000, 'hoof-and-horn': 840 });
    expect(grams(half, [onions], recipes, [])).toEqual({ straw: 3000, 'hoof-and-horn': 420 });
  });

  it('leave out what the ground has had, material by material', () => {
    const had = [{ materialKey: 'straw', footprint: half }];
    expect(grams(bed, [onions], recipes, had)).toEqual({ straw: 3000, 'hoof-and-horn': 840 });
    const all = [...had, { materialKey: 'hoof-and-horn', footprint: bed }];
    expect(grams(bed, [onions], recipes, all)).toEqual({ straw: 3000, 'hoof-and-horn': 0 });
  });

  it('are none for other ground, for standing crops, and for recipes that ask for none', () => {
    expect(grams(bed, [{ ...onions, footprint: footprint(0, 400, 300, 10) }], recipes, [])).toEqual({});
    expect(grams(bed, [{ ...onions, cropGroup: 'standing' }], recipes, [])).toEqual({});
    expect(grams(bed, [{ ...onions, cropGroup: null }], recipes, [])).toEqual({});
    expect(grams(bed, [{ ...onions, cropGroup: 'leaves' }], recipes, [])).toEqual({});
    expect(grams(bed, [], recipes, [])).toEqual({});
  });

  it('follow the society’s own rates', () => {
    const own = { 'recipe.alliums.strawGPerM2': 0, 'recipe.alliums.meal': 'bone-meal' };
    expect(grams(bed, [onions], recipesOf({ ...kept, society: own }), [])).toEqual({ 'bone-meal': 840 });
  });
});

const rate = { rateGPerM2: 5000, barrowLitres: 85, densityGPerL: 400, intervalYears: 3 };
const need = (season: number | null, plannedArea = 0) => ({
  id: String(season),
  areaCm2: 120_000,
  plannedCm2: plannedArea,
  strewing: strawAndMeals(bed, plannedArea ? [onions] : [], recipes, []),
  turn: turnOf({
    ground: bed,
    season: 2027,
    intervalYears: 3,
    manurings: season === null ? [] : [{ footprint: bed, season }],
    planned: plannedArea ? [{ footprint: half, takesManure: false }] : [],
  }),
});

describe('what holdings ask for', () => {
  it('is told by reason, and the reasons sum to the ground', () => {
    const one = holdingNeed([need(2020), need(null), need(2026), need(2021, 120_000)], rate);
    expect(one).toMatchObject({
      loads: 4,
      massG: 60_000 + 20_000 + 30_000,
      assumedG: 20_000,
      dueCm2: 180_000,
      unloggedCm2: 120_000,
      notYetCm2: 120_000,
      skippedCm2: 60_000,
      plannedCm2: 120_000,
    });
    expect(one.dueCm2 + one.unloggedCm2 + one.notYetCm2 + one.skippedCm2).toBe(one.areaCm2);
  });

  it('is nothing for no ground', () => {
    expect(holdingNeed([], rate)).toMatchObject({ loads: 0, massG: 0, areaCm2: 0 });
    expect(siteNeed([])).toMatchObject({ loads: 0, massG: 0, strewn: [] });
  });

  it('adds up as each would book it: a load begun is a load for each holding', () => {
    const small = holdingNeed([need(2020)], rate);
    expect(small.loads).toBe(2);
    expect(siteNeed([small, small, small])).toMatchObject({ loads: 6, massG: 180_000, dueCm2: 360_000, strewn: [] });
  });

  it('adds straw and meals exactly', () => {
    const one = holdingNeed([need(2020, 120_000)], rate);
    expect(siteNeed([one, one]).strewn).toEqual([
      { key: 'straw', massG: 12_000 },
      { key: 'hoof-and-horn', massG: 1680 },
    ]);
  });
});
