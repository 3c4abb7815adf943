import { pathDistances } from '../catalogue/path-distances';
import { cornersOnSite, type PlacedGround } from '../ground/nearness';
import { middle, type Polygon } from '../ground/polygon';
import type { Point } from '../ground/segment';
import { type Access, accessOf } from './access';
import { checkedPoint, drawnPaths, type SitePath } from './drawn-paths';
import { joinedGroups } from './joined-groups';
import { jointsOf, onWholeCm } from './joints';
import { type PathNode, pathNodes } from './path-nodes';
import type { Piece } from './piece';

/** Where one leaves the paths, and how far it is from there, straight over the ground [whole cm]. */
export type NodeAccess = { readonly node: number; readonly overGroundCm: number };

export type DropPoint = { readonly id: string; readonly at: Point };

/** A site as a barrow sees it. Plain data: it may be kept and sent. */
export type PathNetwork = {
  /** None on a site whose paths are not drawn. */
  readonly nodes: readonly PathNode[];
  /** Plots that are measured, each with its middle, and its access from each part of the paths, in the order of the parts. */
  readonly plots: readonly { readonly id: string; readonly middle: Point; readonly accesses: readonly NodeAccess[] }[];
  /** Plots that nobody measured: they lie nowhere on the site. */
  readonly notMeasured: readonly string[];
  /** With the access from the nearest part of the paths; null where none are drawn. */
  readonly dropPoints: readonly (DropPoint & { readonly access: NodeAccess | null })[];
};

/**
 * The paths of a site as a network, with its plots and drop points on it.
 *
 * Method: paths are joined where they cross or touch, and where one ends within a metre of another. A plot is reached from
 * the nearest point of the paths to its boundary, and from there straight over the ground; where the paths fall apart into
 * parts that are not joined, from the nearest point of each part, since a heap lies on one of them.
 *
 * @param paths       as drawn, in whole centimetres of the site; none where nothing is drawn
 * @param plots       ids differ; the ground in its frame, or null where it is not measured
 * @param dropPoints  ids differ; in whole centimetres of the site
 * @returns           lengths in whole centimetres, each rounded once; the same network however the lists are ordered, but
 *                    that plots and drop points stand in the order given
 * @throws RangeError as `drawnPaths`, and on an id that stands twice
 * @source            common practice; the tolerances are rows of `pathDistances`
 * @example           one path 0, 0 → 1000, 0; a plot from 400, 200 to 600, 400 → its access at 500, 0, 200 cm over the ground
 */
export function networkOf(given: {
  readonly paths: readonly SitePath[];
  readonly plots: readonly ({ readonly id: string } & PlacedGround)[];
  readonly dropPoints: readonly DropPoint[];
}): PathNetwork {
  checkIds(given.plots);
  checkIds(given.dropPoints);
  const drawn = drawnPaths(given.paths);
  const { pieces } = drawn;
  const joints = jointsOf(drawn, pathDistances.join.cm);
  const parts = joinedGroups(
    pieces.length,
    joints.map(({ from, to }) => [from.piece, to.piece]),
  );
  const byPart = piecesByPart(parts);
  const plots = given.plots.flatMap((plot) => placed(plot, pieces, byPart));
  const drops = given.dropPoints.map(({ id, at }) => ({ id, at, access: accessOfPoint(checkedPoint(at), pieces) }));
  const stations = [
    ...plots.flatMap(({ accesses }) => accesses.map(({ station }) => station)),
    ...drops.flatMap(({ access }) => (access ? [access.station] : [])),
  ];
  const { nodes, nodeAt } = pathNodes(pieces, joints, parts, stations);
  const toNode = ({ station, overGroundCm }: Access): NodeAccess => ({ node: nodeAt(station), overGroundCm });
  return {
    nodes,
    plots: plots.map((plot) => ({ ...plot, accesses: plot.accesses.map(toNode) })),
    notMeasured: given.plots.filter((plot) => !cornersOnSite(plot)).map(({ id }) => id),
    dropPoints: drops.map((drop) => ({ ...drop, access: drop.access && toNode(drop.access) })),
  };
}

type PlacedPlot = { readonly id: string; readonly middle: Point; readonly accesses: readonly Access[] };

function placed(
  plot: { readonly id: string } & PlacedGround,
  pieces: readonly Piece[],
  byPart: readonly (readonly number[])[],
): PlacedPlot[] {
  const corners: Polygon | undefined = cornersOnSite(plot)?.map((corner) => checkedPoint(onWholeCm(corner)));
  if (!corners) return [];
  if (corners.length < 3) throw new RangeError('a plot has three corners or more');
  const accesses = byPart.map((among) => accessOf(corners, pieces, among, pathDistances.frontage.cm));
  return [{ id: plot.id, middle: middle(corners), accesses }];
}

function accessOfPoint(at: Point, pieces: readonly Piece[]): Access | null {
  const all = pieces.map((_, piece) => piece);
  return all.length ? accessOf([at], pieces, all, 0) : null;
}

function piecesByPart(parts: readonly number[]): number[][] {
  const byPart: number[][] = [];
  for (const [piece, part] of parts.entries()) (byPart[part] ??= []).push(piece);
  return byPart;
}

function checkIds(things: readonly { readonly id: string }[]): void {
  if (new Set(things.map(({ id }) => id)).size < things.length)
    throw new RangeError('a plot or drop point stands twice');
}
