import 'server-only';
import { z } from 'zod';
import { dropPointsOf } from '@/lib/data/drop-point';
import { holdingsOfMember } from '@/lib/data/holding';
import { letPlotIds, type PlotOnDay } from '@/lib/data/plot';
import { settingsOn } from '@/lib/data/setting';
import { pathsOf } from '@/lib/data/site-path';
import { type Sight, sightOf } from '@/lib/domain/policy/sight';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import type { Compliance } from '@/lib/domain/rotation/compliance';
import { query } from '../operation';
import { type PlanBed, planOf } from '../ground/plan-of';
import { type NamedFinding, nameFindings } from '../ground/rotation-settings';
import { siteAsked } from './site-asked';
import { readSiteGround, type SiteGround } from './site-ground';

type ShortBed = {
  readonly plotNumber: string;
  readonly bedName: string;
  readonly bedId: string | null;
  readonly cropName: string;
  readonly shortCm2: number;
  readonly areaCm2: number;
  readonly findings: readonly NamedFinding[];
};

/** How many of the beds that fall short are named: those with most ground. */
const shortShown = 40;

/** A site for a season: its plan, its compliance by crop group, and the beds that fall short, as far as the viewer may see. */
export const readSite = query({
  name: 'read-site',
  allow: canEnter,
  input: z.object({
    siteId: z.uuid().nullish().catch(null),
    season: z.coerce.number().int().min(1900).max(2199).nullish().catch(null),
  }),
  read: async (context, { siteId, season: asked }) => {
    const { db, scope, today } = context;
    const [{ sites, site }, settings, mine] = await Promise.all([
      siteAsked(context, siteId),
      settingsOn(db, scope, today),
      holdingsOfMember(db, scope, scope.memberId, today),
    ]);
    const thisYear = Number(today.slice(0, 4));
    const season = asked ?? thisYear;
    if (!site)
      return { site: null, sites: [], season, thisYear, today, units: scope.units, runs: canRunSociety(scope) };
    const years = Array.from({ length: 6 }, (_, at) => thisYear - 4 + at);
    const [ground, paths, dropPoints] = await Promise.all([
      readSiteGround(context, site.id, [...years, season]),
      pathsOf(db, scope, site.id),
      dropPointsOf(db, scope, site.id),
    ]);
    const plots = ground.plotsIn(season);
    const compliance = ground.complianceIn(season);
    const own = new Set(mine.flatMap((holding) => holding.plots.map(({ id }) => id)));
    const sight = (plotId: string) => sightOf(scope, settings.neighboursSee, own.has(plotId));
    const { short, marks } = shortBeds(ground, compliance, plots, sight);
    const trend = years.map((year) => ({ year, total: ground.complianceIn(year).total }));
    return {
      site: { id: site.id, name: site.name, northCentideg: site.northCentideg, paths, dropPoints },
      sites: sites.map(({ id, name }) => ({ id, name })),
      season,
      thisYear,
      today,
      units: scope.units,
      runs: canRunSociety(scope),
      plan: await planOf(db, scope, {
        plots,
        season,
        sightOf: sight,
        mine: own,
        let: await letPlotIds(db, scope, today),
        marks,
      }),
      compliance: { total: compliance.total, byGroup: compliance.byGroup, byTrouble: compliance.byTrouble },
      short: short.slice(0, shortShown),
      shortLeftOut: Math.max(0, short.length - shortShown),
      trend,
      mineId: [...own][0] ?? null,
      unmeasured: plots.filter(({ polygon }) => !polygon).length,
    };
  },
});

function shortBeds(
  ground: SiteGround,
  compliance: Compliance,
  plots: readonly PlotOnDay[],
  sightOn: (plotId: string) => Sight,
): { short: ShortBed[]; marks: Map<string, PlanBed['mark']> } {
  const numbers = new Map(plots.map(({ id, number }) => [id, number]));
  const marks = new Map<string, PlanBed['mark']>(compliance.short.map(({ bedId }) => [bedId, 'short']));
  const short = compliance.short.flatMap(({ bedId, bedName, plotId, cropKey, shortCm2, areaCm2, findings }) => {
    const sight = sightOn(plotId);
    if (sight === 'nothing' || sight === 'group') return [];
    return [
      {
        plotNumber: numbers.get(plotId) ?? '',
        bedName,
        bedId: sight === 'all' ? bedId : null,
        cropName: ground.cropName(cropKey),
        shortCm2,
        areaCm2,
        findings: nameFindings(findings, ground.cropName),
      },
    ];
  });
  return { short, marks };
}
