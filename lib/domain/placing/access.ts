import { holds, middle, type Polygon, sides } from '../ground/polygon';
import {
  cross,
  crossingShare,
  distanceBetween,
  distanceToSegment,
  nearestShare,
  type Point,
  pointAlong,
} from '../ground/segment';
import { byPlace } from './by-place';
import type { Piece } from './piece';
import { onWholeCm, type Station } from './joints';

/** Where one leaves the paths for a plot, and how far it is from there, straight over the ground [whole cm]. */
export type Access = { readonly station: Station; readonly overGroundCm: number };

type Spot = Access & { readonly at: Point; readonly toMiddleCm2: number };

/**
 * Where one leaves the paths for a plot: the nearest point of them to its boundary.
 *
 * Method: on each piece, the nearest point is one of its ends, faces a corner, or lies where it crosses the boundary; beside
 * these, the point nearest to the plot's middle is tried, since along a frontage many are equally near. Of those that are
 * nearest to within slackCm, the one nearest to the middle is taken; then farther left, then farther up.
 *
 * @param plot     its corners on whole centimetres of the site; one alone is a point
 * @param among    which pieces; one or more
 * @param slackCm  whole number ≥ 0 [cm]
 * @returns        overGroundCm is 0 where a path runs on to the plot
 * @source         plane geometry
 * @example        a plot of 10 × 10 m whose side lies 2 m from a long path → opposite its middle, 200 cm over the ground
 */
export function accessOf(plot: Polygon, pieces: readonly Piece[], among: readonly number[], slackCm: number): Access {
  const centre = middle(plot);
  const spots = nearby(plot, centre, pieces, among, slackCm).flatMap((piece) => spotsOn(plot, centre, pieces, piece));
  const leastCm = spots.reduce((least, { overGroundCm }) => Math.min(least, overGroundCm), Number.POSITIVE_INFINITY);
  const { station, overGroundCm } = spots
    .filter((spot) => spot.overGroundCm <= leastCm + slackCm)
    .reduce((best, spot) => (isBefore(spot, best) ? spot : best));
  return { station, overGroundCm };
}

// No point of a plot lies farther from its middle than its farthest corner: pieces beyond that need no closer look.
function nearby(
  plot: Polygon,
  centre: Point,
  pieces: readonly Piece[],
  among: readonly number[],
  slackCm: number,
): number[] {
  const toCentre = among.map((at) => {
    const { a, b } = pieces[at] as Piece;
    return distanceToSegment(a, b, centre);
  });
  const nearestCm = toCentre.reduce((least, cm) => Math.min(least, cm), Number.POSITIVE_INFINITY);
  const radiusCm = Math.max(...plot.map((corner) => distanceBetween(corner, centre)));
  // A centimetre for the rounding of either.
  return among.filter((_, at) => (toCentre[at] ?? 0) <= nearestCm + 2 * radiusCm + slackCm + 2);
}

function spotsOn(plot: Polygon, centre: Point, pieces: readonly Piece[], piece: number): Spot[] {
  const { a, b, lengthCm } = pieces[piece] as Piece;
  const crossings = sides(plot).filter(([c, d]) => cross(a, b, c, d));
  const shares = [
    0,
    1,
    nearestShare(a, b, centre),
    ...plot.map((corner) => nearestShare(a, b, corner)),
    ...crossings.map(([c, d]) => crossingShare(a, b, c, d)),
  ];
  return shares.map((share) => {
    const atCm = Math.round(share * lengthCm);
    const point = pointAlong(a, b, atCm / lengthCm);
    const at = onWholeCm(point);
    return {
      station: { piece, atCm },
      overGroundCm: Math.round(distanceTo(plot, point)),
      at,
      // Squared, so that it is exact.
      toMiddleCm2: (at.xCm - centre.xCm) ** 2 + (at.yCm - centre.yCm) ** 2,
    };
  });
}

function distanceTo(plot: Polygon, point: Point): number {
  if (holds(plot, point)) return 0;
  return Math.min(...sides(plot).map(([c, d]) => distanceToSegment(c, d, point)));
}

function isBefore(one: Spot, other: Spot): boolean {
  const order = one.toMiddleCm2 - other.toMiddleCm2 || byPlace(one.at, other.at);
  return order < 0 || (order === 0 && one.overGroundCm < other.overGroundCm);
}
