import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RecipeKey, recipeFields, recipeGroups, recipes } from '../catalogue/recipes';
import { allows, type Setting } from '../catalogue/setting-row';
import { isWindow } from './day-for';
import { manurePlaces, recipeBehind, recipeOf, recipesOf, unfitDay } from './recipe-of';
import type { Kept } from './told';

const nobody = { member: {}, society: {} };
const keys = Object.keys(recipes) as RecipeKey[];

// What a row allows, or anything else at all.
const valueFor = (row: Setting) =>
  fc.oneof(
    row.kind === 'whole'
      ? fc.integer({ min: row.least, max: row.most })
      : row.kind === 'choice'
        ? fc.constantFrom(...row.choices.map(({ key }) => key))
        : fc.constantFrom('01-01', '11-30'),
    fc.constantFrom<unknown>(null, -1, 0.5, Number.NaN, 'of old', '02-29', 999_999, {}, undefined),
  );
const someKept: fc.Arbitrary<Kept> = fc.record(Object.fromEntries(keys.map((key) => [key, valueFor(recipes[key])])), {
  requiredKeys: [],
});

describe('a recipe in force', () => {
  it('is the catalogue’s where nobody set anything, with its source', () => {
    for (const recipe of recipesOf(nobody))
      for (const field of recipeFields) {
        const { value, source } = recipes[`recipe.${recipe.group}.${field}`];
        expect([recipe.group, field, recipe[field]]).toEqual([
          recipe.group,
          field,
          { value, source, setBy: 'catalogue' },
        ]);
      }
  });

  it('is the member’s over the society’s over the catalogue’s, value by value', () => {
    // What follows something else, and days that go together, have tests of their own.
    const others = /^(rate|mealG|start|finish)/;
    const plain = recipeFields.filter((field) => !others.test(field));
    fc.assert(
      fc.property(someKept, someKept, fc.constantFrom(...recipeGroups), (member, society, group) => {
        const before = JSON.stringify([member, society]);
        const recipe = recipeOf(group, { member, society });
        for (const field of plain) {
          const key = `recipe.${group}.${field}` as const;
          const row = recipes[key];
          const mine = allows(row, member[key]);
          const theirs = allows(row, society[key]);
          expect(recipe[field].value).toBe(mine ? member[key] : theirs ? society[key] : row.value);
          expect(recipe[field].setBy).toBe(mine ? 'yours' : theirs ? 'society' : 'catalogue');
        }
        expect(JSON.stringify([member, society])).toBe(before);
      }),
    );
  });

  it('holds only what its rows allow, whatever was kept', () => {
    fc.assert(
      fc.property(someKept, someKept, (member, society) => {
        for (const recipe of recipesOf({ member, society: { ...society, manureRateGPerM2: -5 } }))
          for (const field of recipeFields)
            expect([field, allows(recipes[`recipe.${recipe.group}.${field}`], recipe[field].value)]).toEqual([
              field,
              true,
            ]);
      }),
    );
  });

  it('passes over keys that are none', () => {
    const odd = { 'recipe.alliums.colour': 'blue', 'recipe.standing.method': 'forking', __proto__: { x: 1 } };
    expect(recipesOf({ member: odd, society: odd })).toEqual(recipesOf(nobody));
  });
});

describe('the first and the last day', () => {
  const days = (member: Kept, society: Kept) => {
    const { startHeavy, finishHeavy } = recipeOf('alliums', { member, society });
    return [startHeavy, finishHeavy].map(({ value, setBy }) => `${value} ${setBy}`);
  };
  const [start, finish] = ['recipe.alliums.startHeavy', 'recipe.alliums.finishHeavy'];

  it('are each whose they are while they fit', () =>
    expect(days({ [start]: '11-01' }, { [finish]: '01-15' })).toEqual(['11-01 yours', '01-15 society']));

  it('fall back together where they no longer do', () => {
    expect(days({ [start]: '11-20' }, { [finish]: '11-01' })).toEqual(['10-01 catalogue', '11-01 society']);
    expect(days({}, { [start]: '12-20' })).toEqual(['10-01 catalogue', '12-01 catalogue']);
  });

  it('are told where what was set does not fit', () => {
    const unfit = (field: string, value: string) =>
      unfitDay('alliums', { member: { [`recipe.alliums.${field}`]: value }, society: {} });
    expect(unfit('startHeavy', '12-01')).toBeNull();
    expect(unfit('startHeavy', '12-02')).toBe('finishHeavy');
    expect(unfit('finishLight', '02-01')).toBeNull();
    expect(unfit('finishLight', '01-31')).toBe('finishLight');
  });

  it('always fit, whatever was kept', () => {
    fc.assert(
      fc.property(someKept, someKept, (member, society) => {
        for (const recipe of recipesOf({ member, society })) {
          expect(isWindow(recipe.startHeavy.value, recipe.finishHeavy.value)).toBe(true);
          expect(isWindow(recipe.startLight.value, recipe.finishLight.value)).toBe(true);
        }
      }),
    );
  });
});

describe('what stands behind one’s own', () => {
  const member = {
    'recipe.alliums.method': 'forking',
    'recipe.alliums.meal': 'bone-meal',
    'recipe.alliums.mealGPerM2': 200,
  };
  const society = { manureRateGPerM2: 4000, 'recipe.alliums.method': 'mulch', 'recipe.alliums.mealGPerM2': 120 };

  it('is what would hold without it, the rest being as it is', () => {
    const behind = recipeBehind('alliums', { member, society }, 'member');
    expect(behind.method).toMatchObject({ value: 'mulch', setBy: 'society' });
    expect(behind.meal).toMatchObject({ value: 'hoof-and-horn', setBy: 'catalogue' });
    // The society's rate was for another meal.
    expect(behind.mealGPerM2).toMatchObject({ value: 70, setBy: 'catalogue' });
    expect(recipeBehind('alliums', { member: {}, society }, 'society').method).toMatchObject({
      value: 'double-digging',
    });
    expect(recipeBehind('alliums', { member: {}, society }, 'society').rateGPerM2).toMatchObject({ value: 4000 });
  });

  it('is nothing of one’s own, and what is in force where one has none', () => {
    fc.assert(
      fc.property(someKept, someKept, fc.constantFrom(...recipeGroups), (own, theirs, group) => {
        const behind = recipeBehind(group, { member: own, society: theirs }, 'member');
        for (const field of recipeFields) expect(behind[field].setBy).not.toBe('yours');
        const none = { member: {}, society: theirs };
        expect(recipeBehind(group, none, 'member')).toEqual(recipeOf(group, none));
      }),
    );
  });
});

describe('the dressing', () => {
  const society = { manureRateGPerM2: 4000 };
  const rate = (group: 'alliums' | 'roots', member: Kept, of: Kept = society) =>
    recipeOf(group, { member, society: of }).rateGPerM2;

  it('follows the society’s general one where the group takes manure and nobody set its own', () => {
    expect(rate('alliums', {})).toEqual({ value: 4000, setBy: 'society', source: 'thrive' });
    expect(rate('roots', {})).toMatchObject({ value: 0, setBy: 'catalogue' });
    expect(rate('alliums', {}, { manureRateGPerM2: 'much' })).toMatchObject({ value: 5000, setBy: 'catalogue' });
  });

  it('is the group’s own where somebody set it, none included', () => {
    const own = { ...society, 'recipe.alliums.rateGPerM2': 7000, 'recipe.roots.rateGPerM2': 2000 };
    expect(rate('alliums', {}, own)).toMatchObject({ value: 7000, setBy: 'society' });
    expect(rate('roots', {}, own)).toMatchObject({ value: 2000, setBy: 'society' });
    expect(rate('alliums', { 'recipe.alliums.rateGPerM2': 0 }, own)).toMatchObject({ value: 0, setBy: 'yours' });
  });

  it('follows again when it is put back', () =>
    expect(rate('alliums', { 'recipe.alliums.rateGPerM2': null })).toMatchObject({ value: 4000, setBy: 'society' }));
});

describe('the rate of a meal', () => {
  const meal = (member: Kept, society: Kept) => recipeOf('alliums', { member, society }).mealGPerM2;
  const [mealKey, rateKey] = ['recipe.alliums.meal', 'recipe.alliums.mealGPerM2'];

  it('is its own usual one where it was chosen alone: another meal’s rate is not its', () => {
    expect(meal({ [mealKey]: 'poultry-pellets' }, {})).toMatchObject({ value: 100, setBy: 'catalogue' });
    expect(meal({ [mealKey]: 'poultry-pellets' }, { [rateKey]: 140 })).toMatchObject({ value: 100 });
    expect(meal({}, { [mealKey]: 'dried-blood' })).toMatchObject({ value: 35, setBy: 'catalogue' });
  });

  it('is what was set with it, or by whoever is nearer', () => {
    expect(meal({}, { [mealKey]: 'bone-meal', [rateKey]: 90 })).toMatchObject({ value: 90, setBy: 'society' });
    expect(meal({ [rateKey]: 55 }, { [mealKey]: 'bone-meal', [rateKey]: 90 })).toMatchObject({
      value: 55,
      setBy: 'yours',
    });
    expect(meal({}, { [rateKey]: 140 })).toMatchObject({ value: 140, setBy: 'society' });
  });
});

describe('where the manure goes', () => {
  const places = (method: string, percent: number) =>
    manurePlaces(
      recipeOf('alliums', {
        member: { 'recipe.alliums.method': method, 'recipe.alliums.manureBottomPercent': percent },
        society: {},
      }),
    );

  it.each([
    ['double-digging', [60, 40, 0]],
    ['single-digging', [60, 40, 0]],
    ['forking', [0, 100, 0]],
    ['mulch', [0, 0, 100]],
  ])('%s', (method, [bottomPercent, topPercent, surfacePercent]) =>
    expect(places(method, 60)).toEqual({ bottomPercent, topPercent, surfacePercent }),
  );

  it('adds up to all of it, from none of it in the bottom to all', () => {
    for (const percent of [0, 1, 99, 100]) {
      const { bottomPercent, topPercent, surfacePercent } = places('double-digging', percent);
      expect([bottomPercent, bottomPercent + topPercent + surfacePercent]).toEqual([percent, 100]);
    }
  });
});
