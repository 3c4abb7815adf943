import type { Season } from '../calendar/season-of';
import { diggingMethodOf } from '../catalogue/digging-methods';
import { mealOf } from '../catalogue/meals';
import { soilOf } from '../catalogue/soils';
import type { Footprint } from '../ground/footprint';
import { jarOf } from '../quantity/meal-jar';
import { diggingWindow } from '../recipe/digging-window';
import type { Habits } from '../recipe/habits-of';
import { manurePlaces, type Recipe } from '../recipe/recipe-of';
import { defaultAcross, type TrenchOrder, trenchPlan } from '../trench/trench-plan';
import { settledLayout } from './settled-layout';
import { type SheetManure, type SheetOrder, sheetMethod, sizeOf } from './sheet-order';

/** What a digger settles beside their recipe and their habits. */
export type SheetWish = {
  readonly ground: Footprint;
  readonly season: Season;
  /** The side of the ground that the trenches run along; null: the shorter. */
  readonly across: TrenchOrder['across'] | null;
  readonly material: Pick<SheetManure, 'materialKey' | 'ageMonths' | 'densityGPerL'>;
};

/**
 * The order of a sheet, from a recipe and the digger's habits.
 *
 * Method: a width of their own holds for every trench and strip, else the method's usual one, no wider than a strip's
 * ground; manure goes where the recipe has it, to the gram; meal that would go into a bottom that is never opened goes
 * into the top.
 *
 * @param recipe, habits  as in force for whoever digs
 * @param wish            ground in whole centimetres; density [g/L]
 * @returns               all that the sheet is ever drawn and reckoned from
 * @throws RangeError     on ground narrower than a trench, and as `trenchPlan`
 * @source                recipe and habits, each value its own
 * @example               alliums on 120 × 360 cm of loam for 2027 → double digging, 3,750 + 1,250 g/m², by 2026-12-01
 */
export function orderFromRecipe(recipe: Recipe, habits: Habits, wish: SheetWish): SheetOrder {
  const { ground, season } = wish;
  const method = recipe.method.value;
  const soil = soilOf(habits.soil.value);
  if (!soil) throw new RangeError(`no such soil: ${habits.soil.value}`);
  const bed = sizeOf(ground);
  const across = wish.across ?? defaultAcross(bed);
  const trenchWidthCm = widthFor(recipe, habits, across === 'width' ? bed.lengthCm : bed.widthCm);
  const plain = { bed, across, trenchWidthCm, spitDepthCm: habits.spitDepthCm.value, method };
  const { layout, by } = settledLayout(plain, habits.layout.value, soil);
  trenchPlan({ ...plain, layout });
  return {
    version: sheetMethod,
    method,
    across,
    trenchWidthCm,
    spitDepthCm: plain.spitDepthCm,
    layout,
    layoutBy: by,
    soil: soil.key,
    barrowLitres: habits.barrowLitres.value,
    manure: manureOf(recipe, wish.material),
    meal: mealFor(recipe, habits),
    strawGPerM2: recipe.strawGPerM2.value,
    limeToPhTenths: recipe.lime.value === 'none' ? null : recipe.limeTargetPhTenths.value,
    limeApartMonths: recipe.limeApartMonths.value,
    firmness: recipe.firmness.value,
    leftHigh: recipe.leftHigh.value === 'yes',
    springFinishCm: recipe.springFinishCm.value || null,
    ...diggingWindow(recipe, soil.key, season),
  };
}

/** How wide a trench or a strip is: a digger's own width, else the method's; a strip is no wider than its ground. */
export function widthFor(recipe: Recipe, { trenchWidthCm }: Habits, runCm: number): number {
  if (trenchWidthCm.setBy === 'yours') return trenchWidthCm.value;
  const row = diggingMethodOf(recipe.method.value);
  return row.opensTrench ? row.trenchWidthCm : Math.min(row.trenchWidthCm, runCm);
}

function manureOf(recipe: Recipe, material: SheetWish['material']): SheetManure | null {
  const rateGPerM2 = recipe.rateGPerM2.value;
  if (rateGPerM2 === 0) return null;
  const bottomGPerM2 = Math.round((rateGPerM2 * manurePlaces(recipe).bottomPercent) / 100);
  return { ...material, bottomGPerM2, topGPerM2: rateGPerM2 - bottomGPerM2 };
}

function mealFor(recipe: Recipe, { jarMl, jarWeighedG }: Habits): SheetOrder['meal'] {
  const meal = mealOf(recipe.meal.value);
  if (!meal) return null;
  const jar = jarOf({ jarMl: jarMl.value, weighedG: jarWeighedG.value || null, density: meal.density });
  return {
    key: meal.key,
    gPerM2: recipe.mealGPerM2.value,
    into: diggingMethodOf(recipe.method.value).opensTrench ? recipe.mealInto.value : 'top',
    jarG: jar.basis === 'not-known' ? null : jar.jarG,
    jarBasis: jar.basis,
  };
}
