import { diggingMethodOf } from '../catalogue/digging-methods';
import { mealOf } from '../catalogue/meals';
import {
  type RecipeField,
  recipeFields,
  type RecipeGroup,
  recipeGroups,
  type RecipeValues,
  recipes,
} from '../catalogue/recipes';
import { settings } from '../catalogue/settings';
import { isWindow } from './day-for';
import { type KeptBy, type SetBy, type Told, toldOf } from './told';

/** How one crop group wants its ground made ready, each value with who set it and its source. */
export type Recipe = { readonly group: RecipeGroup } & {
  readonly [Field in RecipeField]: Told<RecipeValues[Field]>;
};

/**
 * One group's recipe as it is in force: the member's own values over the society's over the catalogue's.
 *
 * Method: value by value. Where a group takes manure and nobody set its own rate, the society's general dressing holds. A
 * meal whose rate was not set together with it, or over it, has the lower of its usual rates: the rate was another meal's.
 * A first and a last day that no longer fit each other fall back together.
 *
 * @param kept  what the member and the society set, by key; unknown keys and values out of bounds are passed over
 * @returns     every field once, each allowed by its own row
 * @source      each value's own
 * @example     society's dressing 4,000, nothing else set → alliums' rateGPerM2 4,000, the society's; roots' 0, the catalogue's
 */
export function recipeOf(group: RecipeGroup, kept: KeptBy): Recipe {
  const plain = plainly(group, kept);
  const heavy = windowOf(group, kept, 'startHeavy', 'finishHeavy');
  const light = windowOf(group, kept, 'startLight', 'finishLight');
  return { ...plain, ...heavy, ...light, rateGPerM2: dressingOf(plain, kept), mealGPerM2: mealRateOf(plain) };
}

function plainly(group: RecipeGroup, kept: KeptBy): Recipe {
  const told = recipeFields.map((field) => [field, fieldOf(group, field, kept)]);
  return { group, ...Object.fromEntries(told) } as Recipe;
}

function fieldOf(group: RecipeGroup, field: RecipeField, { member, society }: KeptBy): Told<string | number> {
  const key = `recipe.${group}.${field}` as const;
  return toldOf(recipes[key], member[key], society[key]);
}

function dressingOf({ rateGPerM2 }: Recipe, { society }: KeptBy): Told<number> {
  if (rateGPerM2.setBy !== 'catalogue' || rateGPerM2.value === 0) return rateGPerM2;
  return toldOf(settings.manureRateGPerM2, undefined, society.manureRateGPerM2) as Told<number>;
}

function mealRateOf({ meal, mealGPerM2 }: Recipe): Told<number> {
  const usual = mealOf(meal.value)?.usualRate;
  const isItsOwn = nearness[mealGPerM2.setBy] >= Math.max(1, nearness[meal.setBy]);
  return usual && !isItsOwn ? { value: usual.leastGPerM2, setBy: 'catalogue', source: usual.source } : mealGPerM2;
}

type DayField = 'startHeavy' | 'finishHeavy' | 'startLight' | 'finishLight';

// Each was right when it was set; but the society may since have moved its own past the member's.
function windowOf(group: RecipeGroup, kept: KeptBy, start: DayField, finish: DayField): Partial<Recipe> {
  const nearest = [kept, { ...kept, member: {} }, { member: {}, society: {} }];
  const [first, last] = nearest
    .map((one) => [fieldOf(group, start, one), fieldOf(group, finish, one)] as [Told<string>, Told<string>])
    .find(([from, until]) => isWindow(from.value, until.value)) as [Told<string>, Told<string>];
  return { [start]: first, [finish]: last };
}

/** The last day that comes before its first, taking each as it was set; null where both pairs fit. */
export function unfitDay(group: RecipeGroup, kept: KeptBy): 'finishHeavy' | 'finishLight' | null {
  const { startHeavy, finishHeavy, startLight, finishLight } = plainly(group, kept);
  if (!isWindow(startHeavy.value, finishHeavy.value)) return 'finishHeavy';
  return isWindow(startLight.value, finishLight.value) ? null : 'finishLight';
}

const nearness = { catalogue: 0, society: 1, yours: 2 } as const satisfies Record<SetBy, number>;

/**
 * What each value of a recipe would be if the member, or the society, had not set that one.
 *
 * @param whose  whose own values are left out, one at a time
 * @returns      a recipe whose values somebody else set
 * @example      own manure 7,000 over the society's 4,000 → rateGPerM2 4,000, the society's
 */
export function recipeBehind(group: RecipeGroup, kept: KeptBy, whose: keyof KeptBy): Recipe {
  const behind = recipeFields.map((field) => {
    const without = { ...kept, [whose]: { ...kept[whose], [`recipe.${group}.${field}`]: null } };
    return [field, recipeOf(group, without)[field]];
  });
  return { group, ...Object.fromEntries(behind) } as Recipe;
}

/** Every group's recipe, in the order of the groups. */
export function recipesOf(kept: KeptBy): Recipe[] {
  return recipeGroups.map((group) => recipeOf(group, kept));
}

export type ManurePlaces = {
  readonly bottomPercent: number;
  readonly topPercent: number;
  readonly surfacePercent: number;
};

/**
 * Where a recipe's manure goes: below the spit that is turned on it, into that spit, or on the surface.
 *
 * Method: only an opened trench has a bottom; what is forked over takes all in its top, what is not dug all on its surface.
 *
 * @returns  whole percents that sum to 100
 * @source   common practice
 * @example  double digging, 75 in the bottom → 75, 25, 0; mulch → 0, 0, 100
 */
export function manurePlaces({ method, manureBottomPercent }: Recipe): ManurePlaces {
  const { opensTrench, loosenedSpits } = diggingMethodOf(method.value);
  if (loosenedSpits === 0) return { bottomPercent: 0, topPercent: 0, surfacePercent: 100 };
  const bottomPercent = opensTrench ? manureBottomPercent.value : 0;
  return { bottomPercent, topPercent: 100 - bottomPercent, surfacePercent: 0 };
}
