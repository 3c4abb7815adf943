import { z } from 'zod';
import type { HabitField } from '@/lib/domain/catalogue/habits';
import { type RecipeField, recipeGroups } from '@/lib/domain/catalogue/recipes';
import { optionalDay } from '../day';
import { season } from '../ground/planting';
import { optionalWhole, ticked, typedLength, wholeNumber } from '../text';
import { form, rowId, writeId } from '../write';

/** What of the recipe, and of the digger's habits, may be otherwise on one sheet. */
export const sheetRecipeFields = [
  'method',
  'rateGPerM2',
  'manureBottomPercent',
  'meal',
  'mealGPerM2',
  'mealInto',
  'strawGPerM2',
  'springFinishCm',
] as const satisfies readonly RecipeField[];
export const sheetHabitFields = [
  'trenchWidthCm',
  'spitDepthCm',
  'layout',
  'soil',
  'barrowLitres',
  'jarWeighedG',
] as const satisfies readonly HabitField[];

const groupWords = 'Choose what the ground is for from the list.';
const acrossWords = 'Choose which way the trenches run.';
const seasonWords = 'Give the season as a year, such as 2027.';
const value = z.string({ error: 'Give one value.' }).trim().max(40, 'That is too long for a value.').default('');

/** What a sheet is asked for; a field left empty is as the plan, the recipe and the habits have it. */
export const sheetWishFields = {
  group: z
    .union([z.literal('').transform(() => null), z.enum(recipeGroups, groupWords)], { error: groupWords })
    .default(null),
  season: z.union([z.literal('').transform(() => null), season], { error: seasonWords }).default(null),
  partFrom: typedLength(),
  partLength: typedLength(),
  materialKey: value,
  ageMonths: optionalWhole('the age in months', 0, 240),
  densityGPerL: optionalWhole('what a litre weighs', 1, 9999),
  across: z
    .union([z.literal('').transform(() => null), z.enum(['width', 'length'], acrossWords)], { error: acrossWords })
    .default(null),
  ...(Object.fromEntries([...sheetRecipeFields, ...sheetHabitFields].map((field) => [field, value])) as Record<
    (typeof sheetRecipeFields)[number] | (typeof sheetHabitFields)[number],
    typeof value
  >),
};

export const sheetWishNames = Object.keys(sheetWishFields) as (keyof typeof sheetWishFields)[];

export const makeSheetInput = form({ writeId, bedId: rowId, ...sheetWishFields });
export const sheetWishInput = makeSheetInput.omit({ writeId: true, bedId: true });

const trench = wholeNumber('the trench', 1, 9999);

export const tickTrenchInput = form({
  writeId,
  sheetId: rowId,
  trench,
  /** With those before it that are not ticked yet. */
  withBefore: ticked(),
  doneOn: optionalDay('the day'),
});
export const untickTrenchInput = form({
  writeId,
  sheetId: rowId,
  trench,
  /** With those after it. */
  withAfter: ticked(),
});
export const retireSheetInput = form({
  writeId,
  sheetId: rowId,
  /** None of it was dug: its ticks go with it. */
  undug: ticked(),
});
