import { type Interval, meanInterval, pairedInterval, welchInterval } from '../statistics/intervals';
import { momentsOf } from '../statistics/moments';
import { shrinkMeans } from '../statistics/shrink-means';

/** One result, and the plot that it grew on. */
export type Observation = {
  readonly value: number;
  readonly plot: string;
  /** Whose it is, where one holder may have several plots: pairs of fewer than three holders are not reckoned as pairs. Null counts for none. */
  readonly holder?: string | null;
};

/** What was done alike: a treatment, and what came of it. */
export type Treated = { readonly key: string; readonly observations: readonly Observation[] };

/** What so few results allow to be said. */
export type Verdict = 'too-few' | 'cannot-tell' | 'likely-more' | 'likely-less';

export type ToldGroup = {
  readonly key: string;
  /** One for each plot, the mean of its results, in the order of the plots' names. */
  readonly values: readonly number[];
  readonly count: number;
  /** Null where there are too few to have one. */
  readonly mean: number | null;
  readonly interval: Interval | null;
  /** The mean, drawn towards that of all groups. */
  readonly estimate: number | null;
};

export type Contrast = {
  readonly first: string;
  readonly second: string;
  /** Pairs on one plot, or groups on different plots. */
  readonly by: 'pairs' | 'groups';
  /** Plots of the first and of the second; of pairs both the same. */
  readonly counts: readonly [number, number];
  /** Of the first less the second; null where there are too few, or where none differ. */
  readonly interval: Interval | null;
  readonly level: number;
  /** A difference smaller than this would not have shown. */
  readonly hiddenBelow: number | null;
  readonly verdict: Verdict;
};

/** Fewer plots, or holders of pairs, than this are shown, and nothing is reckoned of them. */
const leastPlots = 3;
/** All that is concluded together is right in so many cases of a hundred. */
const together = 0.95;

/**
 * What results of several treatments allow to be said, and what they don't: each value, means with intervals, and for each two of them the
 * interval of their difference, never a bare winner.
 *
 * Method: results of one plot are averaged first, since they share its soil and its gardener. Two treatments that at least three plots both had are
 * compared on those plots alone, as pairs; others by Welch's interval, and so are pairs that fewer than three holders had. With several contrasts each is held to a level so much higher
 * (Bonferroni) that all of them together hold in 95 cases of 100. More or less is said where the interval leaves nothing out.
 *
 * @param groups  at least one, with unique keys, of at least one finite value each
 * @returns       groups in their order; contrasts of each with each that follows
 * @throws RangeError on no groups, an empty one, a key that stands twice, or values that are no numbers
 * @source        intervals and shrinking: lib/domain/statistics; at least three: common practice
 * @example       three plots with both, 3 to 1, 5 to 2, 4 to 3 → by pairs: 2, from −0.48 to 4.48: cannot-tell
 */
export function comparison(groups: readonly Treated[]): {
  readonly groups: readonly ToldGroup[];
  readonly contrasts: readonly Contrast[];
} {
  if (groups.length < 1 || new Set(groups.map(({ key }) => key)).size < groups.length)
    throw new RangeError('groups with keys of their own are wanted');
  const plots = groups.map(({ key, observations }) => ({
    key,
    byPlot: averaged(observations),
    holderOf: new Map(observations.map(({ plot, holder }) => [plot, holder === undefined ? plot : holder])),
  }));
  const { cells } = shrinkMeans(plots.map(({ byPlot }) => [...byPlot.values()]));
  const pairsOf = plots.flatMap((first, at) => plots.slice(at + 1).map((second) => [first, second] as const));
  const level = 1 - (1 - together) / pairsOf.length;
  return {
    groups: plots.map((one, at) => told(one, cells[at]?.estimate ?? null)),
    contrasts: pairsOf.map(([first, second]) => contrast(first, second, level)),
  };
}

type ByPlot = {
  readonly key: string;
  readonly byPlot: ReadonlyMap<string, number>;
  readonly holderOf: ReadonlyMap<string, string | null>;
};

function averaged(observations: readonly Observation[]): ReadonlyMap<string, number> {
  const plots = [...new Set(observations.map(({ plot }) => plot))].sort();
  const of = (plot: string) => observations.flatMap((one) => (one.plot === plot ? [one.value] : []));
  return new Map(plots.map((plot) => [plot, momentsOf(of(plot)).mean]));
}

function told({ key, byPlot }: ByPlot, estimate: number | null): ToldGroup {
  const values = [...byPlot.values()];
  const count = values.length;
  if (count < leastPlots) return { key, values, count, mean: null, interval: null, estimate: null };
  return { key, values, count, mean: momentsOf(values).mean, interval: meanInterval(values, together), estimate };
}

function contrast(first: ByPlot, second: ByPlot, level: number): Contrast {
  const both = [...first.byPlot.keys()].filter((plot) => second.byPlot.has(plot));
  const pairs = both.map((plot): [number, number] => [first.byPlot.get(plot) ?? 0, second.byPlot.get(plot) ?? 0]);
  const holders = new Set(both.flatMap((plot) => first.holderOf.get(plot) ?? []));
  const isPaired = holders.size >= leastPlots;
  const counts = isPaired
    ? ([pairs.length, pairs.length] as const)
    : ([first.byPlot.size, second.byPlot.size] as const);
  const common = { first: first.key, second: second.key, by: isPaired ? 'pairs' : 'groups', counts, level } as const;
  if (Math.min(...counts) < leastPlots) return { ...common, interval: null, hiddenBelow: null, verdict: 'too-few' };
  const [ones, others] = [[...first.byPlot.values()], [...second.byPlot.values()]];
  const largest = Math.max(...[...ones, ...others].map(Math.abs));
  const spreads = isPaired
    ? isSpread(
        pairs.map(([one, other]) => one - other),
        largest,
      )
    : isSpread(ones, largest) || isSpread(others, largest);
  if (!spreads) return { ...common, interval: null, hiddenBelow: null, verdict: 'cannot-tell' };
  const interval = isPaired ? pairedInterval(pairs, level) : welchInterval(ones, others, level);
  const hiddenBelow = (interval.high - interval.low) / 2;
  return { ...common, interval, hiddenBelow, verdict: verdictOf(interval) };
}

// Beyond what rounding leaves of values that are alike.
function isSpread(values: readonly number[], largest: number): boolean {
  return Math.sqrt(momentsOf(values).variance ?? 0) > 1e-9 * largest;
}

function verdictOf({ low, high }: Interval): Verdict {
  if (low > 0) return 'likely-more';
  return high < 0 ? 'likely-less' : 'cannot-tell';
}
