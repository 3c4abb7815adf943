import type { DiggingMethod } from '../catalogue/digging-methods';
import { type Footprint, footprint } from '../ground/footprint';
import { wholeFrom } from '../quantity/checked';

export type BedSize = { readonly widthCm: number; readonly lengthCm: number };
/** Straight through, the first trench's soil carried to the far end; or along one half and back up the other. */
export type TrenchLayout = 'straight-through' | 'two-halves';

export type TrenchOrder = {
  readonly bed: BedSize;
  /** The side of the bed that the trenches run along. */
  readonly across: 'width' | 'length';
  readonly trenchWidthCm: number;
  readonly spitDepthCm: number;
  readonly method: DiggingMethod;
  readonly layout: TrenchLayout;
};

export type Trench = {
  /** From 1, in order of work. */
  readonly number: number;
  readonly half: 'whole' | 'first' | 'second';
  /** From the bed's nearest corner. */
  readonly footprint: Footprint;
  readonly lengthCm: number;
  readonly widthCm: number;
};

export type TrenchPlan = {
  readonly order: TrenchOrder;
  /** The side that the work goes along. */
  readonly runCm: number;
  readonly trenches: readonly Trench[];
};

/** The side that trenches run along where nobody says: the shorter, so that each is soon done. */
export function defaultAcross({ widthCm, lengthCm }: BedSize): 'width' | 'length' {
  return widthCm <= lengthCm ? 'width' : 'length';
}

/**
 * The trenches of a bed in order of work; for forking and mulch, where nothing is opened, strips of the same width.
 *
 * Method: as many trenches as the run holds widths, to the nearest; all are of that width but the farthest, which takes what
 * is left. In two halves the bed is parted along the run, a centimetre more to the first half where it must be: down the
 * first half, back up the second, so that the last trench lies beside the first.
 *
 * @param order  sizes in whole numbers > 0 [cm]
 * @returns      trenches that tile the bed exactly; none narrower than half the width or wider than one and a half
 * @throws RangeError on any other size, a bed whose run is shorter than a trench is wide, or one too narrow to part
 * @source       common practice; two halves: Ministry of Agriculture, How to Dig
 * @example      bed 120 × 360, across its width, trenches of 60 → 6 of 120 × 60; in two halves 12 of 60 × 60
 */
export function trenchPlan(order: TrenchOrder): TrenchPlan {
  const { bed, across, trenchWidthCm, spitDepthCm, layout } = order;
  for (const size of [bed.widthCm, bed.lengthCm, trenchWidthCm, spitDepthCm]) wholeFrom(1, size);
  const [acrossCm, runCm] = across === 'width' ? [bed.widthCm, bed.lengthCm] : [bed.lengthCm, bed.widthCm];
  if (runCm < trenchWidthCm) throw new RangeError(`bed narrower than a trench: ${runCm} of ${trenchWidthCm}`);
  const down = cutsOf(runCm, trenchWidthCm);
  const places =
    layout === 'straight-through'
      ? down.map((cut): Place => ({ ...cut, half: 'whole', fromCm: 0, lengthCm: acrossCm }))
      : inHalves(down, acrossCm);
  return { order, runCm, trenches: places.map((place, at) => trenchAt(place, at + 1, across)) };
}

type Cut = { readonly atCm: number; readonly widthCm: number };
type Place = Cut & { readonly half: Trench['half']; readonly fromCm: number; readonly lengthCm: number };

function cutsOf(runCm: number, trenchWidthCm: number): Cut[] {
  const count = Math.max(1, Math.round(runCm / trenchWidthCm));
  return Array.from({ length: count }, (_, at) => {
    const atCm = at * trenchWidthCm;
    return { atCm, widthCm: at === count - 1 ? runCm - atCm : trenchWidthCm };
  });
}

// Both halves have the same cuts, so that what is turned over at the far end fits the trench beside it.
function inHalves(down: readonly Cut[], acrossCm: number): Place[] {
  const firstCm = Math.ceil(acrossCm / 2);
  if (firstCm === acrossCm) throw new RangeError(`a bed too narrow to part in two: ${acrossCm}`);
  return [
    ...down.map((cut): Place => ({ ...cut, half: 'first', fromCm: 0, lengthCm: firstCm })),
    ...down
      .toReversed()
      .map((cut): Place => ({ ...cut, half: 'second', fromCm: firstCm, lengthCm: acrossCm - firstCm })),
  ];
}

function trenchAt(
  { atCm, fromCm, widthCm, lengthCm, half }: Place,
  number: number,
  across: 'width' | 'length',
): Trench {
  const ground =
    across === 'width' ? footprint(fromCm, atCm, lengthCm, widthCm) : footprint(atCm, fromCm, widthCm, lengthCm);
  return { number, half, footprint: ground, lengthCm, widthCm };
}
