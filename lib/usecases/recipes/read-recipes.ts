import 'server-only';
import { z } from 'zod';
import { keptSettingsOn, settingHistory } from '@/lib/data/setting';
import { recipeGroups } from '@/lib/domain/catalogue/recipes';
import { canEnter } from '@/lib/domain/policy/standing';
import { habitsOf } from '@/lib/domain/recipe/habits-of';
import { recipeBehind, recipesOf } from '@/lib/domain/recipe/recipe-of';
import type { KeptBy } from '@/lib/domain/recipe/told';
import { optionalDay } from '@/lib/schemas/day';
import { query } from '../operation';
import { keptFor } from './recipes-for';

/** One's own recipes and habits, what is behind one's own values, and nothing of anybody else's. */
export const readRecipes = query({
  name: 'read-recipes',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const kept = await keptFor(db, scope, scope.memberId, today);
    return {
      units: scope.units,
      recipes: recipesOf(kept),
      behind: behindOf(kept, 'member'),
      habits: habitsOf(kept),
      habitsBehind: habitsOf({ ...kept, member: {} }),
    };
  },
});

/** The society's recipes as they hold on a day, and every value of them that was ever set. Everybody may read them. */
export const readSocietyRecipes = query({
  name: 'read-society-recipes',
  allow: canEnter,
  input: z.object({ on: optionalDay('the day') }),
  read: async ({ db, scope, today }, { on }) => {
    const kept = { member: {}, society: await keptSettingsOn(db, scope, on ?? today) };
    return {
      today,
      on: on ?? today,
      units: scope.units,
      kept: kept.society,
      recipes: recipesOf(kept),
      behind: behindOf(kept, 'society'),
      history: await settingHistory(db, scope, 'recipes'),
    };
  },
});

function behindOf(kept: KeptBy, whose: keyof KeptBy) {
  return recipeGroups.map((group) => recipeBehind(group, kept, whose));
}
