export type Point = { readonly xCm: number; readonly yCm: number };

/** Which side of the line from a through b a point lies on: −1, 0 or 1. Exact on whole centimetres. */
export function side(a: Point, b: Point, p: Point): number {
  // The sign of twice the area of the triangle a, b, p.
  return Math.sign((b.xCm - a.xCm) * (p.yCm - a.yCm) - (b.yCm - a.yCm) * (p.xCm - a.xCm));
}

/** Whether a point lies on a segment, its ends included. Exact on whole centimetres. */
export function onSegment(a: Point, b: Point, p: Point): boolean {
  return side(a, b, p) === 0 && between(p.xCm, a.xCm, b.xCm) && between(p.yCm, a.yCm, b.yCm);
}

/** Whether two segments cross each other between their ends. Exact on whole centimetres. */
export function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Whether two segments cross or touch. Exact on whole centimetres. */
export function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (cross(a, b, c, d)) return true;
  return onSegment(a, b, c) || onSegment(a, b, d) || onSegment(c, d, a) || onSegment(c, d, b);
}

/** How far along a segment its point nearest to another lies: 0 at a, 1 at b; 0 where both ends are one. */
export function nearestShare(a: Point, b: Point, p: Point): number {
  const [dx, dy] = [b.xCm - a.xCm, b.yCm - a.yCm];
  return Math.max(0, Math.min(1, ((p.xCm - a.xCm) * dx + (p.yCm - a.yCm) * dy) / (dx * dx + dy * dy || 1)));
}

/** How far along the segment from a to b it crosses the line through c and d: 0 at a, 1 at b. They are not parallel. */
export function crossingShare(a: Point, b: Point, c: Point, d: Point): number {
  const [dx, dy] = [d.xCm - c.xCm, d.yCm - c.yCm];
  const above = (c.xCm - a.xCm) * dy - (c.yCm - a.yCm) * dx;
  return above / ((b.xCm - a.xCm) * dy - (b.yCm - a.yCm) * dx);
}

/** The point a share of the way from a to b, not rounded. */
export function pointAlong(a: Point, b: Point, share: number): Point {
  return { xCm: a.xCm + share * (b.xCm - a.xCm), yCm: a.yCm + share * (b.yCm - a.yCm) };
}

/** The distance of a point from a segment [cm, not rounded]. */
export function distanceToSegment(a: Point, b: Point, p: Point): number {
  return distanceBetween(pointAlong(a, b, nearestShare(a, b, p)), p);
}

/** The distance between two points [cm, not rounded]. */
export function distanceBetween(a: Point, b: Point): number {
  return Math.hypot(a.xCm - b.xCm, a.yCm - b.yCm);
}

function between(value: number, one: number, other: number): boolean {
  return value >= Math.min(one, other) && value <= Math.max(one, other);
}
