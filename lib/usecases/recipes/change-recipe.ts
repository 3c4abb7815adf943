import 'server-only';
import { appendOwnSettings, type Change } from '@/lib/data/member-setting';
import { appendSetting, keptSettingsOn } from '@/lib/data/setting';
import {
  type RecipeField,
  recipeFields,
  type RecipeGroup,
  type RecipeKey,
  recipes,
} from '@/lib/domain/catalogue/recipes';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import type { Units } from '@/lib/domain/quantity/length';
import { unfitDay } from '@/lib/domain/recipe/recipe-of';
import type { Kept, KeptBy } from '@/lib/domain/recipe/told';
import { changeRecipeInput, changeSocietyRecipeInput } from '@/lib/schemas/recipes/recipe';
import { mutation } from '../operation';
import { refuse } from '../refusal';
import { keptFor } from './recipes-for';
import { changesTyped, keptAfter } from './typed-values';

/** Set one group's recipe to one's own habit; a field left empty follows the society's again. */
export const changeRecipe = mutation({
  name: 'change-recipe',
  allow: canEnter,
  input: changeRecipeInput,
  write: async ({ tx, scope, today, now, note }, { group, ...typed }) => {
    const kept = await keptFor(tx, scope, scope.memberId, today);
    const changes = recipeChanges(group, typed, kept.member, scope.units);
    checkDays(group, { ...kept, member: keptAfter(kept.member, changes) }, typed);
    await appendOwnSettings(tx, scope, changes, now);
    if (changes.length) {
      const what = { before: before(kept.member, changes), after: after(changes) };
      note({ verb: 'changed', thing: 'recipe', thingId: null, ...what });
    }
    return { group, changed: changes.length };
  },
});

/** Set one group's recipe for the society, from a day on; a field left empty follows the catalogue's again. */
export const changeSocietyRecipe = mutation({
  name: 'change-society-recipe',
  allow: canRunSociety,
  input: changeSocietyRecipeInput,
  write: async ({ tx, scope, today, now, note }, { group, from, ...typed }) => {
    if (from < today) refuse('setting-in-the-past', { field: 'from' });
    const society = await keptSettingsOn(tx, scope, from);
    const changes = recipeChanges(group, typed, society, scope.units);
    checkDays(group, { member: {}, society: keptAfter(society, changes) }, typed);
    for (const { key, value } of changes) {
      await appendSetting(tx, scope, { key, value, from, at: now });
      note({ verb: 'set', thing: 'setting', thingId: null, after: { key, value, from } });
    }
    return { group, changed: changes.length };
  },
});

type Typed = Readonly<Record<RecipeField, string>>;

function recipeChanges(group: RecipeGroup, typed: Typed, kept: Kept, units: Units): Change<RecipeKey>[] {
  const fields = recipeFields.map((field) => {
    const key = `recipe.${group}.${field}` as const;
    return { field, key, row: recipes[key], text: typed[field] };
  });
  return changesTyped(fields, kept, units);
}

// What was typed is what is wrong, or else what it was typed against.
function checkDays(group: RecipeGroup, kept: KeptBy, typed: Typed): void {
  const finish = unfitDay(group, kept);
  if (!finish) return;
  const start = finish === 'finishHeavy' ? 'startHeavy' : 'startLight';
  const field = typed[finish] === '' && typed[start] !== '' ? start : finish;
  refuse('finish-before-start', { field });
}

function before(kept: Kept, changes: readonly Change<RecipeKey>[]) {
  return Object.fromEntries(changes.map(({ key }) => [key, String(kept[key] ?? 'not set')]));
}

function after(changes: readonly Change<RecipeKey>[]) {
  return Object.fromEntries(changes.map(({ key, value }) => [key, value ?? 'put back']));
}
