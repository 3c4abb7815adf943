import 'server-only';
import { z } from 'zod';
import { askedOf } from '@/lib/data/booking';
import { deliveriesOf } from '@/lib/data/delivery';
import { materialOf, materials } from '@/lib/domain/catalogue/materials';
import { siteNeed } from '@/lib/domain/need/site-need';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canReadCommitteePapers, canRunSociety } from '@/lib/domain/policy/standing';
import { loadMassG } from '@/lib/domain/quantity/load-mass';
import { query, type ReadContext } from '../operation';
import { siteAsked } from '../site/site-asked';
import { seasonServed } from './holding-need';
import { readGroundNeed, seasonsFrom } from './read-ground-need';

const asked = z.object({
  siteId: z.uuid().nullish().catch(null),
  season: z.coerce.number().int().nullish().catch(null),
  materialKey: z.string().max(40).nullish().catch(null),
});

/**
 * What the ground of a site asks for, in the season at hand and the years to come: in all, and by holding with plot
 * numbers and no names. Manure is reckoned as for a booking, straw and meals by the society's recipes.
 */
export const readSiteNeed = query({
  name: 'read-site-need',
  allow: canReadCommitteePapers,
  input: asked,
  read: async (context, input) => {
    const { scope, today } = context;
    const { sites, site } = await siteAsked(context, input.siteId);
    const seasons = seasonsFrom(today);
    const [firstSeason] = seasons;
    const season = seasons.find((one) => one === input.season) ?? firstSeason;
    const common = { today, season, seasons, units: scope.units };
    if (!site) return { ...common, site: null };
    const [ground, deliveries] = await Promise.all([
      readGroundNeed(context, site.id),
      deliveriesFor(context, site.id, firstSeason),
    ]);
    const dressing = ground.dressingWith(manureAsked(input.materialKey));
    const years = seasons.map((one) => ({ season: one, holdings: ground.holdingsIn(one, dressing) }));
    return {
      ...common,
      site: { id: site.id, name: site.name },
      sites: sites.map(({ id, name }) => ({ id, name })),
      toLet: ground.toLet,
      dressing,
      barrowLoadG: loadMassG(dressing),
      materials: materials.filter(({ feedsTurns }) => feedsTurns).map(({ key, name }) => ({ key, name })),
      holdings: (years.find((year) => year.season === season)?.holdings ?? []).map(
        ({ strewing: _, ...holding }) => holding,
      ),
      years: years.map((year) => ({ season: year.season, ...siteNeed(year.holdings) })),
      deliveries,
      plans: canRunSociety(scope),
    };
  },
});

/** The manure that a need is reckoned as: the one asked for, or the usual one. */
export function manureAsked(key: string | null | undefined) {
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
