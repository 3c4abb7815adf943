import type { SourceKey } from './sources';

/** A material that comes by the heap. Density as it lies, with the published range: sources differ by a factor of two. */
export type Material = {
  readonly key: string;
  readonly name: string;
  readonly densityGPerL: number;
  readonly leastGPerL: number;
  readonly mostGPerL: number;
  /** Whether due ground justifies a need of it. */
  readonly feedsTurns: boolean;
  readonly source: SourceKey;
  /** Total nitrogen, fresh [g/t], as AHDB gives it; null where no source was read. */
  readonly nitrogenGPerT: number | null;
};

// biome-ignore format: one material a line
export const materials: readonly Material[] = [
  { key: 'horse-manure', name: 'Rotted horse manure', densityGPerL: 400, leastGPerL: 400, mostGPerL: 960, feedsTurns: true, source: 'hoduflu', nitrogenGPerT: 5000 },
  { key: 'cattle-manure', name: 'Rotted cattle manure', densityGPerL: 750, leastGPerL: 710, mostGPerL: 974, feedsTurns: true, source: 'hoduflu', nitrogenGPerT: 6000 },
  { key: 'mixed-manure', name: 'Rotted manure, mixed', densityGPerL: 600, leastGPerL: 400, mostGPerL: 974, feedsTurns: true, source: 'common-practice', nitrogenGPerT: null },
  { key: 'green-compost', name: 'Green compost', densityGPerL: 500, leastGPerL: 300, mostGPerL: 900, feedsTurns: false, source: 'composting-materials', nitrogenGPerT: null },
  { key: 'straw', name: 'Straw', densityGPerL: 70, leastGPerL: 58, mostGPerL: 357, feedsTurns: false, source: 'composting-materials', nitrogenGPerT: null },
  { key: 'wood-chip', name: 'Wood chip', densityGPerL: 300, leastGPerL: 200, mostGPerL: 400, feedsTurns: false, source: 'from-memory', nitrogenGPerT: null },
];

/** A material by its key; undefined where there is none. */
export function materialOf(key: string): Material | undefined {
  return materials.find((material) => material.key === key);
}
