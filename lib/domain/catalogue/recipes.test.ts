import { describe, expect, it } from 'vitest';
import { cropGroups } from './crop-groups';
import { groupCrops } from './group-crops';
import { habitFields, habitParts, habits } from './habits';
import { meals } from './meals';
import {
  isRecipeKey,
  type RecipeGroup,
  type RecipeKey,
  recipeFields,
  recipeGroups,
  recipeParts,
  recipeRowName,
  recipes,
} from './recipes';
import { allows } from './setting-row';
import { settings } from './settings';
import { sources } from './sources';

const at = (group: RecipeGroup, field: (typeof recipeFields)[number]) => recipes[`recipe.${group}.${field}`].value;

describe('the recipes', () => {
  it('are one for each group that rotates, in the order of the groups, each with every field', () => {
    expect(recipeGroups).toEqual(cropGroups.map(({ key }) => key).filter((key) => key !== 'standing'));
    expect(Object.keys(recipes)).toHaveLength(recipeGroups.length * recipeFields.length);
  });

  it('hold values that their own rows allow, each with a name, words and a source', () => {
    for (const [key, row] of [...Object.entries(recipes), ...Object.entries(habits)]) {
      expect([key, allows(row, row.value)]).toEqual([key, true]);
      expect([key, row.name.length > 2, row.says.length > 10, Object.hasOwn(sources, row.source)]).toEqual([
        key,
        true,
        true,
        true,
      ]);
    }
  });

  it('take manure where the planner’s group does, and at the rate of the society’s general dressing', () => {
    for (const { key, takesManure } of groupCrops)
      expect([key, at(key as RecipeGroup, 'rateGPerM2')]).toEqual([
        key,
        takesManure ? settings.manureRateGPerM2.value : 0,
      ]);
  });

  it('keep a rate within what the society may set for all', () => {
    const dressing = settings.manureRateGPerM2;
    const rate = recipes['recipe.roots.rateGPerM2'];
    expect(rate.kind === 'whole' && dressing.kind === 'whole' && rate.most).toBe(20_000);
    expect(dressing.kind === 'whole' && dressing.most).toBe(20_000);
  });

  it('make onion ground two spits deep, with meal in the bottom, straw, firm and high', () => {
    expect(
      (['method', 'meal', 'mealInto', 'firmness', 'leftHigh', 'lime'] as const).map((field) => at('alliums', field)),
    ).toEqual(['double-digging', 'hoof-and-horn', 'bottom', 'firm', 'yes', 'none']);
    expect(at('alliums', 'strawGPerM2')).toBeGreaterThan(0);
    expect(at('alliums', 'manureBottomPercent')).toBeGreaterThan(0);
    expect(at('alliums', 'manureBottomPercent')).toBeLessThan(100);
  });

  it('lime brassicas, and never potatoes', () => {
    expect(recipeGroups.filter((group) => at(group, 'lime') !== 'none')).toEqual(['brassicas']);
    expect(at('brassicas', 'firmness')).toBe('firm');
  });

  it('offer every meal, and none', () => {
    const { kind, ...row } = recipes['recipe.leaves.meal'];
    expect(kind === 'choice' && 'choices' in row && row.choices.map(({ key }) => key)).toEqual([
      'none',
      ...meals.map(({ key }) => key),
    ]);
  });
});

it('every field and every habit is shown once', () => {
  expect(recipeParts.flatMap(({ fields }) => fields).toSorted()).toEqual(recipeFields.toSorted());
  expect(habitParts.flatMap(({ fields }) => fields).toSorted()).toEqual(habitFields.toSorted());
});

describe('keys of the recipes', () => {
  it('are told from everything else', () => {
    expect(Object.keys(recipes).every(isRecipeKey)).toBe(true);
    for (const text of [
      '',
      'recipe',
      'recipe.alliums',
      'recipe.standing.method',
      'toString',
      '__proto__',
      'barrowLitres',
    ])
      expect([text, isRecipeKey(text)]).toEqual([text, false]);
    for (const key of Object.keys(settings)) expect([key, isRecipeKey(key)]).toEqual([key, false]);
  });

  it('have names of their own', () => {
    const names = (Object.keys(recipes) as RecipeKey[]).map(recipeRowName);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain('Potatoes and kin, manure');
  });
});

describe('the habits', () => {
  it.each([
    ['trenchWidthCm', 30, 100],
    ['spitDepthCm', 10, 40],
    ['barrowLitres', 20, 300],
  ] as const)('%s lies between %d and %d', (field, least, most) => {
    const row = habits[field];
    expect([least - 1, least, most, most + 1].map((value) => allows(row, value))).toEqual([false, true, true, false]);
  });

  it('are a trench of 60 cm, and nothing said of anybody’s body', () => {
    expect(habits.trenchWidthCm).toMatchObject({ value: 60, source: 'rhs-double-digging' });
    expect(habits.ageBand.value).toBe('not-said');
    expect(habitFields).toHaveLength(12);
  });
});
