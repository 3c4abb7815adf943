import type { CalendarDate } from '../calendar/calendar-date';
import { dayFor } from './day-for';
import type { Recipe } from './recipe-of';

/** When ground that takes manure is opened for a season, and the first and last day by which a recipe wants it dug. */
export type DigBy = {
  readonly soil: 'heavy' | 'light';
  readonly from: CalendarDate;
  readonly first: CalendarDate;
  readonly last: CalendarDate;
};

/**
 * By when manure is to be dug in for a season: it should lie at the gate before.
 *
 * Method: the first day on which any recipe that takes manure opens the ground, and the first and the last by which one of
 * them wants it dug; of heavy ground while its last day is to come, then of light.
 *
 * @param recipes  those in force
 * @param today    what is past is not told
 * @returns        from ≤ last, first ≤ last; null once both are past, and where no recipe takes manure
 * @source         each recipe's own days
 * @example        the catalogue's recipes, 2027, on 1 September 2026 → heavy, from 2026-10-01, first 2026-12-01, last 2026-12-15
 */
export function digBy(recipes: readonly Recipe[], season: number, today: CalendarDate): DigBy | null {
  const taking = recipes.filter(({ rateGPerM2 }) => rateGPerM2.value > 0);
  const days = (of: (recipe: Recipe) => string) => taking.map((recipe) => dayFor(season, of(recipe))).sort();
  const heavy = {
    soil: 'heavy' as const,
    opened: days(({ startHeavy }) => startHeavy.value),
    dug: days(({ finishHeavy }) => finishHeavy.value),
  };
  const light = {
    soil: 'light' as const,
    opened: days(({ startLight }) => startLight.value),
    dug: days(({ finishLight }) => finishLight.value),
  };
  for (const { soil, opened, dug } of [heavy, light]) {
    const [from, first, last] = [opened[0], dug[0], dug.at(-1)];
    if (from && first && last && last >= today) return { soil, from, first, last };
  }
  return null;
}
