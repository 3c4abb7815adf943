import { wholeFrom } from '../quantity/checked';
import { type Claim, checkClaims } from './claim';
import { type Entry, entriesOf, orderIn, type Stage, stages } from './entry';

/** One round of the queue: its places, and whom they went to. */
export type Round = {
  readonly stage: Stage;
  readonly round: number;
  /** Its first place in the queue, from 1. */
  readonly from: number;
  /** Ids in order: those who were served, and those for whom the heap had ended. */
  readonly served: readonly string[];
  readonly missed: readonly string[];
  /** Of those served, whose last place this was: they have all that they asked for. */
  readonly met: readonly string[];
};

/**
 * The rounds of a delivery that the heap reached, each with who was served, who missed, and who then had all they asked for.
 *
 * @param claims   as for `shareOut`; what was collected is passed over
 * @param places   how many places of the queue were served; whole number ≥ 0
 * @param lotSeed  the delivery's seed
 * @returns        rounds in order; all are served but the last, which may be served in part
 * @throws RangeError as `shareOut`, and on places that are not whole
 * @source         the rule of the queue
 * @example        asked 2 need 1, asked 1 need 1; 2 places → one round of needs, both served, the second met
 */
export function roundsOf(claims: readonly Claim[], places: number, lotSeed: string): Round[] {
  checkClaims(
    claims.reduce((sum, { collected = 0 }) => sum + collected, 0),
    claims,
  );
  const entries = entriesOf(claims, lotSeed);
  const rounds: Round[] = [];
  let done = 0;
  for (const stage of stages) {
    const order = entries.toSorted(orderIn(stage));
    for (let round = 1; done < wholeFrom(0, places); round++) {
      const taking = order.filter((entry) => entry[stage] >= round);
      if (taking.length === 0) break;
      const served = taking.slice(0, places - done);
      rounds.push({
        ...{ stage, round, from: done + 1 },
        served: idsOf(served),
        missed: idsOf(taking.slice(served.length)),
        met: idsOf(served.filter((entry) => isLast(entry, stage, round))),
      });
      done += served.length;
    }
  }
  return rounds;
}

function isLast({ needs, wants, late }: Entry, stage: Stage, round: number): boolean {
  if (stage === 'needs') return needs === round && wants === 0;
  return (stage === 'wants' ? wants : late) === round;
}

function idsOf(entries: readonly Entry[]): string[] {
  return entries.map(({ claim }) => claim.id);
}
