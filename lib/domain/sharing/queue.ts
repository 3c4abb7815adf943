import { type Claim, checkClaims } from './claim';
import { entriesOf, orderIn, type Stage, stages } from './entry';

/** One place in the queue: one load for one claim. */
export type Place = { readonly position: number; readonly stage: Stage; readonly round: number; readonly id: string };

/**
 * The queue of a delivery, place by place, so that any member reaches their own share with a pencil: count your places
 * among the first L, L being the loads in the heap.
 *
 * @param claims   as for `shareOut`
 * @param lotSeed  the delivery's seed
 * @param most     how many places to list; whole number ≥ 0
 * @returns        the first places, numbered from 1
 * @throws RangeError as `shareOut`
 * @example        asked 2 need 1 and asked 1 need 1 → needs 1, needs 1, wants 1
 */
export function queueOf(claims: readonly Claim[], lotSeed: string, most: number): Place[] {
  checkClaims(
    claims.reduce((sum, { collected = 0 }) => sum + collected, most),
    claims,
  );
  const entries = entriesOf(claims, lotSeed);
  const queue: Place[] = [];
  for (const stage of stages) {
    const order = entries.toSorted(orderIn(stage));
    for (let round = 1; queue.length < most; round++) {
      const taking = order.filter((entry) => entry[stage] >= round).slice(0, most - queue.length);
      if (taking.length === 0) break;
      for (const { claim } of taking) queue.push({ position: queue.length + 1, stage, round, id: claim.id });
    }
  }
  return queue;
}
