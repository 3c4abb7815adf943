import { type Entry, orderIn, placesAfter, type Stage, stages } from './entry';

/** Where a heap ends: after so many whole rounds of a stage, with who wanted the next place and who still had one. */
export type HeapEnd =
  | {
      readonly stage: Stage;
      readonly rounds: number;
      readonly contenders: readonly Entry[];
      readonly served: readonly Entry[];
    }
  | { readonly stage: 'all-met'; readonly rounds: 0; readonly contenders: readonly []; readonly served: readonly [] };

/**
 * Find where the heap ends: the longest prefix of the queue that fits it.
 *
 * Method: the queue is never written out. A prefix takes from the heap, of each entry, the greater of its places and of
 * what it collected; that only grows with the rounds, so the last whole round is found by bisection, and only the round
 * after it is walked. A place that was collected already takes nothing more.
 *
 * @param loads    whole number ≥ Σ collected [barrow-loads]
 * @param entries  n ≥ 0 entries with unique ids; not changed
 * @returns        contenders in the order of their stage; served is the head of them, always short of all
 * @example        5 loads; needs 1, 4, 4 → stage needs, 2 rounds, 2 contenders, none served
 */
export function heapEnd(loads: number, entries: readonly Entry[]): HeapEnd {
  for (const stage of stages) {
    const most = entries.reduce((rounds, entry) => Math.max(rounds, entry[stage]), 0);
    if (takenAfter(entries, stage, most) <= loads) continue;
    const rounds = wholeRounds(loads, entries, stage, most);
    const contenders = entries.filter((entry) => entry[stage] > rounds).sort(orderIn(stage));
    const left = loads - takenAfter(entries, stage, rounds);
    return { stage, rounds, contenders, served: longestPrefix(contenders, stage, rounds, left) };
  }
  return { stage: 'all-met', rounds: 0, contenders: [], served: [] };
}

function takenAfter(entries: readonly Entry[], stage: Stage, rounds: number): number {
  return entries.reduce((sum, entry) => sum + Math.max(entry.collected, placesAfter(entry, stage, rounds)), 0);
}

function wholeRounds(loads: number, entries: readonly Entry[], stage: Stage, most: number): number {
  let [fits, exceeds] = [0, most];
  while (exceeds - fits > 1) {
    const half = fits + Math.floor((exceeds - fits) / 2);
    if (takenAfter(entries, stage, half) <= loads) fits = half;
    else exceeds = half;
  }
  return fits;
}

// The prefix ends before the first place that does not fit, though a later one might cost nothing.
function longestPrefix(contenders: readonly Entry[], stage: Stage, rounds: number, left: number): readonly Entry[] {
  let spare = left;
  const stop = contenders.findIndex((entry) => {
    if (entry.collected > placesAfter(entry, stage, rounds)) return false;
    spare -= 1;
    return spare < 0;
  });
  return contenders.slice(0, stop);
}
