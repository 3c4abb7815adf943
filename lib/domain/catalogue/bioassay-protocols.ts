import type { SourceKey } from './sources';

/** One published way to look for weedkiller in manure by growing peas or beans in it. Null: not given. */
export type BioassayProtocol = {
  readonly key: string;
  /** By volume. */
  readonly manureParts: number;
  readonly mixParts: number;
  readonly testPots: number | null;
  readonly controlPots: number | null;
  readonly seedsAPot: number | null;
  /** Sets of true leaves to grow to. */
  readonly trueLeaves: number | null;
  readonly fromDay: number | null;
  readonly toDay: number | null;
  readonly source: SourceKey;
};

// biome-ignore format: one protocol a line
export const bioassayProtocols: readonly BioassayProtocol[] = [
  { key: 'one-to-one', manureParts: 1, mixParts: 1, testPots: 3, controlPots: null, seedsAPot: 3, trueLeaves: 3, fromDay: null, toDay: null, source: 'ncsu-bioassay' },
  { key: 'two-to-one', manureParts: 2, mixParts: 1, testPots: 3, controlPots: null, seedsAPot: 3, trueLeaves: 3, fromDay: 14, toDay: 21, source: 'osu-bioassay' },
  { key: 'three-to-one', manureParts: 3, mixParts: 1, testPots: null, controlPots: null, seedsAPot: null, trueLeaves: null, fromDay: 14, toDay: 42, source: 'calrecycle-bioassay' },
];

/**
 * What is asked of a test here, whatever its mix: what the protocols leave open is common practice. Read weekly; at the
 * latest on the last day; before that, once plants have three sets of true leaves.
 */
export const bioassayRules = {
  leastTestPots: 3,
  leastControlPots: 3,
  leastSeedsAPot: 3,
  trueLeaves: 3,
  readingDays: [7, 14, 21, 28],
  /** From here on, controls with their leaves are enough to judge by. */
  enoughDays: 21,
  lastDay: 28,
  /** Of the seeds in all controls, what must come up for the test to say anything [percent]. */
  leastUpPercent: 50,
} as const;
