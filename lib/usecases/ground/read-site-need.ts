import 'server-only';
import { z } from 'zod';
import { askedOf } from '@/lib/data/booking';
import { deliveriesOf } from '@/lib/data/delivery';
import { strewnIn } from '@/lib/data/ground-work';
import { holdingsOn } from '@/lib/data/holding';
import { plotsOn } from '@/lib/data/plot';
import { keptSettingsOn } from '@/lib/data/setting';
import { materialOf, materials } from '@/lib/domain/catalogue/materials';
import { settingValues } from '@/lib/domain/catalogue/settings';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { siteNeed } from '@/lib/domain/need/site-need';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import { loadMassG } from '@/lib/domain/quantity/load-mass';
import { recipesOf } from '@/lib/domain/recipe/recipe-of';
import { query, type ReadContext } from '../operation';
import { siteAsked } from '../site/site-asked';
import { seasonServed } from './holding-need';
import { readNeedyGround } from './needy-ground';
import { holdingNeeds, plotNeeds } from './site-need-of';

/** The season that work of today serves, and so many after it. */
const seasonsAhead = 3;

const asked = z.object({
  siteId: z.uuid().nullish().catch(null),
  season: z.coerce.number().int().nullish().catch(null),
  materialKey: z.string().max(40).nullish().catch(null),
});

/**
 * What the ground of a site asks for, in the season at hand and the years to come: in all, and by holding with plot
 * numbers and no names. Manure is reckoned as for a booking, straw and meals by the society's recipes. A handful of
 * queries, whatever the site's size.
 */
export const readSiteNeed = query({
  name: 'read-site-need',
  allow: canReadCommitteePapers,
  input: asked,
  read: async (context, input) => {
    const { db, scope, today } = context;
    const { sites, site } = await siteAsked(context, input.siteId);
    const firstSeason = seasonServed(today);
    const seasons = Array.from({ length: seasonsAhead + 1 }, (_, at) => firstSeason + at);
    const season = seasons.find((one) => one === input.season) ?? firstSeason;
    const common = { today, season, seasons, units: scope.units };
    if (!site) return { ...common, site: null };
    const [kept, holdings, plots] = await Promise.all([
      keptSettingsOn(db, scope, today),
      holdingsOn(db, scope, today),
      plotsOn(db, scope, today, { siteId: site.id }),
    ]);
    const here = new Set(plots.map(({ id }) => id));
    const held = holdings
      .map(({ id, plots: own }) => ({ id, plots: own.filter((plot) => here.has(plot.id)) }))
      .filter(({ plots: own }) => own.length > 0);
    const plotIds = held.flatMap(({ plots: own }) => own.map(({ id }) => id));
    const [ground, strewn, deliveries] = await Promise.all([
      readNeedyGround(db, scope, plotIds, { day: today, from: firstSeason, to: firstSeason + seasonsAhead }),
      strewnIn(db, scope, firstSeason),
      deliveriesFor(context, site.id, firstSeason),
    ]);
    const settings = settingValues(kept);
    const material = materialAsked(input.materialKey);
    const dressing = {
      materialKey: material.key,
      densityGPerL: material.densityGPerL,
      rateGPerM2: settings.manureRateGPerM2,
      barrowLitres: settings.barrowLitres,
      intervalYears: settings.manuringIntervalYears,
      cultivableSharePercent: settings.cultivableSharePercent,
    };
    const needs = plotNeeds(ground, {
      seasons,
      dressing,
      recipes: recipesOf({ member: {}, society: kept }),
      strewn: byFrame(strewn),
    });
    const years = seasons.map((one, at) => ({ season: one, holdings: holdingNeeds(held, needs, at, dressing) }));
    return {
      ...common,
      site: { id: site.id, name: site.name },
      sites: sites.map(({ id, name }) => ({ id, name })),
      toLet: plots.length - plotIds.length,
      dressing,
      barrowLoadG: loadMassG(dressing),
      materials: materials.filter(({ feedsTurns }) => feedsTurns).map(({ key, name }) => ({ key, name })),
      holdings: (years.find((year) => year.season === season)?.holdings ?? []).map(
        ({ strewing: _, ...holding }) => holding,
      ),
      years: years.map((year) => ({ season: year.season, ...siteNeed(year.holdings) })),
      deliveries,
    };
  },
});

function materialAsked(key: string | null | undefined) {
  const material = materialOf(key ?? '');
  const usual = materials.find(({ feedsTurns }) => feedsTurns);
  if (!usual) throw new Error('the catalogue lacks a material that feeds turns');
  return material?.feedsTurns ? material : usual;
}

/** What is coming, or came, for a season: ordered, booked and collected. */
async function deliveriesFor({ db, scope, now }: ReadContext, siteId: string, season: number) {
  const all = (await deliveriesOf(db, scope, now)).filter(
    (one) => one.siteId === siteId && one.state !== 'called_off' && seasonServed(one.arrivesOn) === season,
  );
  const seen = all.filter((delivery) => canSeeDelivery(scope, delivery));
  const booked = await askedOf(
    db,
    scope,
    seen.map(({ id }) => id),
  );
  return seen.map(({ id, name, state, materialKey, arrivesOn, heapLoads, expectedLoads, ...one }) => ({
    ...{ id, name, state, materialKey, arrivesOn },
    loads: heapLoads ?? expectedLoads,
    askedLoads: booked.get(id) ?? 0,
    collectedLoads: one.collectedLoads,
    loadG: loadMassG(one),
    feedsTurns: materialOf(materialKey)?.feedsTurns ?? false,
  }));
}
