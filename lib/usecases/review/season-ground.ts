import 'server-only';
import { sitesOf } from '@/lib/data/plot-store';
import { troublesIn } from '@/lib/data/trouble';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { troublesOfSeason } from '@/lib/domain/review/troubles-of-season';
import { addUp } from '@/lib/domain/rotation/compliance';
import type { ReadContext } from '../operation';
import { readSiteGround } from '../site/site-ground';

/** How many seasons the trend shows, the season itself the last of them. */
export const trendSeasons = 8;

/** How the rotation holds on all of the society's ground, season by season, and the troubles found in it. No plot is named. */
export async function seasonGround(context: ReadContext, settings: SettingValues, season: number) {
  const { db, scope } = context;
  const years = Array.from({ length: trendSeasons }, (_, at) => season + 1 - trendSeasons + at);
  const sites = await sitesOf(db, scope);
  const grounds = await Promise.all(sites.map(({ id }) => readSiteGround(context, id, years)));
  const complianceIn = (year: number) => addUp(grounds.flatMap((ground) => ground.talliesIn(year)));
  const { total, byGroup } = complianceIn(season);
  return {
    sites: sites.length,
    plots: grounds.reduce((sum, ground) => sum + ground.plotsIn(season).length, 0),
    total,
    byGroup,
    trend: years.map((year) => ({ year, total: complianceIn(year).total })),
    troubles: troublesOfSeason(await troublesIn(db, scope, settings), season),
  };
}
