import type { CropGroup } from '../catalogue/crop-groups';
import { areaCm2, type Footprint, overlap } from '../ground/footprint';
import type { Recipe } from '../recipe/recipe-of';
import { coveredCm2 } from '../rotation/rules/rule';

/** Straw and meals by key, in ten-thousandths of a gram: whole numbers, so that they add up exactly. */
export type Strewing = ReadonlyMap<string, number>;

/** Ground on which a crop of a group is planned. */
export type GroupOnGround = { readonly footprint: Footprint; readonly cropGroup: CropGroup | null };

/**
 * The straw and the meals that the recipes of what is planned ask for on a bed.
 *
 * Method: area of each planned crop on the bed × its recipe's rates, less the ground that has had that material for the season already.
 * A crop outside the rotation has no recipe. Where two crops follow each other on the same ground, each asks for its own.
 *
 * @param bed      [cm]
 * @param planned  for one season, of the bed's frame
 * @param recipes  those that are in force
 * @param had      straw and meals of the season, by key and footprint
 * @returns        by key [10⁻⁴ g], each ≥ 0; what no recipe asks for is left out
 * @source         each recipe's own rates
 * @example        alliums on 12 m² at 500 g/m² of straw and 70 of hoof and horn → straw 60,000,000, hoof-and-horn 8,400,000
 */
export function strawAndMeals(
  bed: Footprint,
  planned: readonly GroupOnGround[],
  recipes: readonly Recipe[],
  had: readonly { readonly materialKey: string | null; readonly footprint: Footprint }[],
): Strewing {
  return addUpStrewing(
    planned.flatMap(({ footprint, cropGroup }) => {
      const here = overlap(footprint, bed);
      const recipe = recipes.find(({ group }) => group === cropGroup);
      if (!here || !recipe) return [];
      return ratesOf(recipe).map(({ key, rateGPerM2 }) => {
        const done = had.filter(({ materialKey }) => materialKey === key);
        return new Map([[key, (areaCm2(here) - coveredCm2(here, done)) * rateGPerM2]]);
      });
    }),
  );
}

/** Several together, key by key. */
export function addUpStrewing(amounts: readonly Strewing[]): Strewing {
  const all = new Map<string, number>();
  for (const amount of amounts) for (const [key, value] of amount) all.set(key, (all.get(key) ?? 0) + value);
  return all;
}

function ratesOf({ strawGPerM2, meal, mealGPerM2 }: Recipe) {
  const straw = { key: 'straw', rateGPerM2: strawGPerM2.value };
  const meals = meal.value === 'none' ? [] : [{ key: meal.value, rateGPerM2: mealGPerM2.value }];
  return [straw, ...meals].filter(({ rateGPerM2 }) => rateGPerM2 > 0);
}
