/** A rectangle of ground in the axes of a plot's frame, in whole centimetres. */
export type Footprint = {
  readonly xCm: number;
  readonly yCm: number;
  readonly widthCm: number;
  readonly lengthCm: number;
};

/**
 * A checked footprint.
 *
 * @param xCm, yCm           nearest corner; whole numbers [cm]
 * @param widthCm, lengthCm  along the first and second axis; whole numbers > 0 [cm]
 * @throws RangeError on a fraction or a size that is not positive
 * @example footprint(0, 0, 120, 360)
 */
export function footprint(xCm: number, yCm: number, widthCm: number, lengthCm: number): Footprint {
  if (![xCm, yCm, widthCm, lengthCm].every(Number.isSafeInteger))
    throw new RangeError('ground is measured in whole centimetres');
  if (widthCm <= 0 || lengthCm <= 0) throw new RangeError('a footprint has a width and a length');
  return { xCm, yCm, widthCm, lengthCm };
}

/** Its area [cm²], exact. */
export function areaCm2({ widthCm, lengthCm }: Footprint): number {
  return widthCm * lengthCm;
}

/**
 * The ground that two footprints of one frame share.
 *
 * @returns the shared rectangle, or null where they only touch or lie apart
 * @example overlap(footprint(0, 0, 100, 100), footprint(50, 0, 100, 100)) → 50 × 100 at 50, 0
 */
export function overlap(a: Footprint, b: Footprint): Footprint | null {
  const xCm = Math.max(a.xCm, b.xCm);
  const yCm = Math.max(a.yCm, b.yCm);
  const widthCm = Math.min(a.xCm + a.widthCm, b.xCm + b.widthCm) - xCm;
  const lengthCm = Math.min(a.yCm + a.lengthCm, b.yCm + b.lengthCm) - yCm;
  return widthCm > 0 && lengthCm > 0 ? { xCm, yCm, widthCm, lengthCm } : null;
}

/**
 * What of a footprint lies under none of the others, as rectangles that do not overlap.
 *
 * Method: cut the remaining pieces by each of the others in turn; a piece leaves at most four.
 *
 * @returns rectangles whose areas sum exactly to the uncovered area
 * @example subtract(footprint(0, 0, 100, 100), [footprint(0, 0, 100, 40)]) → [100 × 60 at 0, 40]
 */
export function subtract(from: Footprint, others: readonly Footprint[]): Footprint[] {
  return others.reduce<Footprint[]>((pieces, other) => pieces.flatMap((piece) => without(piece, other)), [from]);
}

function without(piece: Footprint, other: Footprint): Footprint[] {
  const shared = overlap(piece, other);
  if (!shared) return [piece];
  const { xCm, yCm, widthCm, lengthCm } = piece;
  const right = shared.xCm + shared.widthCm;
  const below = shared.yCm + shared.lengthCm;
  return [
    { xCm, yCm, widthCm, lengthCm: shared.yCm - yCm },
    { xCm, yCm: below, widthCm, lengthCm: yCm + lengthCm - below },
    { xCm, yCm: shared.yCm, widthCm: shared.xCm - xCm, lengthCm: shared.lengthCm },
    { xCm: right, yCm: shared.yCm, widthCm: xCm + widthCm - right, lengthCm: shared.lengthCm },
  ].filter((strip) => strip.widthCm > 0 && strip.lengthCm > 0);
}
