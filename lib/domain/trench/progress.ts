import { diggingMethodOf } from '../catalogue/digging-methods';
import type { Arrow } from './drawing';
import type { TrenchPlan } from './trench-plan';

/**
 * How far the work has come: the trench in hand, and what has just been done to it. Standing: all is done and left high.
 * Finished: its top was folded in.
 */
export type Progress = {
  readonly hand: number;
  readonly phase: 'untouched' | 'opened' | 'dressed' | 'filled' | 'standing' | 'finished';
};
export type TrenchState = 'undug' | 'opened' | 'dressed' | 'filled' | 'finished';

/** Whether no one trench is in hand any more. */
export function isDone({ phase }: Progress): boolean {
  return phase === 'standing' || phase === 'finished';
}

/**
 * How a trench looks when the work has come so far.
 *
 * Method: those before the one in hand are filled, those after it not begun; but filling one opens the next, whose soil it took.
 *
 * @param progress  hand: a trench's number
 * @param number    the trench that is looked at, from 1
 * @returns         its state; the whole bed is in one state when the work is done
 * @throws RangeError on a method that is none
 * @source          common practice
 * @example         trench 2 just filled, double digging → 1 and 2 filled, 3 opened, 4 undug
 */
export function stateOf({ order }: TrenchPlan, { hand, phase }: Progress, number: number): TrenchState {
  if (phase === 'finished') return 'finished';
  if (number < hand || phase === 'standing') return 'filled';
  if (number === hand) return phase === 'untouched' ? 'undug' : phase;
  const isNext = number === hand + 1 && phase === 'filled';
  return isNext && diggingMethodOf(order.method).opensTrench ? 'opened' : 'undug';
}

/**
 * Whether the first trench's soil lies waiting: from when it was thrown out until the last trench is filled with it.
 *
 * @param progress  hand: a trench's number
 * @returns         never where nothing is opened
 * @throws RangeError on a method that is none
 * @source          common practice
 * @example         the last trench forked → true; filled → false
 */
export function heapWaits({ order, trenches }: TrenchPlan, { hand, phase }: Progress): boolean {
  if (!diggingMethodOf(order.method).opensTrench) return false;
  if (phase === 'opened' || phase === 'dressed') return true;
  return phase === 'filled' && hand < trenches.length;
}

export type Movement = { readonly code: Arrow['code']; readonly from: number | 'heap'; readonly to: number | 'heap' };

/**
 * The soil that was on its way when the work came so far.
 *
 * Method: the first trench's goes to the heap; each other's to the one before; the heap into the last.
 *
 * @param progress  hand: a trench's number
 * @returns         from where to where; null where none was moved
 * @throws RangeError on a method that is none
 * @source          common practice
 * @example         trench 2 of 6 filled → a throw from 3 to 2
 */
export function movementAt({ order, trenches }: TrenchPlan, { hand, phase }: Progress): Movement | null {
  if (!diggingMethodOf(order.method).opensTrench) return null;
  if (phase === 'opened' && hand === 1) return { code: 'carry', from: 1, to: 'heap' };
  if (phase !== 'filled') return null;
  if (hand === trenches.length) return { code: 'throw', from: 'heap', to: hand };
  const turns = trenches[hand - 1]?.half !== trenches[hand]?.half;
  return { code: turns ? 'turn' : 'throw', from: hand + 1, to: hand };
}
