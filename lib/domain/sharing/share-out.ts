import { type Claim, checkClaims, loadMillionths } from './claim';
import { duesOf, wholePlaces } from './due';
import { byRank, type Entry, entriesOf, isLate, type Stage } from './entry';
import { type HeapEnd, heapEnd } from './heap-end';

/** Saved with each result, so that it can be worked out again by the same rule. */
const shareOutMethod = { name: 'queue of whole loads', version: 2 } as const;

/** Why a share is what it is: a code and its numbers, for words on a screen. */
export type ShareReason =
  | { readonly code: 'met-in-full' }
  /** Whole rounds only: the heap ended where a round did. */
  | { readonly code: 'level'; readonly stage: Stage; readonly level: number }
  /** The heap ended before a first want was served. */
  | { readonly code: 'needs-first'; readonly needMet: boolean }
  | {
      readonly code: 'odd-load' | 'odd-load-missed';
      readonly stage: Stage;
      readonly level: number;
      readonly left: number;
      readonly contenders: number;
      readonly by: 'credit' | 'lot';
    }
  | { readonly code: 'already-collected'; readonly places: number }
  /** Came late, and the heap ended before the waiting list. */
  | { readonly code: 'late-none' }
  /** Came late: so many whole rounds were left over. */
  | { readonly code: 'late-level'; readonly level: number }
  /** Came late: of the last loads, one each went to those who came first. */
  | {
      readonly code: 'late-turn' | 'late-missed';
      readonly level: number;
      readonly left: number;
      readonly contenders: number;
    };

type Share = {
  readonly id: string;
  readonly share: number;
  readonly dueMillionths: number;
  readonly creditAfterMillionths: number;
  readonly reason: ShareReason;
};

export type ShareOut = {
  readonly shares: readonly Share[];
  /** Where the heap ended: in which round of which stage, with how many claims for how many loads. */
  readonly ended: {
    readonly stage: Stage | 'all-met';
    readonly round: number;
    readonly contenders: number;
    readonly left: number;
  };
  readonly lotOrder: readonly string[];
  readonly method: typeof shareOutMethod;
};

/**
 * Share whole barrow-loads between claims by the queue: needs first, then wants, then who came late, one load a round.
 *
 * Method: constrained equal awards in whole units, in two stages; the last, partial round goes by opening credit, then
 * by lot. A share is the places a claim has in the longest prefix of one fixed queue that fits the heap, so one load more
 * never costs anybody a load. Where loads were collected already, a share is at least those, and the prefix that fits is
 * shorter; what was due is still read from the queue itself, so that whoever took too much owes it to who went short.
 * Late claims stand behind all others in the order in which they came, outside the lot; no part of a load is due to them.
 *
 * @param loads     loads in the heap; whole number ≥ 0 [barrow-loads]
 * @param claims    n ≥ 0 claims, unique ids; whole numbers ≥ 0 [barrow-loads]; credit in whole millionths [10⁻⁶ load];
 *                  a claim that was given up comes with its asked lowered to what it collected
 * @param lotSeed   the delivery's seed, lower-case hexadecimal
 * @returns         one share per claim in the order given, and due, summing to min(loads, Σ asked); 0 ≤ share ≤ asked
 *                  where no more was collected, and then credits change by a sum of exactly zero
 * @throws RangeError on a negative, fractional or repeated value, or more collected than the heap held
 * @source          W. Thomson, Mathematical Social Sciences 45 (2003), constrained equal awards; whole units: common practice
 * @example         10 loads; asked 6 need 4, asked 6 need 0 → 6, 4
 */
export function shareOut(given: {
  readonly loads: number;
  readonly claims: readonly Claim[];
  readonly lotSeed: string;
}): ShareOut {
  const { loads, claims, lotSeed } = given;
  checkClaims(loads, claims);
  const entries = entriesOf(claims, lotSeed);
  const end = heapEnd(loads, entries);
  const served = new Set(end.served);
  const contending = new Set(end.contenders);
  const placesOf = (entry: Entry) => wholePlaces(entry, end) + (served.has(entry) ? 1 : 0);
  const dues = duesOf(loads, entries, end, (entry) => Math.max(entry.collected, placesOf(entry)));
  return {
    shares: entries.map((entry) => {
      const last = { served: served.has(entry), contending: contending.has(entry) };
      return shareOf(entry, end, placesOf(entry), { dueMillionths: dues.get(entry.claim.id) ?? 0, last });
    }),
    ended: endOf(end),
    lotOrder: entries
      .filter(({ claim }) => !isLate(claim))
      .sort(byRank)
      .map(({ claim }) => claim.id),
    method: shareOutMethod,
  };
}

type LastRound = { readonly served: boolean; readonly contending: boolean };

function shareOf(
  entry: Entry,
  end: HeapEnd,
  places: number,
  { dueMillionths, last }: { dueMillionths: number; last: LastRound },
): Share {
  const { claim, collected } = entry;
  const share = Math.max(collected, places);
  return {
    id: claim.id,
    share,
    dueMillionths,
    creditAfterMillionths: claim.creditMillionths + dueMillionths - share * loadMillionths,
    reason: collected > places ? { code: 'already-collected', places } : reasonOf(entry, end, places, last),
  };
}

function reasonOf({ claim, needs }: Entry, end: HeapEnd, places: number, last: LastRound): ShareReason {
  if (end.stage === 'all-met') return { code: 'met-in-full' };
  const { stage, rounds: level, served, contenders } = end;
  if (isLate(claim)) return lateReasonOf(claim.asked, end, places, last);
  if (last.contending && served.length > 0) {
    const facts = { stage, level, left: served.length, contenders: contenders.length };
    if (last.served) return { code: 'odd-load', ...facts, by: decidedBy(claim, contenders[served.length]) };
    return { code: 'odd-load-missed', ...facts, by: decidedBy(claim, served.at(-1)) };
  }
  if (places === claim.asked) return { code: 'met-in-full' };
  const beforeWants = stage === 'needs' ? needs <= level : level === 0;
  return beforeWants ? { code: 'needs-first', needMet: needs > 0 } : { code: 'level', stage, level };
}

function lateReasonOf(asked: number, end: HeapEnd, places: number, last: LastRound): ShareReason {
  if (end.stage !== 'late') return asked === 0 ? { code: 'met-in-full' } : { code: 'late-none' };
  const { rounds: level, served, contenders } = end;
  if (last.contending && served.length > 0) {
    const code = last.served ? 'late-turn' : 'late-missed';
    return { code, level, left: served.length, contenders: contenders.length };
  }
  return places === asked ? { code: 'met-in-full' } : { code: 'late-level', level };
}

// Against the claim on the other side of the line: unequal credit decided, else the lot.
function decidedBy(claim: Claim, across: Entry | undefined): 'credit' | 'lot' {
  return across && across.claim.creditMillionths !== claim.creditMillionths ? 'credit' : 'lot';
}

function endOf({ stage, rounds, served, contenders }: HeapEnd): ShareOut['ended'] {
  // Where nothing was left for another round, the heap ended with the round before.
  return { stage, round: rounds + (served.length ? 1 : 0), contenders: contenders.length, left: served.length };
}
