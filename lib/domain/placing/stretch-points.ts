import { distanceBetween, type Point, pointAlong } from '../ground/segment';
import type { Stretch } from './piece';

/**
 * The length of a path along its line.
 *
 * @param points  in whole centimetres
 * @returns       each piece rounded to the whole centimetre, as `drawnPaths` measures it [cm]; 0 for less than two points
 * @example       0, 0 → 300, 400 → 300, 500 → 600
 */
export function pathLengthCm(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, to, at) => sum + Math.round(distanceBetween(points[at] as Point, to)), 0);
}

/**
 * The part of a path's line that a stretch of it covers, to be drawn.
 *
 * @param points   in whole centimetres, in the order in which the path was begun
 * @param stretch  whole numbers ≥ 0 from there [cm]; what lies beyond the path's end is left out
 * @returns        the ends of the stretch and the corners between them, not rounded; none where it lies beyond the path
 * @source         plane geometry
 * @example        0, 0 → 500, 0 → 500, 800, from 200 to 700 → 200, 0; 500, 0; 500, 200
 */
export function stretchPoints(points: readonly Point[], { fromCm, toCm }: Stretch): Point[] {
  let startCm = 0;
  const part: Point[] = [];
  for (const [at, to] of points.slice(1).entries()) {
    const from = points[at] as Point;
    const lengthCm = Math.round(distanceBetween(from, to));
    const [first, last] = [Math.max(0, fromCm - startCm), Math.min(lengthCm, toCm - startCm)];
    startCm += lengthCm;
    if (first >= last) continue;
    if (part.length === 0) part.push(pointAlong(from, to, first / lengthCm));
    part.push(pointAlong(from, to, last / lengthCm));
  }
  return part;
}
