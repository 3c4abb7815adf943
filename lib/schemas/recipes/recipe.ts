import { z } from 'zod';
import { habitFields } from '@/lib/domain/catalogue/habits';
import { recipeFields, recipeGroups } from '@/lib/domain/catalogue/recipes';
import { day } from '../day';
import { form, writeId } from '../write';

const group = z.enum(recipeGroups, 'Choose a crop group from the list.');

/** A value as it is typed or chosen; the use-case reads it, in the member's own units. Empty: as others have it. */
function typedValues<Field extends string>(fields: readonly Field[]) {
  const value = z.string({ error: 'Give one value.' }).trim().max(40, 'That is too long for a value.').default('');
  return Object.fromEntries(fields.map((field) => [field, value])) as Record<Field, typeof value>;
}

export const changeRecipeInput = form({ writeId, group, ...typedValues(recipeFields) });
export const changeSocietyRecipeInput = form({
  writeId,
  group,
  from: day('the day from which the recipe holds'),
  ...typedValues(recipeFields),
});
export const changeHabitsInput = form({ writeId, ...typedValues(habitFields) });
