import 'server-only';
import { strewnIn } from '@/lib/data/ground-work';
import { holdingsOn } from '@/lib/data/holding';
import { plotsOn } from '@/lib/data/plot';
import { keptSettingsOn } from '@/lib/data/setting';
import { settingValues } from '@/lib/domain/catalogue/settings';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { recipesOf } from '@/lib/domain/recipe/recipe-of';
import type { ReadContext } from '../operation';
import { type Dressing, seasonServed } from './holding-need';
import { readNeedyGround } from './needy-ground';
import { holdingNeeds, plotNeeds } from './site-need-of';

/** The season that work of today serves, and so many after it. */
const seasonsAhead = 3;

/** The seasons that are looked ahead to: the one that work of a day serves, and three more. */
export function seasonsFrom(day: ReadContext['today']): readonly [number, ...number[]] {
  const first = seasonServed(day);
  return [first, ...Array.from({ length: seasonsAhead }, (_, at) => first + at + 1)];
}

/**
 * The ground of a site's holdings, with what it asks for in each of the seasons ahead, whichever material it is reckoned as. A
 * handful of queries, whatever the site's size.
 */
export async function readGroundNeed({ db, scope, today }: ReadContext, siteId: string) {
  const seasons = seasonsFrom(today);
  const [first] = seasons;
  const [kept, holdings, plots] = await Promise.all([
    keptSettingsOn(db, scope, today),
    holdingsOn(db, scope, today),
    plotsOn(db, scope, today, { siteId }),
  ]);
  const here = new Set(plots.map(({ id }) => id));
  const held = holdings
    .map(({ id, plots: own }) => ({ id, plots: own.filter((plot) => here.has(plot.id)) }))
    .filter(({ plots: own }) => own.length > 0);
  const plotIds = held.flatMap(({ plots: own }) => own.map(({ id }) => id));
  const [ground, strewn] = await Promise.all([
    readNeedyGround(db, scope, plotIds, { day: today, from: first, to: first + seasonsAhead }),
    strewnIn(db, scope, first),
  ]);
  const settings = settingValues(kept);
  const rules = {
    rateGPerM2: settings.manureRateGPerM2,
    barrowLitres: settings.barrowLitres,
    intervalYears: settings.manuringIntervalYears,
    cultivableSharePercent: settings.cultivableSharePercent,
  };
  const recipes = recipesOf({ member: {}, society: kept });
  const needs = plotNeeds(ground, { seasons, rules, recipes, strewn: byFrame(strewn) });
  const dressingWith = (material: { readonly key: string; readonly densityGPerL: number }): Dressing => ({
    ...rules,
    materialKey: material.key,
    densityGPerL: material.densityGPerL,
  });
  return {
    recipes,
    dressingWith,
    toLet: plots.length - plotIds.length,
    /** What each holding needs in one season, reckoned with one material. */
    holdingsIn: (season: number, dressing: Dressing) => holdingNeeds(held, needs, seasons.indexOf(season), dressing),
  };
}
