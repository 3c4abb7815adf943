import { type CropGroup, cropGroups } from '../catalogue/crop-groups';
import { type ComplianceAreas, type FrameTally, noAreas, type ShortGround } from './frame-tally';

export type Compliance = {
  readonly total: ComplianceAreas;
  readonly byGroup: readonly { readonly cropGroup: CropGroup; readonly areas: ComplianceAreas }[];
  /** By plot, in the order of the frames. */
  readonly byPlot: readonly { readonly plotId: string; readonly areas: ComplianceAreas }[];
  /** Ground that falls short because of a trouble found there, most first; some of it may be short for another reason too. */
  readonly byTrouble: readonly { readonly troubleKey: string; readonly shortCm2: number }[];
  /** Beds with ground that falls short, most first. */
  readonly short: readonly ShortGround[];
};

/**
 * How much of the cultivable ground keeps its rotation in a season: the tallies of its frames added up.
 *
 * @param frames  one tally a frame, all of one season
 * @returns       five areas, the sums of the frames'; groups in the order of the catalogue, shortfalls most first
 * @example       two frames of 100 m² kept each → 200 m² kept
 */
export function addUp(frames: readonly FrameTally[]): Compliance {
  const byGroup = new Map<CropGroup, ComplianceAreas>();
  const byPlot = new Map<string, ComplianceAreas>();
  const byTrouble = new Map<string, number>();
  for (const frame of frames) {
    for (const { cropGroup, areas } of frame.byGroup) byGroup.set(cropGroup, sum(byGroup.get(cropGroup), areas));
    for (const { plotId, areas } of frame.byPlot) byPlot.set(plotId, sum(byPlot.get(plotId), areas));
    for (const { troubleKey, shortCm2 } of frame.byTrouble)
      byTrouble.set(troubleKey, (byTrouble.get(troubleKey) ?? 0) + shortCm2);
  }
  return {
    total: [...byPlot.values()].reduce(sum, noAreas),
    byGroup: [...byGroup].map(([cropGroup, areas]) => ({ cropGroup, areas })).sort((a, b) => place(a) - place(b)),
    byPlot: [...byPlot].map(([plotId, areas]) => ({ plotId, areas })),
    byTrouble: [...byTrouble]
      .map(([troubleKey, shortCm2]) => ({ troubleKey, shortCm2 }))
      .sort((a, b) => b.shortCm2 - a.shortCm2 || compare(a.troubleKey, b.troubleKey)),
    short: frames
      .flatMap(({ short }) => short)
      .sort((a, b) => b.shortCm2 - a.shortCm2 || compare(a.bedId, b.bedId) || compare(a.plantingId, b.plantingId)),
  };
}

function sum(a: ComplianceAreas | undefined, b: ComplianceAreas): ComplianceAreas {
  if (!a) return b;
  return {
    keptCm2: a.keptCm2 + b.keptCm2,
    shortCm2: a.shortCm2 + b.shortCm2,
    notKnownCm2: a.notKnownCm2 + b.notKnownCm2,
    outsideCm2: a.outsideCm2 + b.outsideCm2,
    bareCm2: a.bareCm2 + b.bareCm2,
  };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function place({ cropGroup }: { readonly cropGroup: CropGroup }): number {
  return cropGroups.findIndex(({ key }) => key === cropGroup);
}
