import { pathDistances } from '../catalogue/path-distances';
import { distanceBetween, type Point } from '../ground/segment';
import { wholeFrom } from '../quantity/checked';
import type { NodeAccess, PathNetwork } from './network';
import { shortestWays } from './shortest-ways';

/** How a plot is reached from a heap, for words on a screen. */
export type WayCode =
  /** Along the paths, and no farther than a few metres from them. */
  | 'by-path'
  /** No path reaches it: the rest is straight over the ground. */
  | 'over-ground'
  /** A path reaches it, but one that is not joined to those of the heap: the rest is straight over the ground. */
  | 'paths-not-joined'
  /** No paths are drawn: all of it is straight, from the plot's middle. */
  | 'straight';

export type PlotWay = {
  readonly id: string;
  readonly loads: number;
  readonly wayCm: number;
  /** What of the way is straight over the ground. */
  readonly overGroundCm: number;
  /** loads × way. */
  readonly loadedCm: number;
  readonly code: WayCode;
};

/** Where a heap may lie: on a node of the paths, so far over the ground from one, or anywhere where no paths are drawn. */
export type HeapSpot = { readonly at: Point; readonly access: NodeAccess | null };

/**
 * The way from a heap to each plot.
 *
 * Method: over the ground to the paths, where the heap lies off them; the shortest way along them; over the ground to the plot.
 * The way back is taken to be as long as the way there.
 *
 * @param loads  loads of each plot; whole numbers ≥ 0 [barrow-loads]; a plot that is not named has none
 * @returns      one row for each measured plot, in the order of the network, in whole centimetres
 * @throws RangeError as `loadsOf`
 * @source       as `shortestWays`
 * @example      a heap at one end of a path of 10 m, a plot 2 m from the other end, 3 loads → way 1200, loaded 3600
 */
export function waysFrom(network: PathNetwork, loads: ReadonlyMap<string, number>, spot: HeapSpot): PlotWay[] {
  const { access } = spot;
  const along = access
    ? shortestWays(
        network.nodes.map(({ ways }) => ways),
        access.node,
      )
    : [];
  const part = access && network.nodes[access.node]?.part;
  return network.plots.map((plot) => {
    const { id, middle, accesses } = plot;
    const there = part === null || part === undefined ? undefined : accesses[part];
    const overGroundCm = there
      ? (access?.overGroundCm ?? 0) + there.overGroundCm
      : Math.round(distanceBetween(spot.at, middle));
    const wayCm = overGroundCm + (there ? (along[there.node] ?? 0) : 0);
    const count = loadsOf(loads, id);
    return { id, loads: count, wayCm, overGroundCm, loadedCm: count * wayCm, code: codeOf(there, accesses) };
  });
}

/**
 * The loads of a plot.
 *
 * @throws RangeError on a number of loads that is not whole or below 0
 * @example loadsOf(new Map([['a', 3]]), 'b') → 0
 */
export function loadsOf(loads: ReadonlyMap<string, number>, id: string): number {
  return wholeFrom(0, loads.get(id) ?? 0);
}

function codeOf(there: NodeAccess | undefined, accesses: readonly NodeAccess[]): WayCode {
  const reachCm = pathDistances.reach.cm;
  if (!there) return 'straight';
  if (there.overGroundCm <= reachCm) return 'by-path';
  return accesses.some(({ overGroundCm }) => overGroundCm <= reachCm) ? 'paths-not-joined' : 'over-ground';
}
