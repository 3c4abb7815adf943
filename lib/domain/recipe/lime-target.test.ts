import { describe, expect, it } from 'vitest';
import { limeTargets, limeWaits } from '../catalogue/lime-tables';
import type { RecipeGroup } from '../catalogue/recipes';
import { limeTargetOf } from './lime-target';
import { recipeOf } from './recipe-of';

const recipe = (group: RecipeGroup, own: Readonly<Record<string, string | number>> = {}) =>
  recipeOf(group, {
    member: Object.fromEntries(Object.entries(own).map(([field, value]) => [`recipe.${group}.${field}`, value])),
    society: {},
  });

describe('the pH that ground is limed up to', () => {
  it('is the recipe’s, more where clubroot was found, less on peat', () => {
    const brassicas = recipe('brassicas');
    expect(limeTargetOf(brassicas, 'loamy', false)).toMatchObject({ phTenths: 65, because: 'recipe' });
    expect(limeTargetOf(brassicas, 'loamy', true)).toMatchObject({ phTenths: 70, because: 'clubroot' });
    expect(limeTargetOf(brassicas, 'peaty', false)).toMatchObject({ phTenths: 58, because: 'peat' });
    expect(limeTargetOf(brassicas, 'peaty', true)).toMatchObject({ phTenths: 70, because: 'clubroot' });
  });

  it('is what somebody set, whatever the ground', () => {
    const own = recipe('brassicas', { limeTargetPhTenths: 68 });
    for (const clubroot of [false, true])
      expect(limeTargetOf(own, 'peaty', clubroot)).toMatchObject({ phTenths: 68, because: 'set' });
  });

  it('does not rise for clubroot where no host of it stands', () =>
    expect(limeTargetOf(recipe('legumes', { lime: 'to-target' }), 'sandy', true)).toMatchObject({ phTenths: 65 }));

  it('is none where there is no lime', () => expect(limeTargetOf(recipe('potatoes'), 'loamy', true)).toBeNull());
});

it('target and wait are those of the tables of lime', () => {
  const { limeTargetPhTenths, limeApartMonths } = recipe('brassicas');
  expect(limeTargetPhTenths).toMatchObject({
    value: limeTargets.vegetables?.leastPhTenths,
    source: limeTargets.vegetables?.source,
  });
  expect(limeApartMonths).toMatchObject({
    value: limeWaits.limeThenManure.leastMonths,
    source: limeWaits.limeThenManure.source,
  });
});
