import type { CropGroup } from '@/lib/domain/catalogue/crop-groups';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { type Frame, toSite } from '@/lib/domain/ground/frame';
import { cornersOf, type Point, type Polygon } from '@/lib/domain/ground/polygon';
import { areaOfQuarterRodsCm2 } from '@/lib/domain/quantity/area';

export type DrawnPlot = {
  readonly id: string;
  readonly number: string;
  readonly frame: Frame | null;
  readonly polygon: Polygon | null;
  readonly quarterRods: number | null;
  readonly toLet: boolean;
  readonly mine: boolean;
  readonly beds: readonly {
    readonly id: string;
    readonly name: string;
    readonly footprint: Footprint;
    readonly href: string | null;
    readonly mark: string | null;
    readonly plantings: readonly {
      readonly id: string;
      readonly footprint: Footprint;
      readonly cropName: string;
      readonly cropGroup: CropGroup | null;
    }[];
  }[];
};

/** A plot with its place on the sheet. */
export type Placed = DrawnPlot & {
  readonly at: Frame;
  readonly shape: Polygon;
  readonly transform: string;
  readonly turnDeg: number;
  readonly label: Point;
  readonly middle: Point;
};

/**
 * Give every plot a place: measured ones where they lie, the others in a row of their own beneath, sized by their rods.
 */
export function drawPlots(plots: readonly DrawnPlot[]): Placed[] {
  const measured = plots
    .filter((plot) => plot.frame && plot.polygon)
    .map((plot) => place(plot, plot.frame as Frame, plot.polygon as Polygon));
  const below = measured.length
    ? Math.max(...measured.flatMap((plot) => outlineOf(plot).map(({ yCm }) => yCm))) + 600
    : 0;
  const left = measured.length ? Math.min(...measured.flatMap((plot) => outlineOf(plot).map(({ xCm }) => xCm))) : 0;
  let x = left;
  const others = plots
    .filter((plot) => !plot.frame || !plot.polygon)
    .map((plot) => {
      const shape = plot.polygon ?? assumedShape(plot);
      const placed = place(plot, { originXCm: Math.round(x), originYCm: Math.round(below), bearingCentideg: 0 }, shape);
      x += Math.max(...shape.map(({ xCm }) => xCm)) + 300;
      return placed;
    });
  return [...measured, ...others];
}

// As large as its rods say, twice as long as wide, and large enough for its beds.
function assumedShape({ quarterRods, beds }: DrawnPlot): Polygon {
  const side = Math.round(Math.sqrt(areaOfQuarterRodsCm2(quarterRods ?? 20) / 2));
  const right = Math.max(side, ...beds.map(({ footprint }) => footprint.xCm + footprint.widthCm + 60));
  const bottom = Math.max(2 * side, ...beds.map(({ footprint }) => footprint.yCm + footprint.lengthCm + 60));
  return cornersOf({ xCm: 0, yCm: 0, widthCm: right, lengthCm: bottom });
}

function place(plot: DrawnPlot, at: Frame, shape: Polygon): Placed {
  const corners = shape.map((point) => toSite(at, point));
  const mean = (pick: (point: Point) => number) =>
    corners.reduce((sum, corner) => sum + pick(corner), 0) / corners.length;
  const turnDeg = at.bearingCentideg / 100;
  const top = corners.reduce((best, corner) => (corner.xCm + corner.yCm < best.xCm + best.yCm ? corner : best));
  return {
    ...plot,
    at,
    shape,
    turnDeg,
    transform: `translate(${at.originXCm} ${at.originYCm}) rotate(${turnDeg})`,
    label: top,
    middle: { xCm: mean(({ xCm }) => xCm), yCm: mean(({ yCm }) => yCm) },
  };
}

/** A placed plot's boundary on the sheet. */
export function outlineOf({ at, shape }: Pick<Placed, 'at' | 'shape'>): Point[] {
  return shape.map((point) => toSite(at, point));
}

/** The rectangle that holds everything drawn. */
export function boundsOf(
  plots: readonly Placed[],
  paths: readonly (readonly Point[])[],
): { x: number; y: number; width: number; height: number } {
  const all = [...plots.flatMap(outlineOf), ...paths.flat()];
  if (all.length === 0) return { x: 0, y: 0, width: 1000, height: 600 };
  const [xs, ys] = [all.map(({ xCm }) => xCm), all.map(({ yCm }) => yCm)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** Whether a bed's mark can be written in its corner without lying on the name of the crop there. */
export function markFits({ footprint, plantings }: Placed['beds'][number], mark: string, unit: number): boolean {
  if (!fits(mark, footprint.widthCm, footprint.lengthCm, unit * 0.75)) return false;
  const markCm = mark.length * unit * 0.75 * 0.56 + unit * 0.6;
  return plantings.every(({ footprint: ground, cropName }) => {
    if (ground.xCm - footprint.xCm > markCm || ground.yCm - footprint.yCm > unit * 1.2) return true;
    const label = labelOf(cropName, ground, unit * 0.95);
    if (!label) return true;
    const [alongCm, acrossCm] = [label.word.length * label.letterCm * 0.56, label.letterCm];
    const left = ground.xCm + (ground.widthCm - (label.down ? acrossCm : alongCm)) / 2 - footprint.xCm;
    const top = ground.yCm + (ground.lengthCm - (label.down ? alongCm : acrossCm)) / 2 - footprint.yCm;
    return left > markCm || top > unit * 1.2;
  });
}

/**
 * How a crop's name is written on its ground: in full, else without what follows a comma, else downwards, else smaller in
 * two steps; null where none of these fits and only the hatch speaks.
 */
export function labelOf(
  cropName: string,
  { widthCm, lengthCm }: Footprint,
  letterCm: number,
): { word: string; letterCm: number; down: boolean } | null {
  const short = cropName.split(',')[0]?.trim() ?? cropName;
  // The smallest is read on paper, or once the plan is enlarged.
  const tries = [1, 0.8, 0.62].flatMap((size) =>
    [false, true].flatMap((down) => [cropName, short].map((word) => ({ word, letterCm: letterCm * size, down }))),
  );
  return (
    tries.find(({ word, letterCm: size, down }) =>
      down ? fits(word, lengthCm, widthCm, size) : fits(word, widthCm, lengthCm, size),
    ) ?? null
  );
}

/** What stands in a plot without beds; the shorter word where the plot is small. */
export function wordOfEmptyPlot({ toLet, polygon, quarterRods, shape }: Placed, letterCm: number): string {
  const widthCm = Math.max(...shape.map(({ xCm }) => xCm)) - Math.min(...shape.map(({ xCm }) => xCm));
  const words = polygon
    ? ['no beds yet', 'empty']
    : ['not measured', ...(quarterRods ? [`${quarterRods / 4} rods`] : [])];
  return (toLet ? ['to let'] : words).find((word) => fits(word, widthCm, letterCm * 2, letterCm)) ?? '';
}

/** Whether a word in letters of a size fits into a rectangle. A letter of this typeface is about 0.56 of its height wide. */
export function fits(word: string, widthCm: number, heightCm: number, letterCm: number): boolean {
  return word.length * letterCm * 0.56 < widthCm * 0.96 && letterCm * 1.15 < heightCm;
}
