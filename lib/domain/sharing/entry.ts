import type { Claim } from './claim';
import { rankOf } from './lot';

/** The two stages of the queue: what due ground justifies, then what is asked beyond it. */
export type Stage = 'needs' | 'wants';

export const stages: readonly Stage[] = ['needs', 'wants'];

/** A claim as it stands in the queue: its places in each stage, and its rank in the lot. */
export type Entry = {
  readonly claim: Claim;
  readonly needs: number;
  readonly wants: number;
  readonly collected: number;
  readonly rank: string;
};

/** Enter a claim in the queue. A need is met only as far as it is asked for. */
export function entryOf(claim: Claim, lotSeed: string): Entry {
  const needs = Math.min(claim.asked, claim.need);
  return { claim, needs, wants: claim.asked - needs, collected: claim.collected ?? 0, rank: rankOf(lotSeed, claim.id) };
}

/** How many places an entry has once so many whole rounds of a stage are over. */
export function placesAfter({ needs, wants }: Entry, stage: Stage, rounds: number): number {
  return stage === 'needs' ? Math.min(needs, rounds) : needs + Math.min(wants, rounds);
}

/** Order of the lot: smallest rank first. */
export function byRank(a: Entry, b: Entry): number {
  return a.rank < b.rank ? -1 : 1;
}

/** Order within every round: highest opening credit first, then the lot. */
export function byCreditThenLot(a: Entry, b: Entry): number {
  return b.claim.creditMillionths - a.claim.creditMillionths || byRank(a, b);
}
