import { loadMillionths } from './claim';
import { byRank, type Entry, placesAfter } from './entry';
import { type HeapEnd, heapEnd } from './heap-end';

/** The places that an entry has in the whole rounds before the heap ends. */
export function wholePlaces(entry: Entry, { stage, rounds }: HeapEnd): number {
  return stage === 'all-met' ? entry.needs + entry.wants + entry.late : placesAfter(entry, stage, rounds);
}

/**
 * What each claim is due, as the queue has it whatever was collected: whole rounds, and an equal part of what the last round
 * held, its leftover millionths one each in lot order.
 *
 * Method: the queue is run anew as if nothing had been collected. Whoever came late is due what they are given, in whole loads,
 * so that no credit of theirs changes when others take beyond their share or join behind them; only where they hold what those
 * in time were due, on a heap that was measured smaller, do they owe it.
 *
 * @param loads    whole number ≥ Σ collected [barrow-loads]
 * @param entries  n ≥ 0 entries with unique ids; not changed
 * @param ended    where the heap ended, with what was collected
 * @param givenTo  what each is given; whole number ≥ 0 [barrow-loads]
 * @returns        by the claim's id; whole numbers ≥ 0 [10⁻⁶ load]
 * @source         the rule of the queue
 * @example        1 load; two equal claims → 500,000 each
 */
export function duesOf(
  loads: number,
  entries: readonly Entry[],
  ended: HeapEnd,
  givenTo: (entry: Entry) => number,
): ReadonlyMap<string, number> {
  const isPlain = entries.every(({ collected, late }) => collected === 0 && late === 0);
  const untouched = isPlain
    ? entries
    : entries.map((entry) => ({ ...entry, collected: 0, late: Math.min(entry.late, givenTo(entry)) }));
  // Where nothing was collected and nobody came late, the heap ends as it did.
  const end = isPlain ? ended : heapEnd(loads, untouched);
  const parts = partsOf(end);
  return new Map(
    untouched.map((entry) => {
      const { id } = entry.claim;
      return [id, wholePlaces(entry, end) * loadMillionths + (parts.get(id) ?? 0)];
    }),
  );
}

function partsOf({ stage, contenders, served }: HeapEnd): ReadonlyMap<string, number> {
  if (stage === 'late') return new Map(served.map(({ claim }) => [claim.id, loadMillionths]));
  const pool = served.length * loadMillionths;
  const each = Math.floor(pool / Math.max(contenders.length, 1));
  const over = pool - each * contenders.length;
  return new Map(contenders.toSorted(byRank).map(({ claim }, at) => [claim.id, each + (at < over ? 1 : 0)]));
}
