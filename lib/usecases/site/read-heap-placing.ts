import 'server-only';
import { z } from 'zod';
import { deliveriesOf, type DeliveryRecord } from '@/lib/data/delivery';
import { holdingsOfMember } from '@/lib/data/holding';
import { mayTake } from '@/lib/domain/delivery/steps';
import { networkOf, type PathNetwork } from '@/lib/domain/placing/network';
import { type Allowed, type HeapAt, type HeapPlacing, placeHeap } from '@/lib/domain/placing/place-heap';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canSeeLoadsByPlot, type LoadsBasis } from '@/lib/domain/policy/placing';
import { loadMassG } from '@/lib/domain/quantity/load-mass';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { drawnSite } from './drawn-site';
import { loadsNeeded, loadsOfDelivery, type PlotLoads } from './loads-by-plot';
import { siteAsked } from './site-asked';

/** How many deliveries are offered to choose from, the newest first. */
const deliveriesShown = 12;

const asked = z.object({
  siteId: z.uuid().nullish().catch(null),
  /** A delivery, or what the ground needs. */
  loads: z
    .union([z.literal('need'), z.uuid()])
    .nullish()
    .catch(null),
  allowed: z.enum(['lorry', 'anywhere', 'drop-points']).nullish().catch(null),
  /** The drop point whose ways are shown; the best place where none is named. */
  from: z.uuid().nullish().catch(null),
});

/** A plot as it is reached from a heap; loads are null where they are not the viewer's to see. */
export type WayLine = Omit<HeapAt['plots'][number], 'loads' | 'loadedCm'> & {
  readonly number: string;
  readonly mine: boolean;
  readonly loads: number | null;
  readonly loadedCm: number | null;
};

/**
 * Where on a site a heap is wheeled from with the fewest loaded metres, and how the drop points there are compare: worked
 * out from the paths as they are drawn and the loads of a delivery, or those that the ground asks for. No names.
 */
export const readHeapPlacing = query({
  name: 'read-heap-placing',
  allow: canEnter,
  input: asked,
  read: async (context, input) => {
    const { db, scope, today } = context;
    const { sites, site } = await siteAsked(context, input.siteId);
    const common = { today, units: scope.units, runs: canRunSociety(scope) };
    if (!site) return { ...common, site: null };
    const [mine, deliveries] = await Promise.all([
      holdingsOfMember(db, scope, scope.memberId, today),
      deliveriesAt(context, site.id),
    ]);
    const own = new Set(mine.flatMap((holding) => holding.plots.map(({ id }) => id)));
    const { plots, plan, paths, dropPoints } = await drawnSite(context, site.id, own);
    const { loads, basis, delivery, season, materialName } = await loadsFor(context, deliveries, input.loads);
    const allowed: Allowed = input.allowed ?? (paths.some(({ lorry }) => lorry !== 'none') ? 'lorry' : 'anywhere');
    const network = networkOf({ paths, plots, dropPoints });
    const here = new Map([...loads.byPlot].filter(([id]) => plots.some((plot) => plot.id === id)));
    const placing = placeHeap({ network, loads: here, allowed });
    const sees = canSeeLoadsByPlot(scope, { basis, lotIsOut: Boolean(delivery?.lot?.bytesHex) });
    const from = placing.dropPoints.find(({ id }) => id === input.from) ?? null;
    const numbers = new Map(plots.map(({ id, number }) => [id, number]));
    const linesFrom = (heap: HeapAt) => heap.plots.map((way) => lineOf(way, numbers, own, sees));
    const heap = from ?? placing.best;
    return {
      ...common,
      site: { id: site.id, name: site.name, northCentideg: site.northCentideg },
      sites: sites.map(({ id, name }) => ({ id, name })),
      ...{ plan, paths, dropPoints, allowed, sees },
      deliveries: deliveries.map(({ id, name, arrivesOn }) => ({ id, name, arrivesOn })),
      basis: { kind: basis, season, materialName, delivery: delivery && shownOf(delivery) },
      loads: { here: sum(here), elsewhere: sum(loads.byPlot) - sum(here), nowhere: loads.nowhere },
      placing: shownPlacing(placing, linesFrom),
      fromId: from?.id ?? null,
      lines: heap ? linesFrom(heap) : [],
      leftOut: placing.leftOut.map(({ id, loads: count }) => ({
        number: numbers.get(id) ?? '',
        loads: sees || own.has(id) ? count : null,
      })),
      notMeasured: network.notMeasured.map((id) => numbers.get(id) ?? ''),
      parts: partsOf(network),
    };
  },
});

async function deliveriesAt({ db, scope, now }: ReadContext, siteId: string): Promise<DeliveryRecord[]> {
  return (await deliveriesOf(db, scope, now))
    .filter((one) => one.siteId === siteId && one.state !== 'called_off' && canSeeDelivery(scope, one))
    .slice(0, deliveriesShown);
}

type Found = {
  readonly loads: PlotLoads;
  readonly basis: LoadsBasis;
  readonly delivery: DeliveryRecord | null;
  readonly season: number | null;
  readonly materialName: string | null;
};

// Where nothing is named: the next heap to be tipped, if there is one.
async function loadsFor(
  context: ReadContext,
  deliveries: readonly DeliveryRecord[],
  wanted: string | null | undefined,
): Promise<Found> {
  const next = deliveries.filter(({ state }) => mayTake('tip-at', state) && state !== 'planned');
  // Of what comes on one lorry, the heap that is wheeled by the barrow.
  const coming = next.findLast(({ loadUnit }) => loadUnit === 'barrow') ?? next.at(-1);
  const delivery = wanted === 'need' ? null : wanted ? deliveries.find(({ id }) => id === wanted) : (coming ?? null);
  if (delivery === undefined) throw new NotFound();
  if (!delivery) {
    const { season, materialName, ...loads } = await loadsNeeded(context);
    return { loads, basis: 'need', delivery, season, materialName };
  }
  const basis = ['shared', 'collecting', 'settled'].includes(delivery.state) ? 'shares' : 'bookings';
  return { loads: await loadsOfDelivery(context, delivery, basis), basis, delivery, season: null, materialName: null };
}

function shownOf({ id, name, state, dropPointId, ...size }: DeliveryRecord) {
  return { id, name, dropPointId, loadUnit: size.loadUnit, loadG: loadMassG(size), mayMove: mayTake('tip-at', state) };
}

function lineOf(
  { loads, loadedCm, ...way }: HeapAt['plots'][number],
  numbers: ReadonlyMap<string, string>,
  own: ReadonlySet<string>,
  sees: boolean,
): WayLine {
  const mine = own.has(way.id);
  const shown = sees || mine;
  const number = numbers.get(way.id) ?? '';
  return { ...way, number, mine, loads: shown ? loads : null, loadedCm: shown ? loadedCm : null };
}

/** The places without everybody's ways; of each, what the viewer's own plots have of it. */
function shownPlacing({ best, dropPoints, basis, proof, method }: HeapPlacing, linesFrom: (heap: HeapAt) => WayLine[]) {
  const without = <Heap extends HeapAt>(heap: Heap) => {
    const { plots: _, ...place } = heap;
    return { ...place, own: linesFrom(heap).filter(({ mine }) => mine) };
  };
  return { basis, proof, method, best: best && without(best), dropPoints: dropPoints.map(without) };
}

/** How many parts the paths fall into that are not joined to each other. */
function partsOf({ nodes }: PathNetwork): number {
  return new Set(nodes.map(({ part }) => part)).size;
}

function sum(loads: ReadonlyMap<string, number>): number {
  return [...loads.values()].reduce((all, count) => all + count, 0);
}
