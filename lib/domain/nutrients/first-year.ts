import { mealOf } from '../catalogue/meals';
import { availability, type ManureAge, type ManuredSoil, type SeasonApplied } from '../catalogue/nitrogen-availability';
import { nutrientContentsOf } from '../catalogue/nutrient-contents';
import type { SourceKey } from '../catalogue/sources';

/** How a dressing is given: what its first year depends on. Meals are asked nothing of it. */
export type Application = {
  readonly age: ManureAge;
  readonly applied: SeasonApplied;
  readonly soil: ManuredSoil;
  /** Within 24 hours. */
  readonly incorporated: boolean;
};

/** One published account of how much of the total nitrogen comes free in time for the next crop [percent]. */
export type AvailableShare = {
  readonly kind: 'next-crop' | 'counted-at-least' | 'released';
  readonly leastPercent: number;
  readonly mostPercent: number;
  /** In so many days; null: by the next crop, or in the year of application. */
  readonly days: number | null;
  readonly source: SourceKey;
};

/**
 * What of a material's total nitrogen is published as available in the first year.
 *
 * Method: farmyard manure by the English table first, then by the least efficiency that German law counts; other
 * manures by the latter alone; meals by their release.
 *
 * @param materialKey  a heaped material or a meal
 * @param application  season, soil, age and whether it was worked in
 * @returns            accounts, the one to go by first; none where nothing was published for it
 * @source             each account's own; see the catalogue
 * @example            old cattle manure dug into loam in winter → 10 % (next crop), 25 % (counted at the least)
 */
export function availableShares(materialKey: string, application: Application): readonly AvailableShare[] {
  const meal = mealOf(materialKey);
  if (meal) return meal.release ? [{ kind: 'released', ...meal.release }] : [];
  const contents = nutrientContentsOf(materialKey);
  if (!contents) return [];
  const next = contents.farmyard ? nextCropPercent(application) : null;
  return [
    ...(next === null ? [] : [share('next-crop', next, availability.source)]),
    share('counted-at-least', contents.leastEfficiencyPercent, 'duev-efficiency'),
  ];
}

function nextCropPercent({ age, applied, soil, incorporated }: Application): number | null {
  return availability.rows[incorporated ? age : 'surface'][applied][soil];
}

function share(kind: AvailableShare['kind'], percent: number, source: SourceKey): AvailableShare {
  return { kind, leastPercent: percent, mostPercent: percent, days: null, source };
}
