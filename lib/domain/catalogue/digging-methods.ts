import type { SourceKey } from './sources';

/** A way of making ground ready: what it opens, how deep it loosens, and how wide its trenches or strips are. */
export type DiggingMethod = 'double-digging' | 'single-digging' | 'forking' | 'mulch';

export type DiggingRow = {
  readonly key: DiggingMethod;
  readonly name: string;
  /** Whether the top spit is thrown out, so that something can be laid below it. */
  readonly opensTrench: boolean;
  readonly loosenedSpits: 0 | 1 | 2;
  /** How wide a trench or a strip usually is [cm]. */
  readonly trenchWidthCm: number;
  readonly source: SourceKey;
};

// biome-ignore format: one method a line
export const diggingMethods: readonly DiggingRow[] = [
  { key: 'double-digging', name: 'Double digging', opensTrench: true, loosenedSpits: 2, trenchWidthCm: 60, source: 'rhs-double-digging' },
  { key: 'single-digging', name: 'Single digging', opensTrench: true, loosenedSpits: 1, trenchWidthCm: 38, source: 'how-to-dig' },
  { key: 'forking', name: 'Forking', opensTrench: false, loosenedSpits: 1, trenchWidthCm: 60, source: 'common-practice' },
  { key: 'mulch', name: 'Mulch on top, without digging', opensTrench: false, loosenedSpits: 0, trenchWidthCm: 60, source: 'common-practice' },
];

/**
 * What a method opens and loosens.
 *
 * @throws RangeError on a key that is none
 */
export function diggingMethodOf(key: string): DiggingRow {
  const row = diggingMethods.find((method) => method.key === key);
  if (!row) throw new RangeError(`no such way of digging: ${key}`);
  return row;
}

/** Sizes of the trade that hold for every method, each with its source. */
export const diggingSizes = {
  /** One spade's depth [cm]. */
  spitDepthCm: { value: 25, source: 'common-practice' },
  /** Wider than this, 15 ft, ground is dug in two halves [cm]. */
  halvesWiderThanCm: { value: 457, source: 'how-to-dig' },
  /** A trench that is shorter than this, about 3 ft, is a hole that nobody stands beside to dig [cm]. */
  leastHalfCm: { value: 90, source: 'common-practice' },
} as const satisfies Record<string, { readonly value: number; readonly source: SourceKey }>;

/** The thumb rule: of a load of manure, and of a jar of meal, what goes into the bottom of one trench. */
export const thumbRule = { loadShare: 0.5, jarShare: 0.5, source: 'common-practice' } as const;
