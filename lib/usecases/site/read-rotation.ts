import 'server-only';
import { z } from 'zod';
import { hostGroupName, isHostGroup } from '@/lib/domain/catalogue/host-groups';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import type { Compliance } from '@/lib/domain/rotation/compliance';
import type { ComplianceAreas } from '@/lib/domain/rotation/frame-tally';
import { toCsv } from '@/lib/platform/csv';
import { query } from '../operation';
import { NotFound } from '../refusal';
import { siteAsked } from './site-asked';
import { readSiteGround, type SiteGround } from './site-ground';

/** How many seasons the trend shows, the next planned one among them. */
const trendSeasons = 8;
/** The longest wait that may be thought of, beyond the break in force [years]. */
const mostMore = 10;

const asked = z.object({
  siteId: z.uuid().nullish().catch(null),
  season: z.coerce.number().int().min(1900).max(2199).nullish().catch(null),
  /** What if this host group had to wait so many years more? */
  group: z.string().max(40).nullish().catch(null),
  more: z.coerce.number().int().min(-mostMore).max(mostMore).nullish().catch(null),
});

/** How the rotation holds on a site, for the committee: by season, group, trouble and plot, with plot numbers and no names. */
export const readRotation = query({
  name: 'read-rotation',
  allow: canReadCommitteePapers,
  input: asked,
  read: async (context, input) => {
    const { scope, today } = context;
    const { sites, site } = await siteAsked(context, input.siteId);
    const thisYear = Number(today.slice(0, 4));
    const season = input.season ?? thisYear;
    const common = { season, thisYear, today, units: scope.units, societyName: scope.societyName };
    if (!site) return { ...common, site: null };
    const years = Array.from({ length: trendSeasons }, (_, at) => thisYear + 2 - trendSeasons + at);
    const { group, more } = input;
    const thought = group && isHostGroup(group) && more ? { group, more } : null;
    const ground = await readSiteGround(context, site.id, [...years, season]);
    const compliance = ground.complianceIn(season);
    return {
      ...common,
      site: { id: site.id, name: site.name },
      sites: sites.map(({ id, name }) => ({ id, name })),
      total: compliance.total,
      byGroup: compliance.byGroup,
      byTrouble: compliance.byTrouble,
      byPlot: byPlotOf(ground, season, compliance),
      trend: years.map((year) => ({ year, total: ground.complianceIn(year).total })),
      whatIf: thought && (await whatIf(ground, season, compliance, thought)),
    };
  },
});

/** The same by plot as a table for any spreadsheet. */
export const readRotationCsv = query({
  name: 'read-rotation-csv',
  allow: canReadCommitteePapers,
  input: asked.pick({ siteId: true, season: true }),
  read: async (context, input) => {
    const { site } = await siteAsked(context, input.siteId);
    if (!site) throw new NotFound();
    const season = input.season ?? Number(context.today.slice(0, 4));
    const ground = await readSiteGround(context, site.id, [season]);
    const rows = byPlotOf(ground, season, ground.complianceIn(season));
    const m2 = (cm2: number) => (cm2 / 10_000).toFixed(2);
    const columns = ['season', 'plot', 'kept m2', 'short m2', 'not known m2', 'outside the rotation m2', 'bare m2'];
    return {
      name: `rotation-${season}.csv`,
      text: toCsv(
        columns,
        rows.map(({ number, areas }) => [
          season,
          number,
          m2(areas.keptCm2),
          m2(areas.shortCm2),
          m2(areas.notKnownCm2),
          m2(areas.outsideCm2),
          m2(areas.bareCm2),
        ]),
      ),
    };
  },
});

function byPlotOf(ground: SiteGround, season: number, { byPlot }: Compliance) {
  const areas = new Map(byPlot.map((one) => [one.plotId, one.areas]));
  return ground
    .plotsIn(season)
    .flatMap(({ id, number }) => (areas.has(id) ? [{ id, number, areas: areas.get(id) as ComplianceAreas }] : []));
}

/** Who would fall short, and by how much more, if a host group had another break. Nothing is changed by asking. */
async function whatIf(
  ground: SiteGround,
  season: number,
  now: Compliance,
  { group, more }: { group: string; more: number },
) {
  const present = ground.settings.breakYears[group] ?? 0;
  const years = Math.max(0, present + more);
  const rules: SettingValues = {
    ...ground.settings,
    breakYears: { ...ground.settings.breakYears, [group]: years },
  };
  const then = await ground.complianceBy(rules, season);
  const before = new Map(now.byPlot.map(({ plotId, areas }) => [plotId, areas.shortCm2]));
  const numbers = new Map(ground.plotsIn(season).map(({ id, number }) => [id, number]));
  return {
    groupName: hostGroupName(group),
    presentYears: present,
    years,
    total: then.total,
    plots: then.byPlot
      .map(({ plotId, areas }) => ({
        number: numbers.get(plotId) ?? '',
        moreCm2: areas.shortCm2 - (before.get(plotId) ?? 0),
        shortCm2: areas.shortCm2,
      }))
      .filter(({ moreCm2 }) => moreCm2 !== 0)
      .sort((a, b) => b.moreCm2 - a.moreCm2),
  };
}
