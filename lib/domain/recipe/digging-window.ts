import type { CalendarDate } from '../calendar/calendar-date';
import type { MonthDay } from '../calendar/month-day';
import type { Season } from '../calendar/season-of';
import { type SoilKey, soilOf } from '../catalogue/soils';
import { dayFor } from './day-for';
import type { Recipe } from './recipe-of';

export type DiggingWindow = { readonly from: CalendarDate; readonly until: CalendarDate };

/**
 * When a recipe's ground is made ready for a season: before hard winter on heavy soil, in spring on light.
 *
 * Method: a day from July on lies in the year before the season, an earlier one in the season's own year (`dayFor`).
 *
 * @param season  the year that the ground is made ready for; 1901 to 2199
 * @returns       the first and the last day; from ≤ until
 * @throws RangeError on another year, or a soil that is none
 * @source        each recipe's own days
 * @example       alliums, clay, 2027 → 2026-10-01 to 2026-12-01; on sand 2027-02-01 to 2027-03-10
 */
export function diggingWindow(recipe: Recipe, soil: SoilKey, season: Season): DiggingWindow {
  const { from, until } = windowDays(recipe, soil);
  return { from: dayFor(season, from), until: dayFor(season, until) };
}

/**
 * The days of the year between which a recipe's ground is made ready on a soil.
 *
 * @throws RangeError on a soil that is none
 * @example alliums on clay → 10-01 to 12-01
 */
export function windowDays(recipe: Recipe, soil: SoilKey): { readonly from: MonthDay; readonly until: MonthDay } {
  const season = soilOf(soil)?.diggingSeason;
  if (!season) throw new RangeError(`no such soil: ${soil}`);
  return season === 'autumn'
    ? { from: recipe.startHeavy.value, until: recipe.finishHeavy.value }
    : { from: recipe.startLight.value, until: recipe.finishLight.value };
}
