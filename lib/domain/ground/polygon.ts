import type { Footprint } from './footprint';
import { cross, distanceToSegment, meet, onSegment, type Point, side } from './segment';

export type { Point };

/** The corners of a plot in order, once round, in whole centimetres of its frame. */
export type Polygon = readonly Point[];

export type Axis = 'x' | 'y';
export type Edge = 'left' | 'right' | 'top' | 'bottom';

/**
 * The area of a polygon by the shoelace formula [cm²], rounded down to a whole one.
 *
 * @throws RangeError on fewer than three corners or a corner off the whole centimetre
 * @example a square of 10 m → 1,000,000
 */
export function polygonAreaCm2(polygon: Polygon): number {
  if (polygon.length < 3 || !polygon.every(({ xCm, yCm }) => Number.isSafeInteger(xCm) && Number.isSafeInteger(yCm)))
    throw new RangeError('a plot has three corners or more, on whole centimetres');
  return Math.floor(Math.abs(sides(polygon).reduce((sum, [a, b]) => sum + a.xCm * b.yCm - b.xCm * a.yCm, 0)) / 2);
}

/** Whether the boundary goes once round without crossing or touching itself, and encloses ground. */
export function isSimple(polygon: Polygon): boolean {
  const all = sides(polygon);
  if (all.length < 3 || polygonAreaCm2(polygon) === 0) return false;
  return all.every(([a, b], i) =>
    all.every(([c, d], j) => {
      if (i === j) return true;
      const neighbours = j === (i + 1) % all.length || i === (j + 1) % all.length;
      return neighbours ? !foldsBack(a, b, c, d) : !meet(a, b, c, d);
    }),
  );
}

/**
 * Cut a plot straight across at a distance along one of its axes.
 *
 * Method: Sutherland and Hodgman's clipping, once for either side; where the cut meets a slanting edge, the new corner is
 * rounded to a whole centimetre, the same for both sides.
 *
 * @param axis  'x': the cut runs at x = atCm; 'y': at y = atCm
 * @returns     the part before the cut and the part after it
 * @throws RangeError when the cut does not pass through the plot
 * @source      I. Sutherland, G. Hodgman, Communications of the ACM 17 (1974)
 * @example     cutPolygon(square of 10 m, 'y', 400) → 10 × 4 m and 10 × 6 m
 */
export function cutPolygon(polygon: Polygon, axis: Axis, atCm: number): [Polygon, Polygon] {
  const before = clip(polygon, (p) => atCm - along(p, axis), axis, atCm);
  const after = clip(polygon, (p) => along(p, axis) - atCm, axis, atCm);
  if (before.length < 3 || after.length < 3) throw new RangeError('the cut misses the plot');
  return [before, after];
}

/** The least and greatest distance of a plot's corners along an axis [cm]. */
export function extentCm(polygon: Polygon, axis: Axis): { leastCm: number; mostCm: number } {
  const all = polygon.map((point) => along(point, axis));
  return { leastCm: Math.min(...all), mostCm: Math.max(...all) };
}

/**
 * Which edge of a footprint lies outside a plot, and by how much.
 *
 * Method: an edge is outside when some of it lies beyond the boundary; how far is measured by drawing the edge inwards
 * until the whole footprint fits, or the footprint is used up.
 *
 * @returns null when the footprint lies within the plot or touches its boundary; else the edge and the excess [cm]
 * @example a bed from x = 900, 200 wide, in a plot 1000 wide → right, by 100 cm
 */
export function footprintOutside(bed: Footprint, plot: Polygon): { edge: Edge; byCm: number } | null {
  if (isWithin(bed, plot)) return null;
  const trims = (['left', 'right', 'top', 'bottom'] as const).map((edge) => ({
    edge,
    byCm: trimNeeded(bed, plot, edge),
  }));
  return trims.reduce((best, trim) => (trim.byCm < best.byCm ? trim : best));
}

function trimNeeded(bed: Footprint, plot: Polygon, edge: Edge): number {
  const most = edge === 'left' || edge === 'right' ? bed.widthCm : bed.lengthCm;
  // Bisection over whole centimetres: drawing an edge in never puts the bed outside again.
  let [fits, misfits] = [most, 0];
  while (fits - misfits > 1) {
    const half = Math.floor((fits + misfits) / 2);
    if (isWithin(trimmed(bed, edge, half), plot)) fits = half;
    else misfits = half;
  }
  return fits;
}

function trimmed(bed: Footprint, edge: Edge, byCm: number): Footprint {
  if (edge === 'left') return { ...bed, xCm: bed.xCm + byCm, widthCm: bed.widthCm - byCm };
  if (edge === 'right') return { ...bed, widthCm: bed.widthCm - byCm };
  if (edge === 'top') return { ...bed, yCm: bed.yCm + byCm, lengthCm: bed.lengthCm - byCm };
  return { ...bed, lengthCm: bed.lengthCm - byCm };
}

/** Whether all of a footprint lies in a plot; touching the boundary is inside. */
function isWithin(bed: Footprint, plot: Polygon): boolean {
  const corners = cornersOf(bed);
  if (!corners.every((corner) => holds(plot, corner))) return false;
  return sides(plot).every(([a, b]) => !passesThrough(a, b, bed));
}

/** The four corners of a footprint, once round. */
export function cornersOf({ xCm, yCm, widthCm, lengthCm }: Footprint): Point[] {
  const [right, below] = [xCm + widthCm, yCm + lengthCm];
  return [
    { xCm, yCm },
    { xCm: right, yCm },
    { xCm: right, yCm: below },
    { xCm, yCm: below },
  ];
}

/** The sides of a polygon, once round. */
export function sides(polygon: Polygon): [Point, Point][] {
  return polygon.flatMap((point, at) => {
    const next = polygon[(at + 1) % polygon.length];
    return next ? [[point, next] as [Point, Point]] : [];
  });
}

function clip(polygon: Polygon, inside: (point: Point) => number, axis: Axis, atCm: number): Point[] {
  const kept = sides(polygon).flatMap(([a, b]) => {
    const [from, to] = [inside(a), inside(b)];
    const crossing = from * to < 0 ? [crossingAt(a, b, axis, atCm)] : [];
    return from >= 0 ? [a, ...crossing] : crossing;
  });
  return kept.filter((point, at) => !same(point, kept[(at + 1) % kept.length]));
}

function crossingAt(a: Point, b: Point, axis: Axis, atCm: number): Point {
  const share = (atCm - along(a, axis)) / (along(b, axis) - along(a, axis));
  return axis === 'x'
    ? { xCm: atCm, yCm: Math.round(a.yCm + share * (b.yCm - a.yCm)) }
    : { xCm: Math.round(a.xCm + share * (b.xCm - a.xCm)), yCm: atCm };
}

function along(point: Point, axis: Axis): number {
  return axis === 'x' ? point.xCm : point.yCm;
}

function same(a: Point, b: Point | undefined): boolean {
  return a.xCm === b?.xCm && a.yCm === b.yCm;
}

// Neighbouring sides share a corner; they must not run back over each other.
function foldsBack(a: Point, b: Point, c: Point, d: Point): boolean {
  const [corner, before, after] = same(b, c) ? [b, a, d] : [a, b, c];
  return onSegment(corner, before, after) || onSegment(corner, after, before);
}

/** Whether a point lies in a polygon or on its boundary. */
export function holds(polygon: Polygon, point: Point): boolean {
  const all = sides(polygon);
  if (all.some(([a, b]) => onSegment(a, b, point))) return true;
  return all.filter(([a, b]) => a.yCm > point.yCm !== b.yCm > point.yCm && leftOf(point, a, b)).length % 2 === 1;
}

// Whether a ray to the right from the point meets the edge a–b, in whole numbers.
function leftOf(point: Point, a: Point, b: Point): boolean {
  const [low, high] = a.yCm < b.yCm ? [a, b] : [b, a];
  return (point.xCm - low.xCm) * (high.yCm - low.yCm) < (high.xCm - low.xCm) * (point.yCm - low.yCm);
}

// Whether an edge of the plot runs through the open interior of the footprint (Liang and Barsky's clipping).
function passesThrough(a: Point, b: Point, { xCm, yCm, widthCm, lengthCm }: Footprint): boolean {
  const [dx, dy] = [b.xCm - a.xCm, b.yCm - a.yCm];
  let [enter, leave] = [0, 1];
  for (const [p, q] of [
    [-dx, a.xCm - xCm],
    [dx, xCm + widthCm - a.xCm],
    [-dy, a.yCm - yCm],
    [dy, yCm + lengthCm - a.yCm],
  ] as const) {
    if (p === 0) {
      if (q <= 0) return false;
      continue;
    }
    if (p < 0) enter = Math.max(enter, q / p);
    else leave = Math.min(leave, q / p);
  }
  return enter < leave;
}

/**
 * Join two plots along a boundary that they share, corner for corner.
 *
 * @param nearCm  how far the corners of the shared boundary may lie apart [cm]
 * @returns       the boundary of both together, or null where they share no whole side
 * @example       two 10 m squares side by side → one 20 × 10 m rectangle
 */
export function joinPolygons(a: Polygon, b: Polygon, nearCm: number): Polygon | null {
  const near = (p: Point | undefined, q: Point | undefined) =>
    p !== undefined && q !== undefined && Math.abs(p.xCm - q.xCm) <= nearCm && Math.abs(p.yCm - q.yCm) <= nearCm;
  for (const other of [b, b.toReversed()])
    for (const [i, [p, q]] of sides(a).entries())
      for (const [j, [r, s]] of sides(other).entries())
        if (near(p, s) && near(q, r)) {
          const rest = rotated(other, j + 2).slice(0, other.length - 2);
          const joined = [...a.slice(0, i + 1), ...rest, ...a.slice(i + 1)];
          return isSimple(joined) ? straightened(joined) : null;
        }
  return null;
}

function rotated(polygon: Polygon, by: number): Point[] {
  return polygon.map((_, at) => polygon[(at + by) % polygon.length] as Point);
}

// Corners on a straight side are no corners.
function straightened(polygon: Polygon): Polygon {
  return polygon.filter((point, at) => {
    const [before, after] = [
      polygon[(at + polygon.length - 1) % polygon.length] as Point,
      polygon[(at + 1) % polygon.length] as Point,
    ];
    return side(before, after, point) !== 0;
  });
}

/**
 * Whether two boundaries run over each other by more than a little.
 *
 * Method: sides that cross are an overlap, unless both crossing sides end within the tolerance of the other boundary; so is
 * one plot that holds a corner, the middle, or a point half-way between, of the other deeper than the tolerance.
 *
 * @param nearCm  overlap that is forgiven [cm]
 * @example       two 10 m squares 5 m apart on one axis → true; side by side → false
 */
export function polygonsOverlap(a: Polygon, b: Polygon, nearCm: number): boolean {
  const deep = (inner: Polygon, outer: Polygon) =>
    within(inner).some(
      (point) => holds(outer, point) && sides(outer).every(([c, d]) => distanceToSegment(c, d, point) > nearCm),
    );
  if (deep(a, b) || deep(b, a)) return true;
  const shallow = (from: Point, to: Point, other: Polygon) =>
    [from, to].some((point) => sides(other).some(([c, d]) => distanceToSegment(c, d, point) <= nearCm));
  return sides(a).some(([p, q]) =>
    sides(b).some(([r, s]) => cross(p, q, r, s) && !shallow(p, q, b) && !shallow(r, s, a)),
  );
}

// Corners, the middle, and half-way between: plots are no thinner than that.
function within(polygon: Polygon): Point[] {
  const centre = middle(polygon);
  const halfway = polygon.map(({ xCm, yCm }) => ({ xCm: (xCm + centre.xCm) / 2, yCm: (yCm + centre.yCm) / 2 }));
  return [...polygon, centre, ...halfway];
}

/** The middle of a polygon's corners, on the whole centimetre. */
export function middle(polygon: Polygon): Point {
  const mean = (axis: Axis) => Math.round(polygon.reduce((sum, point) => sum + along(point, axis), 0) / polygon.length);
  return { xCm: mean('x'), yCm: mean('y') };
}
