import type { Claim } from './claim';
import { ranksOf } from './lot';

/**
 * The stages of the queue: what due ground justifies, then what is asked beyond it; and after both whoever came late, for
 * what is left over.
 */
export type Stage = 'needs' | 'wants' | 'late';

export const stages: readonly Stage[] = ['needs', 'wants', 'late'];

/** A claim as it stands in the queue: its places in each stage, and its rank in the lot. */
export type Entry = {
  readonly claim: Claim;
  readonly needs: number;
  readonly wants: number;
  readonly late: number;
  readonly collected: number;
  readonly rank: string;
};

/** Enter claims in the queue. A need is met only as far as it is asked for. */
export function entriesOf(claims: readonly Claim[], lotSeed: string): Entry[] {
  const rankOf = ranksOf(lotSeed);
  return claims.map((claim) => entryOf(claim, rankOf(claim.id)));
}

function entryOf(claim: Claim, rank: string): Entry {
  const { asked, need, collected = 0 } = claim;
  const after = isLate(claim) ? asked : 0;
  const needs = Math.min(asked - after, need);
  return { claim, needs, wants: asked - after - needs, late: after, collected, rank };
}

/** Whether a claim came after booking had closed. */
export function isLate({ late }: Claim): boolean {
  return late !== undefined;
}

/** How many places an entry has once so many whole rounds of a stage are over. */
export function placesAfter({ needs, wants, late }: Entry, stage: Stage, rounds: number): number {
  if (stage === 'needs') return Math.min(needs, rounds);
  if (stage === 'wants') return needs + Math.min(wants, rounds);
  return needs + wants + Math.min(late, rounds);
}

/** Order of the lot: smallest rank first. */
export function byRank(a: Entry, b: Entry): number {
  return a.rank < b.rank ? -1 : 1;
}

/** Order within a round: highest opening credit first, then the lot; among the late, as they came. */
export function orderIn(stage: Stage): (a: Entry, b: Entry) => number {
  return stage === 'late' ? byComing : byCreditThenLot;
}

function byCreditThenLot(a: Entry, b: Entry): number {
  return b.claim.creditMillionths - a.claim.creditMillionths || byRank(a, b);
}

function byComing(a: Entry, b: Entry): number {
  return (a.claim.late ?? 0) - (b.claim.late ?? 0);
}
