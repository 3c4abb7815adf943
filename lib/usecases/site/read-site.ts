import 'server-only';
import { z } from 'zod';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { holdingsOfMember, holdingsOn } from '@/lib/data/holding';
import { type PlantingRecord, plantingsIn } from '@/lib/data/planting';
import { plotsOn, polygonOf } from '@/lib/data/plot';

import { sitesOf } from '@/lib/data/plot-store';
import { settingsOn } from '@/lib/data/setting';
import { makeDate } from '@/lib/domain/calendar/calendar-date';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import { cultivableCm2 } from '@/lib/domain/need/need-of';
import { canEnter, canReadCommitteePapers, canRunSociety } from '@/lib/domain/policy/standing';
import { type Compliance, complianceOfSeason } from '@/lib/domain/rotation/compliance';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { type PlanBed, planOf, type Sight } from '../ground/plan-of';
import { longestBreak, type NamedFinding, nameFindings, rotationSettings } from '../ground/rotation-settings';

type ShortBed = {
  readonly plotNumber: string;
  readonly bedName: string;
  readonly bedId: string | null;
  readonly cropName: string;
  readonly shortCm2: number;
  readonly areaCm2: number;
  readonly findings: readonly NamedFinding[];
};

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
    const [sites, settings, crops, mine] = await Promise.all([
      sitesOf(db, scope),
      settingsOn(db, scope, today),
      cropsOf(db, scope),
      holdingsOfMember(db, scope, scope.memberId, today),
    ]);
    const site = (siteId ? sites.find(({ id }) => id === siteId) : sites[0]) ?? null;
    if (siteId && !site) throw new NotFound();
    const thisYear = Number(today.slice(0, 4));
    const season = asked ?? thisYear;
    if (!site)
      return { site: null, sites: [], season, thisYear, today, units: scope.units, runs: canRunSociety(scope) };
    const plots = await plotsOn(db, scope, dayOf(season, today), { siteId: site.id });
    const reach = longestBreak(settings);
    const first = Math.min(season, thisYear - 4);
    const plantings = await plantingsIn(db, scope, crops, { from: first - reach, to: Math.max(season, thisYear + 1) });
    const compliance = await complianceOn(context, season, plots, plantings, settings);
    const own = new Set(mine.flatMap((holding) => holding.plots.map(({ id }) => id)));
    const sight = sightFor(scope, settings.neighboursSee, own);
    const nameOf = (key: string) => crops.get(key)?.name ?? key;
    const { short, marks } = await shortBeds(context, compliance, plots, sight, nameOf);
    const letNow = new Set(
      (await holdingsOn(db, scope, today)).flatMap((holding) => holding.plots.map(({ id }) => id)),
    );
    const years = Array.from({ length: 6 }, (_, at) => thisYear - 4 + at);
    const trend = await Promise.all(
      years.map(async (year) => ({
        year,
        total: (
          await complianceOn(
            context,
            year,
            await plotsOn(db, scope, dayOf(year, today), { siteId: site.id }),
            plantings,
            settings,
          )
        ).total,
      })),
    );
    return {
      site: { id: site.id, name: site.name, northCentideg: site.northCentideg, paths: pathsOf(site.paths) },
      sites: sites.map(({ id, name }) => ({ id, name })),
      season,
      thisYear,
      today,
      units: scope.units,
      runs: canRunSociety(scope),
      plan: await planOf(db, scope, { plots, season, sightOf: sight, mine: own, let: letNow, marks }),
      compliance: { total: compliance.total, byGroup: compliance.byGroup },
      short,
      trend,
      mineId: [...own][0] ?? null,
      unmeasured: plots.filter(({ polygon }) => !polygon).length,
    };
  },
});

type Settings = Awaited<ReturnType<typeof settingsOn>>;
type Plots = Awaited<ReturnType<typeof plotsOn>>;

// A season is shown as its plots stood at midsummer, or stand today.
function dayOf(season: number, today: ReadContext['today']) {
  const midsummer = makeDate(season, 6, 24);
  return midsummer > today ? today : midsummer;
}

async function complianceOn(
  { db, scope }: ReadContext,
  season: number,
  plots: Plots,
  plantings: readonly PlantingRecord[],
  settings: Settings,
): Promise<Compliance> {
  const ids = plots.map(({ id }) => id);
  const day = makeDate(season, 6, 24);
  const beds = await bedsStanding(db, scope, day, day, ids);
  const divided = new Set(beds.map(({ plotId }) => plotId));
  const undivided = plots
    .filter(({ id }) => !divided.has(id))
    .reduce((sum, plot) => sum + cultivableCm2(plot.areaCm2, settings.cultivableSharePercent), 0);
  const byFrame = new Map<string, PlantingRecord[]>();
  for (const planting of plantings) {
    const here = byFrame.get(planting.frameId);
    if (here) here.push(planting);
    else byFrame.set(planting.frameId, [planting]);
  }
  return complianceOfSeason({
    season,
    beds,
    undividedAreaCm2: undivided,
    plantings: byFrame,
    settings: rotationSettings(settings),
  });
}

function sightFor(
  scope: ReadContext['scope'],
  neighbours: string,
  own: ReadonlySet<string>,
): (plotId: string) => Sight {
  return (plotId) => {
    if (own.has(plotId) || canRunSociety(scope)) return 'all';
    if (canReadCommitteePapers(scope)) return 'crop';
    return neighbours === 'nothing' ? 'nothing' : neighbours === 'group' ? 'group' : 'crop';
  };
}

async function shortBeds(
  { db, scope, today }: ReadContext,
  compliance: Compliance,
  plots: Plots,
  sightOf: (plotId: string) => Sight,
  nameOf: (key: string) => string,
) {
  const ids = [...new Set(compliance.short.map(({ bedId }) => bedId))];
  const beds = new Map(
    (
      await bedsStanding(
        db,
        scope,
        makeDate(1900, 1, 1),
        makeDate(2199, 12, 31),
        plots.map(({ id }) => id),
      )
    )
      .filter(({ id }) => ids.includes(id))
      .map((bed) => [bed.id, bed]),
  );
  const numbers = new Map(plots.map(({ id, number }) => [id, number]));
  const marks = new Map<string, PlanBed['mark']>(ids.map((id) => [id, 'short']));
  const short = compliance.short.flatMap(({ bedId, planting, judgement }): ShortBed[] => {
    const bed = beds.get(bedId);
    const sight = bed ? sightOf(bed.plotId) : 'nothing';
    if (!bed || sight === 'nothing' || sight === 'group') return [];
    return [
      {
        plotNumber: numbers.get(bed.plotId) ?? '',
        bedName: bed.name,
        bedId: sight === 'all' ? bed.id : null,
        cropName: nameOf(planting.cropKey),
        shortCm2: judgement.areas.shortCm2,
        areaCm2: areaCm2(planting.footprint),
        findings: nameFindings(
          judgement.findings.filter(({ code }) => code === 'short'),
          nameOf,
        ),
      },
    ];
  });
  return { short, marks, today };
}

function pathsOf(stored: unknown): { xCm: number; yCm: number }[][] {
  return Array.isArray(stored) ? stored.flatMap((path) => [[...(polygonOf(path) ?? [])]]) : [];
}
