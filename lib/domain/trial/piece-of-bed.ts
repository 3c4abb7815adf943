import { type Footprint, footprint } from '../ground/footprint';

/** A whole bed, or one of its halves. */
export const pieces = ['whole', 'first', 'second'] as const;
export type Piece = (typeof pieces)[number];

/**
 * A bed, or half of it: cut across its length, as plantings are, the first half from its top end.
 *
 * @param bed  of at least 2 cm in length, to be halved
 * @returns    the two halves cover the bed and don't overlap; an odd centimetre is the first one's
 * @throws RangeError on a bed that can't be halved
 * @example    a bed of 120 × 361 cm → 120 × 181 at its top end, and 120 × 180 below
 */
export function pieceOfBed(bed: Footprint, piece: Piece): Footprint {
  if (piece === 'whole') return bed;
  const { xCm, yCm, widthCm, lengthCm } = bed;
  const first = Math.ceil(lengthCm / 2);
  return piece === 'first'
    ? footprint(xCm, yCm, widthCm, first)
    : footprint(xCm, yCm + first, widthCm, lengthCm - first);
}
