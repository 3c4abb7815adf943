import { distanceBetween, nearestShare, onSegment, type Point, side } from '../ground/segment';
import { byPlace } from './by-place';
import type { Piece, Stretch } from './piece';

/**
 * Pieces of which no two run over each other.
 *
 * Method: where pieces of one straight line share a stretch, each is cut at the ends of the other, and what both cover is kept
 * once; a lorry can drive what it can drive on either.
 *
 * @returns  pieces in a fixed order, covering the same ground; any two share a point or nothing
 * @source   exact arithmetic on whole centimetres
 * @example  0 to 600 and 200 to 1000 of one line → 0 to 200, 200 to 600, 600 to 1000
 */
export function laidOnce(pieces: readonly Piece[]): Piece[] {
  const once = new Map<string, Piece>();
  for (const part of pieces.flatMap((piece) => cutAt(piece, cutsOf(piece, pieces)))) {
    const key = [part.a, part.b].map(({ xCm, yCm }) => `${xCm},${yCm}`).join(' ');
    once.set(key, { ...part, lorry: [...(once.get(key)?.lorry ?? []), ...part.lorry] });
  }
  return [...once.values()].sort((one, other) => byPlace(one.a, other.a) || byPlace(one.b, other.b));
}

function cutsOf({ a, b }: Piece, pieces: readonly Piece[]): Point[] {
  const along = pieces.filter((other) => side(a, b, other.a) === 0 && side(a, b, other.b) === 0);
  const inside = along
    .flatMap((other) => [other.a, other.b])
    .filter((end) => onSegment(a, b, end) && byPlace(a, end) < 0 && byPlace(end, b) < 0);
  return inside.sort(byPlace).filter((end, at) => at === 0 || byPlace(inside[at - 1] as Point, end) < 0);
}

function cutAt(piece: Piece, cuts: readonly Point[]): Piece[] {
  const corners = [piece.a, ...cuts, piece.b];
  return corners.slice(1).map((b, at) => {
    const a = corners[at] as Point;
    const lengthCm = Math.round(distanceBetween(a, b));
    return { a, b, lengthCm, lorry: piece.lorry.flatMap((stretch) => within(stretch, piece, { a, b, lengthCm })) };
  });
}

// By shares of the lengths, so that a stretch to the end of a piece goes to the end of its last part.
function within({ fromCm, toCm }: Stretch, whole: Piece, part: Omit<Piece, 'lorry'>): Stretch[] {
  const [first, last] = [part.a, part.b].map((end) => nearestShare(whole.a, whole.b, end)) as [number, number];
  const [from, to] = [fromCm, toCm].map((cm) => (cm / whole.lengthCm - first) / (last - first)) as [number, number];
  if (from > 1 || to < 0) return [];
  const cmAt = (share: number) => Math.round(Math.max(0, Math.min(1, share)) * part.lengthCm);
  return [{ fromCm: cmAt(from), toCm: cmAt(to) }];
}
