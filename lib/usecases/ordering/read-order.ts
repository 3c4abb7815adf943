import 'server-only';
import { z } from 'zod';
import { deliveriesOf, type DeliveryRecord } from '@/lib/data/delivery';
import { type SupplierLoadRecord, suppliersOf } from '@/lib/data/supplier';
import { materialOf, materials } from '@/lib/domain/catalogue/materials';
import { type MassBetween, stillWanted, suggestedOrder } from '@/lib/domain/delivery/suggested-order';
import { unitMassG } from '@/lib/domain/delivery/supplier-unit';
import { siteNeed } from '@/lib/domain/need/site-need';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { digBy } from '@/lib/domain/recipe/dig-by';
import { seasonServed } from '../ground/holding-need';
import { readGroundNeed, seasonsFrom } from '../ground/read-ground-need';
import { manureAsked } from '../ground/read-site-need';
import { loadMassG } from '@/lib/domain/quantity/load-mass';
import { query } from '../operation';
import { siteAsked } from '../site/site-asked';
import { titledLoad } from '../suppliers/read-suppliers';
import { type OldHeap, readOldHeaps } from './old-heaps';

const asked = z.object({
  siteId: z.uuid().nullish().catch(null),
  season: z.coerce.number().int().nullish().catch(null),
  materialKey: z.string().max(40).nullish().catch(null),
});

type Ground = Awaited<ReturnType<typeof readGroundNeed>>;

/** What stands against a need: what lies on old heaps, at least and at most, and what is on order [g]. */
type Against = { readonly leftLeastG: number; readonly leftMostG: number; readonly onOrderG: number };

/**
 * What to order for a season: what the ground needs, less what is left on old heaps and what is on order, as a range; then in
 * each supplier's own units. Manure is reckoned in whole barrow-loads as each holding would book them; straw by the recipes.
 */
export const readOrder = query({
  name: 'read-order',
  allow: canRunSociety,
  input: asked,
  read: async (context, input) => {
    const { db, scope, now, today } = context;
    const { sites, site } = await siteAsked(context, input.siteId);
    const seasons = seasonsFrom(today);
    const [first] = seasons;
    const season = seasons.find((one) => one === input.season) ?? first;
    const common = { today, season, seasons, units: scope.units };
    if (!site) return { ...common, site: null };
    const [ground, all, suppliers] = await Promise.all([
      readGroundNeed(context, site.id),
      deliveriesOf(db, scope, now),
      suppliersOf(db, scope),
    ]);
    const here = all.filter((one) => one.siteId === site.id);
    const heaps = await readOldHeaps(context, here);
    const reckoned = manureAsked(input.materialKey);
    const isStraw = input.materialKey === 'straw';
    const serves = isStraw ? servesStraw : servesTurns;
    // What lies there now is counted for the season at hand alone: by the next it is used, or older by a year.
    const against = (year: number): Against => ({
      ...massOf(year === first ? heaps.filter((one) => serves(one.material.key) && !one.isDoubted) : []),
      onOrderG: coming(here, year, serves).reduce((sum, one) => sum + massComing(one), 0),
    });
    const material = isStraw ? strawOf() : reckoned;
    const needIn = (year: number) => (isStraw ? strawNeedG(ground, year) : manureNeedG(ground, year, material));
    const wantedIn = (year: number) => stillWanted({ needG: needIn(year), ...against(year) });
    const offers = suppliers.flatMap(({ id, name, loads }) =>
      loads.filter(({ materialKey }) => serves(materialKey)).map((load) => ({ supplierId: id, supplier: name, load })),
    );
    return {
      ...common,
      site: { id: site.id, name: site.name },
      sites: sites.map(({ id, name }) => ({ id, name })),
      material,
      materials: [...materials.filter(({ feedsTurns }) => feedsTurns), strawOf()].map(({ key, name }) => ({
        key,
        name,
      })),
      isStraw,
      barrowLoadG: barrowLoadG(ground, material),
      need: needIn(season),
      ...against(season),
      wanted: wantedIn(season),
      outlook: seasons.map((year) => ({
        season: year,
        needG: needIn(year),
        ...against(year),
        wanted: wantedIn(year),
      })),
      offers: offers.map(({ load, ...whose }) => {
        const titled = titledLoad(load);
        const one = { key: load.materialKey, densityGPerL: titled.usualGPerL };
        const unit = unitOf(load, titled.usualGPerL, barrowLoadG(ground, one));
        return { ...whose, load: titled, ...unit, order: suggestedOrder(wantedIn(season), unit) };
      }),
      heaps,
      planned: afterEach(needIn(season), against(season), coming(here, season, serves)),
      digBy: digBy(ground.recipes, season, today),
    };
  },
});

type Reckoned = { readonly key: string; readonly densityGPerL: number };

const servesTurns = (materialKey: string) => materialOf(materialKey)?.feedsTurns ?? false;
const servesStraw = (materialKey: string) => materialKey === 'straw';

function strawOf() {
  const straw = materialOf('straw');
  if (!straw) throw new Error('the catalogue lacks straw');
  return straw;
}

// As each holding would book it: rounded up to whole loads, holding by holding.
function manureNeedG(ground: Ground, season: number, material: Reckoned): number {
  const dressing = ground.dressingWith(material);
  return siteNeed(ground.holdingsIn(season, dressing)).loads * loadMassG(dressing);
}

function strawNeedG(ground: Ground, season: number): number {
  const { strewn } = siteNeed(ground.holdingsIn(season, ground.dressingWith(manureAsked(null))));
  return strewn.find(({ key }) => key === 'straw')?.massG ?? 0;
}

function barrowLoadG(ground: Ground, material: Reckoned): number {
  return loadMassG(ground.dressingWith(material));
}

function unitOf(load: SupplierLoadRecord, densityGPerL: number, loadG: number) {
  return { unitG: unitMassG(load.of, densityGPerL), priceMinor: load.priceMinor, barrowLoadG: loadG };
}

function massOf(heaps: readonly OldHeap[]) {
  const sum = (of: (heap: OldHeap) => number) => heaps.reduce((all, heap) => all + of(heap) * heap.barrowLoadG, 0);
  return { leftLeastG: sum(({ leastLoads }) => leastLoads), leftMostG: sum(({ mostLoads }) => mostLoads) };
}

/** What is on its way for a season, in the order in which it comes: what is settled has manured its beds already. */
function coming(all: readonly DeliveryRecord[], season: number, serves: (materialKey: string) => boolean) {
  return all
    .filter(({ state }) => state !== 'settled' && state !== 'called_off')
    .filter(({ materialKey, arrivesOn }) => serves(materialKey) && seasonServed(arrivesOn) === season)
    .toSorted((a, b) => a.arrivesOn.localeCompare(b.arrivesOn) || a.id.localeCompare(b.id));
}

function massComing({ heapLoads, expectedLoads, ...size }: DeliveryRecord): number {
  return (heapLoads ?? expectedLoads) * loadMassG(size);
}

/** What each delivery on its way leaves to be found, one after the other. */
function afterEach(needG: number, { leftLeastG, leftMostG }: Against, deliveries: readonly DeliveryRecord[]) {
  let onOrderG = 0;
  return deliveries.map((one): PlannedDelivery => {
    const massG = massComing(one);
    onOrderG += massG;
    const short = stillWanted({ needG, leftLeastG, leftMostG, onOrderG });
    const { id, name, state, arrivesOn, materialKey } = one;
    return { ...{ id, name, state, arrivesOn, massG, short }, material: materialOf(materialKey)?.name ?? materialKey };
  });
}

type PlannedDelivery = Pick<DeliveryRecord, 'id' | 'name' | 'state' | 'arrivesOn'> & {
  readonly massG: number;
  readonly material: string;
  readonly short: MassBetween;
};
