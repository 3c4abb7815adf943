import type { Arrow, Drawing, Measure, Part, PartKind } from '@/lib/domain/trench/drawing';

/** A drawing as it is put on the page: what of it is shown, in a frame with room for its words. */
export type TrenchView = {
  readonly parts: readonly Part[];
  readonly arrows: readonly Arrow[];
  readonly measures: readonly Measure[];
  readonly kinds: readonly PartKind[];
  /** The size of a letter in the drawing's own centimetres. */
  readonly letterCm: number;
  readonly box: { readonly xCm: number; readonly yCm: number; readonly widthCm: number; readonly heightCm: number };
};

/** How large a drawing is on the page, and its letters there [px]; on a wider screen it may grow, on paper not. */
export type Room = {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
  readonly grow?: number;
};

/**
 * Fit a drawing into its room: nothing is stretched, and letters read the same size whatever the scale.
 *
 * @param hand  only this trench and its neighbours are shown, with the heap where it lies beside them; null for all of it
 */
export function viewOf(drawing: Drawing, room: Room, hand: number | null): TrenchView {
  const parts = hand === null ? drawing.parts : partsAround(drawing.parts, hand);
  const left = Math.min(...parts.map(({ xCm }) => xCm));
  const right = Math.max(...parts.map(({ xCm, widthCm }) => xCm + widthCm));
  // Sky over the ground is left out, and room kept for what flies through it.
  const [top, foot] = [Math.min(...parts.map(({ yCm }) => yCm)), drawing.heightCm];
  const isIn = (xCm: number) => xCm >= left && xCm <= right;
  const letterCm = letterFor(right - left, foot - top, room);
  const pad = { side: letterCm * 3.3, end: letterCm * 0.7, above: letterCm * 1.7, below: letterCm * 1.7 };
  return {
    parts,
    arrows: drawing.arrows.filter(({ from, to }) => isIn(from.xCm) && isIn(to.xCm)),
    measures: drawing.measures
      .filter((measure) => drawing.surfaceCm !== null || isAtEdge(measure, left, top))
      .flatMap((measure) => moved(measure, left, right)),
    kinds: [...new Set(parts.map(({ kind }) => kind))],
    letterCm,
    box: {
      xCm: left - pad.side,
      yCm: top - pad.above,
      widthCm: right - left + pad.side + pad.end,
      heightCm: foot - top + pad.above + pad.below,
    },
  };
}

// The frame grows with the letters and the letters with the frame, so both are solved for at once: the frame is 4 letters
// wider than what is drawn, and 3.4 higher.
function letterFor(widthCm: number, heightCm: number, { width, height, letter }: Room): number {
  const byWidth = (widthCm * letter) / (width - 4 * letter);
  const byHeight = (heightCm * letter) / (height - 3.4 * letter);
  return Math.max(byWidth, byHeight);
}

function partsAround(parts: readonly Part[], hand: number): readonly Part[] {
  const own = parts.filter(({ trench }) => trench !== null && Math.abs(trench - hand) <= 1);
  const inHand = own.find(({ trench }) => trench === hand);
  if (!inHand) return parts;
  const touches = ({ xCm, widthCm }: Part) =>
    xCm + widthCm === inHand.xCm || xCm === Math.round((inHand.xCm + inHand.widthCm) * 10) / 10;
  return [...own, ...parts.filter((part) => part.trench === null && touches(part))];
}

// From above a length is written outside the bed alone: within it would lie on its neighbours.
function isAtEdge({ from, to }: Measure, left: number, top: number): boolean {
  return from.xCm === to.xCm ? from.xCm === left : from.yCm === top;
}

// Measures stand at the drawing's edges: they move with the edge where less of it is shown.
function moved(measure: Measure, left: number, right: number): Measure[] {
  const { from, to } = measure;
  if (from.xCm !== to.xCm) return from.xCm >= left && to.xCm <= right ? [measure] : [];
  const xCm = Math.min(Math.max(from.xCm, left), right);
  return [{ ...measure, from: { ...from, xCm }, to: { ...to, xCm } }];
}

/** Whether a word fits into a part of the drawing. A letter of this typeface is about 0.56 of its height wide. */
export function wordFits(word: string, { widthCm, heightCm }: Part, letterCm: number): boolean {
  return word.length * letterCm * 0.56 < widthCm * 0.94 && letterCm * 1.15 < heightCm;
}

/** Whether every trench's number can be written in it, seen from above; else only that of the one in hand is. */
export function numbersFit({ parts, letterCm }: TrenchView): boolean {
  return parts.every((part) => part.trench === null || wordFits(String(part.trench), part, letterCm));
}

/** An arrow's path: over the top where it goes sideways, so that it shows what is thrown where. */
export function arrowPath({ from, to }: Arrow, riseCm: number): string {
  const isAlong = Math.abs(to.xCm - from.xCm) >= Math.abs(to.yCm - from.yCm);
  const [midX, midY] = [(from.xCm + to.xCm) / 2, (from.yCm + to.yCm) / 2];
  const [bendX, bendY] = isAlong ? [midX, Math.min(from.yCm, to.yCm) - riseCm] : [midX + riseCm, midY];
  return `M${from.xCm} ${from.yCm}Q${bendX} ${bendY} ${to.xCm} ${to.yCm}`;
}
