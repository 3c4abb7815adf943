import { type Frame, toSite } from './frame';
import type { Point, Polygon } from './polygon';

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

function cornersOnSite({ frame, polygon }: PlacedGround): Point[] | null {
  return frame && polygon ? polygon.map((point) => toSite(frame, point)) : null;
}

function reach(corners: readonly Point[], sides: readonly Point[]): number[] {
  return corners.flatMap((corner) =>
    sides.map((from, at) => toSide(corner, from, sides[(at + 1) % sides.length] ?? from)),
  );
}

function toSide(point: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.xCm - from.xCm, to.yCm - from.yCm];
  const length = dx * dx + dy * dy;
  const along = length === 0 ? 0 : ((point.xCm - from.xCm) * dx + (point.yCm - from.yCm) * dy) / length;
  const at = Math.max(0, Math.min(1, along));
  return Math.hypot(point.xCm - from.xCm - at * dx, point.yCm - from.yCm - at * dy);
}
