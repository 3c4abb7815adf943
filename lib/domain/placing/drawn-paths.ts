import { distanceBetween, type Point } from '../ground/segment';
import { wholeFrom } from '../quantity/checked';
import { byPlace } from './by-place';
import { laidOnce } from './laid-once';
import type { Piece, Stretch } from './piece';

/** A path of a site as it was drawn, on whole centimetres, and how much of it a lorry can drive. */
export type SitePath = { readonly points: readonly Point[]; readonly lorry: 'whole' | 'none' | Stretch };

/** All paths of a site: their straight pieces, in a fixed order, and where they end. */
export type DrawnPaths = { readonly pieces: readonly Piece[]; readonly ends: readonly Point[] };

// Ten thousand metres either way: products of two such distances are still exact.
export const farthestCm = 1_000_000;

/**
 * The straight pieces of a site's paths.
 *
 * Method: the length of a piece is rounded here, once, to the whole centimetre; all that is measured along it afterwards is
 * whole, so that sums of ways are exact and two ways are equal or not. What was drawn twice is there once.
 *
 * @param paths  two points or more each, in whole centimetres of the site; a stretch that a lorry can drive begins on its path
 * @returns      pieces of 1 cm or more that share no stretch, the same however the paths are listed and whichever way they were drawn
 * @throws RangeError on a point off the whole centimetre or 10 km away, a path without length, a stretch that runs backwards
 * @source       exact arithmetic
 * @example      one path 0, 0 → 300, 400 → 300, 500 → pieces of 500 and 100 cm
 */
export function drawnPaths(paths: readonly SitePath[]): DrawnPaths {
  const drawn = paths.map((path) => ({ ...path, points: cornersOf(path) }));
  const ends = drawn.flatMap(({ points }) => [points[0], points.at(-1)] as Point[]);
  return {
    pieces: laidOnce(drawn.flatMap(piecesOf)),
    ends: [...new Map(ends.map((end) => [keyOf(end), end])).values()].sort(byPlace),
  };
}

/** @throws RangeError on a point off the whole centimetre, or ten kilometres away */
export function checkedPoint(point: Point): Point {
  for (const value of [point.xCm, point.yCm])
    if (!Number.isSafeInteger(value) || Math.abs(value) > farthestCm)
      throw new RangeError(`a point of a site lies on a whole centimetre within 10 km: ${value}`);
  return point;
}

function cornersOf({ points }: SitePath): Point[] {
  const corners = points.filter((point, at) => keyOf(checkedPoint(point)) !== keyOf(points[at - 1]));
  if (corners.length < 2) throw new RangeError('a path has a length');
  return corners;
}

function piecesOf({ lorry, points }: SitePath): Piece[] {
  let startCm = 0;
  const [fromCm, toCm] = lorry === 'none' || lorry === 'whole' ? [0, 0] : [lorry.fromCm, lorry.toCm];
  wholeFrom(wholeFrom(0, fromCm), toCm);
  const pieces = points.slice(1).map((to, at) => {
    const from = points[at] as Point;
    const lengthCm = Math.round(distanceBetween(from, to));
    const here = lorry === 'whole' ? { fromCm: 0, toCm: lengthCm } : { fromCm: fromCm - startCm, toCm: toCm - startCm };
    startCm += lengthCm;
    return facing(from, to, lengthCm, lorry === 'none' ? [] : within(here, lengthCm));
  });
  if (fromCm > startCm) throw new RangeError(`a stretch begins on its path of ${startCm} cm: ${fromCm}`);
  return pieces;
}

function within({ fromCm, toCm }: Stretch, lengthCm: number): Stretch[] {
  if (toCm < 0 || fromCm > lengthCm) return [];
  return [{ fromCm: Math.max(0, fromCm), toCm: Math.min(lengthCm, toCm) }];
}

function facing(from: Point, to: Point, lengthCm: number, lorry: readonly Stretch[]): Piece {
  if (byPlace(from, to) < 0) return { a: from, b: to, lengthCm, lorry };
  const turned = lorry.map(({ fromCm, toCm }) => ({ fromCm: lengthCm - toCm, toCm: lengthCm - fromCm }));
  return { a: to, b: from, lengthCm, lorry: turned };
}

function keyOf(point: Point | undefined): string {
  return point ? `${point.xCm},${point.yCm}` : '';
}
