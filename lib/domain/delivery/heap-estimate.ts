import { wholeFrom } from '../quantity/checked';

/** A heap that is being collected, in barrow-loads, and the newest look at it by eye. */
export type HeapNow = {
  /** As measured. */
  readonly heapLoads: number;
  readonly sharedLoads: number;
  readonly collectedLoads: number;
  readonly look: {
    readonly loads: number;
    /** What had been ticked off when somebody looked. */
    readonly collectedLoads: number;
  } | null;
};

export type HeapEstimate = {
  /** By the count: the heap as measured, less what is ticked off. */
  readonly byCount: number;
  /** By the newest look, less what was ticked off since; null where nobody looked. */
  readonly byEye: number | null;
  /** Of the shares, what is still to be fetched. */
  readonly toCome: number;
  /** By eye it may not reach for everybody. */
  readonly mayRunShort: boolean;
};

/**
 * What is left on a heap by the count and by eye, and whether it may run short before everybody has fetched their share.
 *
 * Method: counts are subtracted, and the eye is believed before the count. Ticking off a share lowers what is left and what is
 * to come alike, so only a new look, a new measuring or a new share-out changes the answer.
 *
 * @param heap    whole numbers ≥ 0; collectedLoads ≤ sharedLoads ≤ heapLoads; a look's collectedLoads may be above it, where ticks were undone since
 * @returns       byEye never below 0
 * @throws RangeError on anything else
 * @source        arithmetic
 * @example       heap 40, shared 40, collected 20; seen 12 when 17 were collected → by count 20, by eye 9, 20 to come: may run short
 */
export function heapEstimate({ heapLoads, sharedLoads, collectedLoads, look }: HeapNow): HeapEstimate {
  wholeFrom(wholeFrom(wholeFrom(0, collectedLoads), sharedLoads), heapLoads);
  const toCome = sharedLoads - collectedLoads;
  const byEye = look && Math.max(0, wholeFrom(0, look.loads) - (collectedLoads - wholeFrom(0, look.collectedLoads)));
  return { byCount: heapLoads - collectedLoads, byEye, toCome, mayRunShort: byEye !== null && byEye < toCome };
}
