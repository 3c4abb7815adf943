import type { SourceKey } from './sources';

/**
 * A material that comes by the heap. Density as it lies, with the published range: sources differ by a factor of two.
 */
export type Material = {
  readonly key: string;
  /**
   * Manure of animals, with its waits; compost, which counts towards the nitrogen limit too; bedding, which does
   * neither.
   */
  readonly kind: 'manure' | 'compost' | 'bedding';
  readonly name: string;
  readonly densityGPerL: number;
  readonly leastGPerL: number;
  readonly mostGPerL: number;
  /** Whether due ground justifies a need of it. Poultry manures are too rich for a farmyard dressing. */
  readonly feedsTurns: boolean;
  readonly source: SourceKey;
};

/** Where sources give no range of its own, the upper end is the heaviest solid manure that was weighed by the pail. */
// biome-ignore format: one material a line
export const materials: readonly Material[] = [
  { key: 'horse-manure', kind: 'manure', name: 'Rotted horse manure', densityGPerL: 400, leastGPerL: 400, mostGPerL: 960, feedsTurns: true, source: 'hoduflu' },
  { key: 'cattle-manure', kind: 'manure', name: 'Rotted cattle manure', densityGPerL: 750, leastGPerL: 710, mostGPerL: 974, feedsTurns: true, source: 'hoduflu' },
  { key: 'mixed-manure', kind: 'manure', name: 'Rotted manure, mixed', densityGPerL: 600, leastGPerL: 400, mostGPerL: 974, feedsTurns: true, source: 'common-practice' },
  { key: 'pig-manure', kind: 'manure', name: 'Rotted pig manure', densityGPerL: 750, leastGPerL: 700, mostGPerL: 974, feedsTurns: true, source: 'hoduflu' },
  { key: 'sheep-manure', kind: 'manure', name: 'Rotted sheep manure', densityGPerL: 500, leastGPerL: 500, mostGPerL: 974, feedsTurns: true, source: 'hoduflu' },
  { key: 'goat-manure', kind: 'manure', name: 'Rotted goat manure', densityGPerL: 500, leastGPerL: 500, mostGPerL: 974, feedsTurns: true, source: 'hoduflu' },
  { key: 'rabbit-manure', kind: 'manure', name: 'Rotted rabbit manure', densityGPerL: 700, leastGPerL: 700, mostGPerL: 974, feedsTurns: true, source: 'hoduflu' },
  { key: 'duck-manure', kind: 'manure', name: 'Rotted duck manure', densityGPerL: 700, leastGPerL: 400, mostGPerL: 974, feedsTurns: true, source: 'from-memory' },
  { key: 'hen-manure', kind: 'manure', name: 'Hen manure, moist', densityGPerL: 800, leastGPerL: 500, mostGPerL: 974, feedsTurns: false, source: 'hoduflu' },
  { key: 'hen-litter', kind: 'manure', name: 'Hen manure, deep litter', densityGPerL: 500, leastGPerL: 330, mostGPerL: 800, feedsTurns: false, source: 'hoduflu' },
  { key: 'broiler-litter', kind: 'manure', name: 'Broiler litter', densityGPerL: 600, leastGPerL: 330, mostGPerL: 600, feedsTurns: false, source: 'hoduflu' },
  { key: 'green-compost', kind: 'compost', name: 'Green compost', densityGPerL: 500, leastGPerL: 300, mostGPerL: 900, feedsTurns: false, source: 'composting-materials' },
  { key: 'food-compost', kind: 'compost', name: 'Compost of green and food waste', densityGPerL: 500, leastGPerL: 300, mostGPerL: 900, feedsTurns: false, source: 'composting-materials' },
  { key: 'mushroom-compost', kind: 'compost', name: 'Mushroom compost', densityGPerL: 600, leastGPerL: 500, mostGPerL: 900, feedsTurns: false, source: 'agnew-leonard' },
  { key: 'straw', kind: 'bedding', name: 'Straw', densityGPerL: 70, leastGPerL: 58, mostGPerL: 357, feedsTurns: false, source: 'composting-materials' },
  { key: 'wood-chip', kind: 'bedding', name: 'Wood chip', densityGPerL: 300, leastGPerL: 200, mostGPerL: 400, feedsTurns: false, source: 'from-memory' },
];

/** A material by its key; undefined where there is none. */
export function materialOf(key: string): Material | undefined {
  return materials.find((material) => material.key === key);
}
