import type { Point } from '../ground/segment';
import { byPlace } from './by-place';
import type { PathNetwork } from './network';
import { shortestWays } from './shortest-ways';
import { type HeapSpot, loadsOf, type PlotWay, waysFrom } from './ways-from';

/** Saved with each result, so that it can be worked out again by the same rule. */
const placingMethod = { name: '1-median of the paths', version: 1 } as const;

/** Where the heap may be tipped: anywhere on the paths, where a lorry can drive, or at the drop points that there are. */
export type Allowed = 'anywhere' | 'lorry' | 'drop-points';

/** A heap at one place: all that is wheeled from it. */
export type HeapAt = {
  readonly at: Point;
  /** Loads × way, summed over the plots, loaded barrows alone [whole cm]. */
  readonly loadedCm: number;
  /** There, loaded, and back, empty. */
  readonly walkedCm: number;
  readonly plots: readonly PlotWay[];
};

export type HeapPlacing = {
  /** Ways along the paths; or straight ones, where none are drawn. */
  readonly basis: 'paths' | 'straight-lines';
  /** The best place, with the drop point that lies there already, if one does. */
  readonly best: (HeapAt & { readonly dropPointId: string | null; readonly equallyGood: readonly Point[] }) | null;
  /** Why it is the best: no place between nodes can be better, or no other was asked about; or why there is none. */
  readonly proof: {
    readonly code: 'nodes-suffice' | 'all-compared' | 'no-loads' | 'no-place';
    readonly places: number;
  };
  /** The drop points that there are, the best first; overBestCm: loaded, beyond the best place. */
  readonly dropPoints: readonly (HeapAt & { readonly id: string; readonly overBestCm: number | null })[];
  /** Loads of plots that nobody measured: they are in no sum. */
  readonly leftOut: readonly { readonly id: string; readonly loads: number }[];
  readonly method: typeof placingMethod;
};

type Candidate = HeapSpot & { readonly loadedCm: number; readonly dropPointId: string | null };

/**
 * The place for a heap from which the loads are wheeled least: a 1-median of the path network, proven.
 *
 * Method: every allowed node is worked out, and the least taken. That is enough. Between two neighbouring nodes a distance s
 * apart from a and t − s from b, the way to a plot is the lesser of (s + its way from a) and (t − s + its way from b), since its
 * access is itself a node: as a function of s that is concave, and so is any sum of such ways times loads. A concave function
 * on a stretch is least at one of its ends. The ends of what a lorry can drive are nodes too, so where a lorry can drive is made
 * of whole stretches between nodes, and the same holds there. A place off the paths is never better than where it meets them.
 *
 * @param loads    loads of each plot, from the share-out; whole numbers ≥ 0 [barrow-loads]; plots not named have none
 * @param allowed  where paths are not drawn, only the drop points can be compared, by straight lines
 * @returns        whole centimetres; of equally good places one with a drop point, then the one farther left, then farther up
 * @throws RangeError on loads of a plot that is not of the network, on loads that are not whole, on sums beyond exactness
 * @source         S. Hakimi 1964, in R. Larson and A. Odoni, Urban Operations Research, 6.5.2: a median lies on a node
 * @example        a path of 100 m, 3 loads at one end, 1 at the other → the end with 3; 10,000 cm loaded, 20,000 cm walked
 */
export function placeHeap(given: {
  readonly network: PathNetwork;
  readonly loads: ReadonlyMap<string, number>;
  readonly allowed: Allowed;
}): HeapPlacing {
  const { network, loads, allowed } = given;
  const known = new Set([...network.plots.map(({ id }) => id), ...network.notMeasured]);
  for (const id of loads.keys()) if (!known.has(id)) throw new RangeError(`no such plot on the site: ${id}`);
  const heapAt = ({ at, access }: HeapSpot): HeapAt => {
    const plots = waysFrom(network, loads, { at, access });
    const loadedCm = exact(plots.reduce((sum, plot) => sum + plot.loadedCm, 0));
    return { at, loadedCm, walkedCm: exact(2 * loadedCm), plots };
  };
  const drops = network.dropPoints.map((drop) => ({ ...heapAt(drop), id: drop.id, access: drop.access }));
  const candidates = candidatesOf(network, loads, allowed, drops);
  const isNothing = network.plots.every(({ id }) => loadsOf(loads, id) === 0);
  const found = isNothing ? undefined : bestOf(candidates);
  return {
    basis: network.nodes.length ? 'paths' : 'straight-lines',
    best: found ? { ...heapAt(found), dropPointId: found.dropPointId, equallyGood: equalsOf(found, candidates) } : null,
    proof: { code: proofOf(isNothing, candidates, network, allowed), places: candidates.length },
    dropPoints: drops
      .map(({ access: _, ...drop }) => ({ ...drop, overBestCm: found ? drop.loadedCm - found.loadedCm : null }))
      .sort((one, other) => one.loadedCm - other.loadedCm || (one.id < other.id ? -1 : 1)),
    leftOut: network.notMeasured.map((id) => ({ id, loads: loadsOf(loads, id) })).filter((plot) => plot.loads > 0),
    method: placingMethod,
  };
}

function candidatesOf(
  network: PathNetwork,
  loads: ReadonlyMap<string, number>,
  allowed: Allowed,
  drops: readonly (HeapSpot & { readonly id: string; readonly loadedCm: number })[],
): Candidate[] {
  if (allowed === 'drop-points' || network.nodes.length === 0)
    return drops.map(({ at, access, id, loadedCm }) => ({ at, access, loadedCm, dropPointId: id }));
  const totals = loadedByNode(network, loads);
  const here = new Map(
    drops
      .toSorted((one, other) => (one.id < other.id ? 1 : -1))
      .flatMap(({ id, access }) => (access?.overGroundCm === 0 ? [[access.node, id] as const] : [])),
  );
  return network.nodes.flatMap(({ at, lorry }, node) => {
    if (allowed === 'lorry' && !lorry) return [];
    const access = { node, overGroundCm: 0 };
    return [{ at, access, loadedCm: totals[node] ?? 0, dropPointId: here.get(node) ?? null }];
  });
}

// One search from each node where loads leave the paths: ways are as long there as back.
function loadedByNode(network: PathNetwork, loads: ReadonlyMap<string, number>): number[] {
  const ways = network.nodes.map((node) => node.ways);
  const wanted = new Map<number, number>();
  const overGroundCm: number[] = [];
  for (const { id, accesses } of network.plots) {
    const count = loadsOf(loads, id);
    if (count === 0) continue;
    for (const [part, access] of accesses.entries()) {
      wanted.set(access.node, (wanted.get(access.node) ?? 0) + count);
      overGroundCm[part] = (overGroundCm[part] ?? 0) + count * access.overGroundCm;
    }
  }
  const totals = network.nodes.map(({ part }) => overGroundCm[part] ?? 0);
  for (const [from, count] of wanted)
    for (const [node, cm] of shortestWays(ways, from).entries())
      if (cm < Number.POSITIVE_INFINITY) totals[node] = exact((totals[node] ?? 0) + count * cm);
  return totals;
}

function bestOf(candidates: readonly Candidate[]): Candidate | undefined {
  return candidates.toSorted(
    (one, other) =>
      one.loadedCm - other.loadedCm ||
      Number(one.dropPointId === null) - Number(other.dropPointId === null) ||
      byPlace(one.at, other.at),
  )[0];
}

function equalsOf(best: Candidate, candidates: readonly Candidate[]): Point[] {
  return candidates.filter((one) => one !== best && one.loadedCm === best.loadedCm).map(({ at }) => at);
}

function proofOf(
  isNothing: boolean,
  candidates: readonly Candidate[],
  network: PathNetwork,
  allowed: Allowed,
): HeapPlacing['proof']['code'] {
  if (candidates.length === 0) return 'no-place';
  if (isNothing) return 'no-loads';
  return network.nodes.length && allowed !== 'drop-points' ? 'nodes-suffice' : 'all-compared';
}

function exact(sum: number): number {
  if (!Number.isSafeInteger(sum)) throw new RangeError(`ways and loads are too great to add up exactly: ${sum}`);
  return sum;
}
