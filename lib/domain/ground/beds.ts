import { type Footprint, overlap } from './footprint';
import type { Axis, Edge } from './polygon';

type NamedBed = { readonly name: string; readonly footprint: Footprint };

/**
 * Which bed a footprint lies over, and which of its edges is to be drawn in, by how much, to clear it.
 *
 * Method: of the four edges, the one that clears the overlap with the least moving.
 *
 * @returns null where it only touches the others; else the bed's name, the edge and the excess [cm]
 * @example a bed whose right 10 cm lie over bed 3 → 3, right, 10
 */
export function bedsClash(
  bed: Footprint,
  others: readonly NamedBed[],
): { name: string; edge: Edge; byCm: number } | null {
  for (const { name, footprint } of others) {
    const shared = overlap(bed, footprint);
    if (!shared) continue;
    const edges: [Edge, number][] = [
      ['left', shared.xCm + shared.widthCm - bed.xCm],
      ['right', bed.xCm + bed.widthCm - shared.xCm],
      ['top', shared.yCm + shared.lengthCm - bed.yCm],
      ['bottom', bed.yCm + bed.lengthCm - shared.yCm],
    ];
    const [edge, byCm] = edges.reduce((least, one) => (one[1] < least[1] ? one : least));
    return { name, edge, byCm };
  }
  return null;
}

/** Path between beds that are laid out one after another [cm]; common practice. */
const pathCm = 60;

/**
 * Where the next bed goes when nobody says: below the others, a path apart, at their left edge.
 *
 * @returns its nearest corner [cm]
 * @example after one bed of 360 at 0, 0 → 0, 420
 */
export function nextBedAt(others: readonly Footprint[]): { xCm: number; yCm: number } {
  if (others.length === 0) return { xCm: pathCm, yCm: pathCm };
  return {
    xCm: Math.min(...others.map(({ xCm }) => xCm)),
    yCm: Math.max(...others.map(({ yCm, lengthCm }) => yCm + lengthCm)) + pathCm,
  };
}

/**
 * Split a footprint straight across.
 *
 * @param axis   'x': a cut across its width; 'y': across its length
 * @param atCm   distance from its nearest corner; a whole number inside it [cm]
 * @returns      two footprints whose areas sum to the whole
 * @throws RangeError when the cut is not inside
 * @example      splitFootprint(120 × 360, 'y', 100) → 120 × 100 and 120 × 260
 */
export function splitFootprint(ground: Footprint, axis: Axis, atCm: number): [Footprint, Footprint] {
  const size = axis === 'x' ? ground.widthCm : ground.lengthCm;
  if (!Number.isSafeInteger(atCm) || atCm <= 0 || atCm >= size)
    throw new RangeError(`the cut lies outside the bed: ${atCm} of ${size}`);
  if (axis === 'x')
    return [
      { ...ground, widthCm: atCm },
      { ...ground, xCm: ground.xCm + atCm, widthCm: size - atCm },
    ];
  return [
    { ...ground, lengthCm: atCm },
    { ...ground, yCm: ground.yCm + atCm, lengthCm: size - atCm },
  ];
}

/**
 * Join two footprints that share a whole edge.
 *
 * @returns the rectangle they make, or null where they make none
 * @example 120 × 100 at 0, 0 and 120 × 260 at 0, 100 → 120 × 360
 */
export function joinFootprints(a: Footprint, b: Footprint): Footprint | null {
  const xCm = Math.min(a.xCm, b.xCm);
  const yCm = Math.min(a.yCm, b.yCm);
  const widthCm = Math.max(a.xCm + a.widthCm, b.xCm + b.widthCm) - xCm;
  const lengthCm = Math.max(a.yCm + a.lengthCm, b.yCm + b.lengthCm) - yCm;
  const fills = widthCm * lengthCm === a.widthCm * a.lengthCm + b.widthCm * b.lengthCm;
  return fills && overlap(a, b) === null ? { xCm, yCm, widthCm, lengthCm } : null;
}
