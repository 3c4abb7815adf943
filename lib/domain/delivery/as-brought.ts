import { wholeFrom } from '../quantity/checked';

/** One delivery as it was ordered and as its heap was measured [barrow-loads]. */
export type Brought = { readonly orderedLoads: number; readonly heapLoads: number };

export type AsBrought = {
  readonly deliveries: number;
  readonly orderedLoads: number;
  readonly heapLoads: number;
  /** More (+) or less (−) than said, of what was ordered; to the nearest [percent]. */
  readonly differencePercent: number;
};

/**
 * How a supplier's measured heaps compare with what was ordered, all of them together.
 *
 * @param brought  orderedLoads ≥ 1, heapLoads ≥ 0; whole numbers [barrow-loads]
 * @returns        sums and their difference, halves rounded away from nothing; null where nothing was measured yet
 * @throws RangeError on anything else
 * @source         arithmetic
 * @example        ordered 140 and 60, measured 120 and 64 → 8 % less, over 2 deliveries
 */
export function asBrought(brought: readonly Brought[]): AsBrought | null {
  if (brought.length === 0) return null;
  const orderedLoads = brought.reduce((sum, one) => sum + wholeFrom(1, one.orderedLoads), 0);
  const heapLoads = brought.reduce((sum, one) => sum + wholeFrom(0, one.heapLoads), 0);
  const over = heapLoads - orderedLoads;
  const percent = Math.floor((200 * Math.abs(over) + orderedLoads) / (2 * orderedLoads));
  return { deliveries: brought.length, orderedLoads, heapLoads, differencePercent: over < 0 ? 0 - percent : percent };
}
