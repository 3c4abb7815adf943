import { type Frame, toSite } from './frame';
import { type Polygon, sides } from './polygon';
import { distanceToSegment, type Point } from './segment';

/** Ground with its place on the site; null where nobody has measured it. */
export type PlacedGround = { readonly frame: Frame | null; readonly polygon: Polygon | null };

/**
 * How far apart two plots lie on the site, from boundary to boundary.
 *
 * Method: the least distance between a corner of one and a side of the other; plots of a site do not overlap, so that is
 * the least distance of all.
 *
 * @returns  centimetres, not rounded; null where one of them is not measured
 * @throws RangeError as `toSite`
 * @example  two plots 1 m apart → 100
 */
export function distanceCm(a: PlacedGround, b: PlacedGround): number | null {
  const [one, other] = [cornersOnSite(a), cornersOnSite(b)];
  if (!one || !other) return null;
  return Math.min(...reach(one, other), ...reach(other, one));
}

/** A plot's corners where they lie on the site [cm, not rounded]; null where nobody has measured it. */
export function cornersOnSite({ frame, polygon }: PlacedGround): Point[] | null {
  return frame && polygon ? polygon.map((point) => toSite(frame, point)) : null;
}

function reach(corners: readonly Point[], other: Polygon): number[] {
  return corners.flatMap((corner) => sides(other).map(([from, to]) => distanceToSegment(from, to, corner)));
}
