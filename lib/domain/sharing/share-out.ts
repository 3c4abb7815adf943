import { type Claim, checkClaims, loadMillionths, places } from './claim';
import { rankOf } from './lot';

/** Saved with each result, so that it can be worked out again by the same rule. */
export const shareOutMethod = { name: 'queue of whole loads', version: 1 } as const;

export type Stage = 'needs' | 'wants';

/** Why a share is what it is: a code and its numbers, for words on a screen. */
export type ShareReason =
  | { readonly code: 'met-in-full' }
  /** Whole rounds only: the heap ended where a round did, or before its turn for wants came. */
  | { readonly code: 'level'; readonly stage: Stage; readonly level: number }
  | { readonly code: 'needs-first'; readonly needMet: boolean }
  | { readonly code: 'odd-load' | 'odd-load-missed'; readonly stage: Stage; readonly level: number; readonly left: number; readonly contenders: number; readonly by: 'credit' | 'lot' }
  | { readonly code: 'already-collected'; readonly places: number };

export type Share = {
  readonly id: string;
  readonly share: number;
  readonly dueMillionths: number;
  readonly creditAfterMillionths: number;
  readonly reason: ShareReason;
};

export type ShareOut = {
  readonly shares: readonly Share[];
  /** Where the heap ended: in which round of which stage, with how many claims for how many loads. */
  readonly ended: { readonly stage: Stage | 'all-met'; readonly round: number; readonly contenders: number; readonly left: number };
  readonly lotOrder: readonly string[];
  readonly method: typeof shareOutMethod;
};

type Entry = { claim: Claim; needs: number; wants: number; collected: number; rank: string };
type End = { stage: Stage | 'all-met'; rounds: number; served: readonly Entry[]; contenders: readonly Entry[] };

/**
 * Share whole barrow-loads between claims by the queue: needs first, then wants, one load a round.
 *
 * Method: constrained equal awards in whole units, in two stages; the last, partial round goes by opening credit, then
 * by lot. A share is the places a claim has in the longest prefix of one fixed queue that fits the heap, so one load more
 * never costs anybody a load. Where loads were collected already, a share is at least those. The queue is never written
 * out: whole rounds are found by bisection on their number, and only the last is walked.
 *
 * @param loads     loads in the heap; whole number ≥ 0 [barrow-loads]
 * @param claims    n ≥ 0 claims, unique ids; whole numbers ≥ 0 [barrow-loads]; credit in whole millionths [10⁻⁶ load];
 *                  a claim that was given up comes with its asked lowered to what it collected
 * @param lotSeed   the delivery's seed, lower-case hexadecimal
 * @returns         one share per claim in the order given; without `collected`: 0 ≤ share ≤ asked, summing to
 *                  min(loads, Σ asked), and credits change by a sum of exactly zero
 * @throws RangeError on a negative, fractional or repeated value, or more collected than the heap held
 * @source          W. Thomson, Mathematical Social Sciences 45 (2003), constrained equal awards; whole units: common practice
 * @example         10 loads; asked 6 need 4, asked 6 need 0 → 6, 4
 */
export function shareOut(given: { readonly loads: number; readonly claims: readonly Claim[]; readonly lotSeed: string }): ShareOut {
  const { loads, claims, lotSeed } = given;
  checkClaims(loads, claims);
  const entries = claims.map((claim): Entry => ({ claim, ...places(claim), collected: claim.collected ?? 0, rank: rankOf(lotSeed, claim.id) }));
  const end = whereTheHeapEnds(loads, entries);
  const dues = dueInLastRound(end);
  const served = new Set(end.served);
  const contending = new Set(end.contenders);
  return {
    shares: entries.map((entry) => shareOf(entry, end, served.has(entry), contending.has(entry), dues.get(entry) ?? 0)),
    ended: endOf(end),
    lotOrder: entries.toSorted(byRank).map(({ claim }) => claim.id),
    method: shareOutMethod,
  };
}

function whereTheHeapEnds(loads: number, entries: readonly Entry[]): End {
  const stages: readonly Stage[] = ['needs', 'wants'];
  for (const stage of stages) {
    const cost = (rounds: number) => entries.reduce((sum, entry) => sum + Math.max(entry.collected, placesAfter(entry, stage, rounds)), 0);
    const most = entries.reduce((rounds, entry) => Math.max(rounds, entry[stage]), 0);
    if (cost(most) <= loads) continue;
    let [fits, exceeds] = [0, most];
    while (exceeds - fits > 1) {
      const half = Math.floor((fits + exceeds) / 2);
      if (cost(half) <= loads) fits = half;
      else exceeds = half;
    }
    const contenders = entries.filter((entry) => entry[stage] > fits).sort(byCreditThenLot);
    return { stage, rounds: fits, contenders, served: longestPrefix(contenders, stage, fits, loads - cost(fits)) };
  }
  return { stage: 'all-met', rounds: 0, contenders: [], served: [] };
}

// A place already collected costs nothing more; the prefix ends before the first that does not fit.
function longestPrefix(contenders: readonly Entry[], stage: Stage, rounds: number, left: number): Entry[] {
  let spare = left;
  const stop = contenders.findIndex((entry) => {
    if (entry.collected > placesAfter(entry, stage, rounds)) return false;
    spare -= 1;
    return spare < 0;
  });
  return contenders.slice(0, stop < 0 ? contenders.length : stop);
}

// How many places a claim has once so many whole rounds of a stage are over.
function placesAfter(entry: Entry, stage: Stage, rounds: number): number {
  return stage === 'needs' ? Math.min(entry.needs, rounds) : entry.needs + Math.min(entry.wants, rounds);
}

// Each contender of the last round was due an equal part of what it held; leftover millionths go one each in lot order.
function dueInLastRound({ served, contenders }: End): Map<Entry, number> {
  if (served.length === 0) return new Map();
  const pool = served.length * loadMillionths;
  const each = Math.floor(pool / contenders.length);
  const over = pool - each * contenders.length;
  return new Map(contenders.toSorted(byRank).map((entry, at) => [entry, each + (at < over ? 1 : 0)]));
}

function shareOf(entry: Entry, end: End, isServed: boolean, isContending: boolean, lastDue: number): Share {
  const { claim, needs, wants, collected } = entry;
  const whole = end.stage === 'all-met' ? needs + wants : placesAfter(entry, end.stage, end.rounds);
  const queued = whole + (isServed ? 1 : 0);
  const share = Math.max(collected, queued);
  const dueMillionths = whole * loadMillionths + lastDue;
  return {
    id: claim.id,
    share,
    dueMillionths,
    creditAfterMillionths: claim.creditMillionths + dueMillionths - share * loadMillionths,
    reason: collected > queued ? { code: 'already-collected', places: queued } : reasonOf(entry, end, queued, isServed, isContending),
  };
}

function reasonOf({ claim, needs }: Entry, end: End, queued: number, isServed: boolean, isContending: boolean): ShareReason {
  const { stage, rounds, served, contenders } = end;
  if (isContending && served.length > 0) {
    const facts = { stage: stage as Stage, level: rounds, left: served.length, contenders: contenders.length };
    if (isServed) return { code: 'odd-load', ...facts, by: decidedBy(claim, contenders[served.length]) };
    return { code: 'odd-load-missed', ...facts, by: decidedBy(claim, served.at(-1)) };
  }
  if (queued === claim.asked) return { code: 'met-in-full' };
  if (stage === 'needs' && needs <= rounds) return { code: 'needs-first', needMet: needs > 0 };
  return { code: 'level', stage: stage as Stage, level: rounds };
}

// Against the claim on the other side of the line: unequal credit decided, else the lot.
function decidedBy(claim: Claim, across: Entry | undefined): 'credit' | 'lot' {
  return across && across.claim.creditMillionths !== claim.creditMillionths ? 'credit' : 'lot';
}

function endOf({ stage, rounds, served, contenders }: End): ShareOut['ended'] {
  if (stage === 'all-met') return { stage, round: 0, contenders: 0, left: 0 };
  // Where nothing was left for another round, the heap ended with the round before.
  return { stage, round: rounds + (served.length ? 1 : 0), contenders: contenders.length, left: served.length };
}

function byRank(a: Entry, b: Entry): number {
  return a.rank < b.rank ? -1 : 1;
}

function byCreditThenLot(a: Entry, b: Entry): number {
  return b.claim.creditMillionths - a.claim.creditMillionths || byRank(a, b);
}
