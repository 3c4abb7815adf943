import type { LifePrior } from './life-prior';
import type { LossSeen } from './losses-seen';
import { lifeHazard, livesGathered } from './sound-share';

/** What is held of a lot's life once its goings over are taken in. */
export type LifeBelief = {
  /** The logarithm of the days, from where to where anything is believed. */
  readonly fromLog: number;
  readonly toLog: number;
  /** The share of belief below each of evenly spaced places between, from 0 to 1. */
  readonly below: readonly number[];
};

type LogDensity = (logLife: number) => number;

const nodes = 240;
/** Where the density is e⁻³² of its most, nothing is left to add. */
const tailDrop = 32;

/**
 * A lot's life, from the published life of its kind as prior and its own goings over as data.
 *
 * Method: with the life L, a piece that stood from one age to another goes bad with probability 1 − exp(−H), H the hazard between
 * them (`soundShare`); pieces do so independently. A piece used meanwhile stood half that time. The density of log L, which is
 * log-concave, is integrated by the trapezium rule between the points where it vanishes. No chance is drawn.
 *
 * @param prior  of `lifePrior`
 * @param seen   of `lossesSeen`; none: the prior itself
 * @returns      the belief, to be asked by `lifeDaysAt`. More bad and less sound never makes a life longer at any share
 * @throws RangeError on counts below nothing
 * @source       the model: docs/decisions/0011-how-long-a-lot-lasts.md
 * @example      butternuts at 11 °C, no going over → a tenth below 61 days, nine tenths below 91
 */
export function lifePosterior(prior: LifePrior, seen: readonly LossSeen[]): LifeBelief {
  const density = logDensityOf(prior, seen);
  const top = highest(density, prior);
  const most = density(top);
  const low = vanishing(density, { top, most, step: -prior.logSd / 16 });
  const high = vanishing(density, { top, most, step: prior.logSd / 16 });
  const width = (high - low) / nodes;
  const below = cumulative((at) => Math.exp(density(low + at * width) - most));
  return { fromLog: low, toLog: high, below };
}

/**
 * The life below which a given share of belief lies, on a straight line between two places.
 *
 * @param share  above 0, below 1
 * @returns      days > 0, rising with the share
 * @throws RangeError on a share that is none
 * @example      butternuts at 11 °C, no going over: 0.5 → 75
 */
export function lifeDaysAt({ fromLog, toLog, below }: LifeBelief, share: number): number {
  return Math.exp(fromLog + ((toLog - fromLog) / (below.length - 1)) * placeOf(share, below));
}

function logDensityOf({ logMean, logSd }: LifePrior, seen: readonly LossSeen[]): LogDensity {
  const counts = seen.map(({ fromAgeDays, toAgeDays, badPieces, usedPieces, soundPieces }) => {
    if (!(badPieces >= 0 && usedPieces >= 0 && soundPieces >= 0)) throw new RangeError('counts start from nothing');
    return { fromAgeDays, toAgeDays, badPieces, stoodPieces: soundPieces + usedPieces / 2 };
  });
  return (logLife) => {
    const life = Math.exp(logLife);
    return counts.reduce(
      (sum, { fromAgeDays, toAgeDays, badPieces, stoodPieces }) => {
        const hazard = lifeHazard * (livesGathered(toAgeDays, life) - livesGathered(fromAgeDays, life));
        const wentBad = badPieces > 0 ? badPieces * Math.log(-Math.expm1(-hazard)) : 0;
        return sum + wentBad - stoodPieces * hazard;
      },
      -(((logLife - logMean) / logSd) ** 2) / 2,
    );
  };
}

// A log-concave density rises to one top: the interval shrinks by the golden section.
function highest(density: LogDensity, { logMean, logSd }: LifePrior): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  const reach = Math.max(12 * logSd, 8);
  let [low, high] = [logMean - reach, logMean + reach];
  while (high - low > logSd / 1e4) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (density(left) < density(right)) low = left;
    else high = right;
  }
  return (low + high) / 2;
}

function vanishing(density: LogDensity, { top, most, step }: { top: number; most: number; step: number }): number {
  let reach = step;
  while (density(top + reach) > most - tailDrop) reach *= 1.5;
  return top + reach;
}

function cumulative(densityAt: (node: number) => number): readonly number[] {
  const below = [0];
  for (let node = 1; node <= nodes; node++)
    below.push((below[node - 1] ?? 0) + (densityAt(node - 1) + densityAt(node)) / 2);
  const all = below[nodes] ?? 1;
  return below.map((sum) => sum / all);
}

function placeOf(share: number, below: readonly number[]): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`a share between 0 and 1 is wanted: ${share}`);
  let [low, high] = [0, below.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((below[middle] ?? 1) < share) low = middle;
    else high = middle;
  }
  const [from, to] = [below[low] ?? 0, below[high] ?? 1];
  return low + (to > from ? (share - from) / (to - from) : 0);
}
