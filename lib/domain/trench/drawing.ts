/** What a piece of ground or a layer is, for its hatch and its word. */
export type PartKind =
  | 'undug'
  | 'topsoil'
  | 'subsoil'
  | 'forked'
  | 'manure-bottom'
  | 'manure-top'
  | 'straw'
  | 'open'
  | 'heap'
  /** The top, folded in when spring comes. */
  | 'folded';

/** A rectangle of a drawing, from its upper left corner; y goes down. Tenths of a centimetre. */
export type Part = {
  readonly kind: PartKind;
  /** The trench that it belongs to; null for ground outside the bed and the heap. */
  readonly trench: number | null;
  readonly xCm: number;
  readonly yCm: number;
  readonly widthCm: number;
  readonly heightCm: number;
};
export type Spot = { readonly xCm: number; readonly yCm: number };
/** Soil on its way in this stage. */
export type Arrow = { readonly code: 'carry' | 'throw' | 'turn'; readonly from: Spot; readonly to: Spot };
/** A length to be written beside its line. */
export type Measure = {
  readonly code: 'trench-width' | 'trench-length' | 'spit-depth' | 'rise' | 'finish-depth';
  readonly from: Spot;
  readonly to: Spot;
  readonly lengthCm: number;
};
/** A drawing to scale: in a section y is depth and the ground's surface lies at `surfaceCm`; a plan is seen from above. */
export type Drawing = {
  readonly widthCm: number;
  readonly heightCm: number;
  readonly surfaceCm: number | null;
  readonly parts: readonly Part[];
  readonly arrows: readonly Arrow[];
  readonly measures: readonly Measure[];
};

/** To the nearest tenth of a centimetre. */
export function toTenth(cm: number): number {
  return Math.round(cm * 10) / 10;
}

/**
 * The rectangle between two corners.
 *
 * Method: its edges are rounded, not its size, so that parts that touch stay touching.
 *
 * @param from, to  upper left and lower right [cm]
 * @returns         tenths of a centimetre
 * @source          as the edges of beds are rounded
 * @example         from 0, 0.04 to 60, 0.26 → 60 × 0.3 at 0, 0
 */
export function partBetween(kind: PartKind, trench: number | null, from: Spot, to: Spot): Part {
  const [xCm, yCm] = [toTenth(from.xCm), toTenth(from.yCm)];
  return { kind, trench, xCm, yCm, widthCm: toTenth(to.xCm - xCm), heightCm: toTenth(to.yCm - yCm) };
}

/** The middle of a rectangle. */
export function middleOf({ xCm, yCm, widthCm, heightCm }: Omit<Part, 'kind' | 'trench'>): Spot {
  return { xCm: xCm + widthCm / 2, yCm: yCm + heightCm / 2 };
}
