import {
  cross,
  crossingShare,
  distanceToSegment,
  nearestShare,
  onSegment,
  type Point,
  pointAlong,
} from '../ground/segment';
import type { DrawnPaths } from './drawn-paths';
import type { Piece } from './piece';

/** A place on a piece of path, so far from its first end [whole cm]. */
export type Station = { readonly piece: number; readonly atCm: number };

/** Where one gets from one piece to another: at one and the same place, or over a gap that the drawing left. */
export type Joint = { readonly from: Station; readonly to: Station; readonly gapCm: number };

/**
 * Where the pieces of a site's paths are joined.
 *
 * Method: each pair is tried. Pieces are joined where they cross or touch, told exactly. An end of a path that stops short of another by no more than joinCm is joined to the nearest
 * point of it, and the gap is walked.
 *
 * @param joinCm  whole number ≥ 0 [cm]
 * @returns       joints on stations that are rounded to the whole centimetre, once
 * @source        exact arithmetic; the tolerance is that of the drawing
 * @example       0, 0 → 1000, 0 and 500, 60 → 500, 900 with 100 → one joint at 500 of the first, 60 cm apart
 */
export function jointsOf({ pieces, ends }: DrawnPaths, joinCm: number): Joint[] {
  const meetings = pieces.flatMap((one, i) => pieces.flatMap((_, j) => (j > i ? meetingsOf(pieces, i, j) : [])));
  return [...meetings, ...ends.flatMap((end) => gapsAt(end, pieces, joinCm))];
}

/** The place on a piece at a share of its length. */
function stationAt(pieces: readonly Piece[], piece: number, share: number): Station {
  return { piece, atCm: Math.round(share * (pieces[piece]?.lengthCm ?? 0)) };
}

/** Where on the site a station lies, on the whole centimetre. */
export function placeOf(pieces: readonly Piece[], { piece, atCm }: Station): Point {
  const { a, b, lengthCm } = pieces[piece] as Piece;
  return onWholeCm(pointAlong(a, b, atCm / lengthCm));
}

/** The nearest point on whole centimetres. */
export function onWholeCm({ xCm, yCm }: Point): Point {
  // Adding nothing makes a negative nothing a plain one.
  return { xCm: Math.round(xCm) + 0, yCm: Math.round(yCm) + 0 };
}

function meetingsOf(pieces: readonly Piece[], i: number, j: number): Joint[] {
  const [one, other] = [pieces[i] as Piece, pieces[j] as Piece];
  if (areApart(one, other)) return [];
  const at = (fromShare: number, toShare: number): Joint => ({
    from: stationAt(pieces, i, fromShare),
    to: stationAt(pieces, j, toShare),
    gapCm: 0,
  });
  const { a, b } = one;
  const { a: c, b: d } = other;
  if (cross(a, b, c, d)) return [at(crossingShare(a, b, c, d), crossingShare(c, d, a, b))];
  return [
    ...[a, b].filter((end) => onSegment(c, d, end)).map((end) => at(nearestShare(a, b, end), nearestShare(c, d, end))),
    ...[c, d].filter((end) => onSegment(a, b, end)).map((end) => at(nearestShare(a, b, end), nearestShare(c, d, end))),
  ];
}

function areApart({ a, b }: Piece, { a: c, b: d }: Piece): boolean {
  // The first end is never farther right.
  if (b.xCm < c.xCm || d.xCm < a.xCm) return true;
  return Math.max(a.yCm, b.yCm) < Math.min(c.yCm, d.yCm) || Math.max(c.yCm, d.yCm) < Math.min(a.yCm, b.yCm);
}

function gapsAt(end: Point, pieces: readonly Piece[], joinCm: number): Joint[] {
  const home = pieces.findIndex(({ a, b }) => onSegment(a, b, end));
  const { a, b } = pieces[home] as Piece;
  const from = stationAt(pieces, home, nearestShare(a, b, end));
  return pieces.flatMap((piece, at) => {
    const distanceCm = distanceToSegment(piece.a, piece.b, end);
    if (distanceCm > joinCm || onSegment(piece.a, piece.b, end)) return [];
    return [{ from, to: stationAt(pieces, at, nearestShare(piece.a, piece.b, end)), gapCm: Math.round(distanceCm) }];
  });
}
