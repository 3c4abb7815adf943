import type { Point } from '../ground/segment';

/** An order of points that depends on nothing else: farther left first, then farther up. */
export function byPlace(one: Point, other: Point): number {
  return one.xCm - other.xCm || one.yCm - other.yCm;
}
