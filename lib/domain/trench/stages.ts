import { diggingMethodOf } from '../catalogue/digging-methods';
import { checkedDigging, type Digging } from './digging';
import type { Drawing } from './drawing';
import { planOf } from './plan-drawing';
import { isDone, type Progress } from './progress';
import { sectionOf } from './section-drawing';

/** What is done in a stage; the words are the screen's. */
export type StageCode =
  | 'mark-out'
  | 'open-first'
  | 'fork-bottom'
  | 'dress-bottom'
  | 'turn-next'
  | 'turn-round'
  | 'fill-last'
  | 'spread-strip'
  | 'fork-strip'
  | 'lay-mulch'
  | 'left-high'
  | 'laid'
  | 'spring-finish';

/** One stage of the work, as it looks when it is done. */
export type Stage = {
  readonly code: StageCode;
  /** The trench in hand; null where the stage is of the whole bed. */
  readonly trench: number | null;
  readonly section: Drawing;
  readonly plan: Drawing;
};

/**
 * The stages of the work for the sheet, each drawn from the side and from above.
 *
 * Method: mark out; the first trench step by step; once more the first step of the second, since so it goes on; the turn where
 * there are two halves; the last; left high; the spring finish. Forking and mulch open nothing and have fewer.
 *
 * @param digging  plan, dressing, soil and spring finish
 * @returns        in order of work; a stage only where its trench is there, once
 * @throws RangeError as `checkedDigging`
 * @source         common practice; RHS, Double digging
 * @example        double digging straight through → mark-out, open-first, fork-bottom, turn-next, fork-bottom, fill-last,
 *                 left-high, spring-finish
 */
export function stagesOf(digging: Digging): Stage[] {
  const { method } = checkedDigging(digging).plan.order;
  const count = digging.plan.trenches.length;
  const steps = stepsOf(digging, 1);
  if (diggingMethodOf(method).opensTrench) {
    if (count > 2) steps.push(...stepsOf(digging, 2).slice(0, 1));
    const turn = digging.plan.trenches.findIndex(({ half }) => half === 'second');
    if (turn > 1) steps.push(...stepsOf(digging, turn).slice(-1));
    if (count > 1) steps.push(...stepsOf(digging, count).slice(-1));
  }
  const ends = [endOf(digging)];
  if (digging.springFinishCm !== null && method !== 'mulch')
    ends.push({ code: 'spring-finish', hand: count, phase: 'finished' });
  return [{ code: 'mark-out' as const, hand: 1, phase: 'untouched' as const }, ...onceEach(steps), ...ends].map(
    (step) => drawn(digging, step),
  );
}

/**
 * The steps of one trench, each as it looks when it is done.
 *
 * Method: open (the first alone); fork or dress the bottom; turn the next top spit on to it, or fill the last.
 *
 * @param digging  as for `stagesOf`
 * @param number   the trench's, from 1
 * @returns        one to three stages in order of work
 * @throws RangeError on a number that no trench has, and as `checkedDigging`
 * @source         common practice
 * @example        trench 2 of 6, double digging → fork-bottom, turn-next
 */
export function stagesAtTrench(digging: Digging, number: number): Stage[] {
  checkNumber(number, checkedDigging(digging).plan.trenches.length);
  return stepsOf(digging, number).map((step) => drawn(digging, step));
}

/**
 * How the work looks now, with a trench in hand and those before it done.
 *
 * Method: the first stands marked out; any later one was opened when the one before it was filled.
 *
 * @param digging  as for `stagesOf`
 * @param number   the trench in hand, from 1; one more than there are when all are done
 * @returns        the stage that was done last: the first trench's is mark-out, and after the last left-high or laid
 * @throws RangeError on any other number, and as `checkedDigging`
 * @source         common practice
 * @example        trench 2 of 6, double digging → turn-next, trench 1 filled and trench 2 open
 */
export function stageAtTrench(digging: Digging, number: number): Stage {
  const count = checkedDigging(digging).plan.trenches.length;
  checkNumber(number, count + 1);
  if (number > count) return drawn(digging, endOf(digging));
  const last = stepsOf(digging, number - 1).at(-1);
  return drawn(digging, last ?? { code: 'mark-out', hand: 1, phase: 'untouched' });
}

type Step = Progress & { readonly code: StageCode };

function stepsOf({ plan, dressing }: Digging, hand: number): Step[] {
  if (hand < 1) return [];
  const { method } = plan.order;
  const { manure, meals, strawGPerM2 } = dressing;
  if (method === 'mulch') return [{ code: 'lay-mulch', hand, phase: 'filled' }];
  if (method === 'forking') {
    const spread: Step = { code: 'spread-strip', hand, phase: 'dressed' };
    const isDressed = manure !== null || meals.length > 0 || strawGPerM2 > 0;
    return [...(isDressed ? [spread] : []), { code: 'fork-strip', hand, phase: 'filled' }];
  }
  const steps: Step[] = hand === 1 ? [{ code: 'open-first', hand, phase: 'opened' }] : [];
  const hasBottom = (manure?.bottomGPerM2 ?? 0) > 0 || meals.some(({ into }) => into === 'bottom');
  if (method === 'double-digging') steps.push({ code: 'fork-bottom', hand, phase: 'dressed' });
  else if (hasBottom) steps.push({ code: 'dress-bottom', hand, phase: 'dressed' });
  return [...steps, { code: fillingOf(plan.trenches, hand), hand, phase: 'filled' }];
}

function fillingOf(trenches: Digging['plan']['trenches'], hand: number): StageCode {
  if (hand === trenches.length) return 'fill-last';
  return trenches[hand - 1]?.half === trenches[hand]?.half ? 'turn-next' : 'turn-round';
}

function endOf({ plan }: Digging): Step {
  const code = plan.order.method === 'mulch' ? 'laid' : 'left-high';
  return { code, hand: plan.trenches.length, phase: 'standing' };
}

function onceEach(steps: readonly Step[]): Step[] {
  return steps.filter(
    (step, at) => steps.findIndex((other) => other.code === step.code && other.hand === step.hand) === at,
  );
}

function drawn(digging: Digging, { code, hand, phase }: Step): Stage {
  const progress = { hand, phase };
  const isWhole = code === 'mark-out' || isDone(progress);
  return {
    code,
    trench: isWhole ? null : hand,
    section: sectionOf(digging, progress),
    plan: planOf(digging, progress),
  };
}

function checkNumber(number: number, most: number): void {
  if (!Number.isSafeInteger(number) || number < 1 || number > most)
    throw new RangeError(`trenches are numbered 1 to ${most}: ${number}`);
}
