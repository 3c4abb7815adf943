import type { SourceKey } from './sources';

/** A kind of straw bale, with the weights that one is met at. What a bale weighs is asked of whoever sells it. */
export type Bale = {
  readonly key: string;
  readonly name: string;
  /** The middle of its published range [g]. */
  readonly massG: number;
  readonly leastG: number;
  readonly mostG: number;
  readonly source: SourceKey;
};

// biome-ignore format: one bale a line
export const bales: readonly Bale[] = [
  { key: 'small', name: 'Small bale, two strings', massG: 13_000, leastG: 12_000, mostG: 14_000, source: 'farmers-journal-straw' },
  { key: 'round-4', name: 'Round bale, 4 ft by 4 ft', massG: 145_000, leastG: 130_000, mostG: 180_000, source: 'farmers-journal-straw' },
  { key: 'big-8-4-3', name: 'Big bale, 8 ft by 4 ft by 3 ft', massG: 370_000, leastG: 360_000, mostG: 380_000, source: 'farmers-journal-straw' },
  { key: 'big-8-4-4', name: 'Big bale, 8 ft by 4 ft by 4 ft', massG: 560_000, leastG: 540_000, mostG: 580_000, source: 'farmers-journal-straw' },
];

/** A kind of bale by its key; undefined where there is none. */
export function baleOf(key: string): Bale | undefined {
  return bales.find((bale) => bale.key === key);
}
