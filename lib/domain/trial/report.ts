import { comparison, type Verdict } from '../comparison/comparison';
import { leastHolders } from '../comparison/shown-cells';
import type { Interval } from '../statistics/intervals';

/** What a block gave: grams or pieces on a square metre under each treatment; null where nothing was confirmed. */
export type Pair = {
  readonly id: string;
  readonly holding: string;
  readonly a: number | null;
  readonly b: number | null;
};

/** A pair with both results. */
export type WholePair = { readonly id: string; readonly a: number; readonly b: number; readonly difference: number };

export type TrialReport = {
  readonly whole: number;
  /** Pairs with one result, which are left out, and with none. */
  readonly half: number;
  readonly none: number;
  readonly holders: number;
  /** Null where fewer than three holders have a whole pair: then nothing is shown. */
  readonly told: {
    readonly pairs: readonly WholePair[];
    readonly meanA: number;
    readonly meanB: number;
    readonly difference: number;
    /** Of A less B; null where every plot has the same difference. */
    readonly interval: Interval | null;
    /** Half the interval: a difference smaller than this would not have shown. */
    readonly hiddenBelow: number | null;
    readonly verdict: Verdict;
  } | null;
};

/**
 * What a trial says, by the analysis that was fixed before anybody joined: the mean of the differences A less B within plots, with their
 * interval by Student's t in 95 cases of 100.
 *
 * Method: pairs with one result are left out and counted. Of fewer than three holders nothing is told. Whether more or less is said only where
 * the interval leaves nothing out; there is no second look at the same pairs by other means.
 *
 * @param pairs  unique ids; values finite, ≥ 0 [g/m² or pieces/m²]
 * @returns      pairs in the order given; counts sum to the number of pairs
 * @throws RangeError on a value that is none
 * @source       Student (W. S. Gosset), Biometrika 6 (1908), 1–25; at least three holders: common practice
 * @example      3 to 1, 5 to 2, 4 to 3 of three holders → 2, from −0.48 to 4.48: cannot-tell
 */
export function trialReport(pairs: readonly Pair[]): TrialReport {
  const whole = pairs.flatMap(({ id, holding, a, b }) => (a === null || b === null ? [] : [{ id, holding, a, b }]));
  const none = pairs.filter(({ a, b }) => a === null && b === null).length;
  const holders = new Set(whole.map(({ holding }) => holding)).size;
  const counts = { whole: whole.length, half: pairs.length - whole.length - none, none, holders };
  return { ...counts, told: holders < leastHolders ? null : told(whole) };
}

type Whole = { readonly id: string; readonly a: number; readonly b: number };

function told(whole: readonly Whole[]): NonNullable<TrialReport['told']> {
  const of = (treatment: 'a' | 'b') => whole.map((pair) => ({ value: pair[treatment], plot: pair.id }));
  const { groups, contrasts } = comparison([
    { key: 'A', observations: of('a') },
    { key: 'B', observations: of('b') },
  ]);
  const [meanA = 0, meanB = 0] = groups.map(({ mean }) => mean ?? 0);
  const [{ interval, hiddenBelow, verdict } = { interval: null, hiddenBelow: null, verdict: 'too-few' as const }] =
    contrasts;
  const pairs = whole.map(({ id, a, b }) => ({ id, a, b, difference: a - b }));
  return { pairs, meanA, meanB, difference: interval?.estimate ?? meanA - meanB, interval, hiddenBelow, verdict };
}
