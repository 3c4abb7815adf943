import { addDays, type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { diggingMinutes } from '../exertion/digging-minutes';
import { type DiggingPlan, planDays } from '../exertion/plan-days';
import type { Digger } from '../exertion/session';
import type { TrenchPart } from '../exertion/split-trenches';
import { areaCm2 } from '../ground/footprint';
import type { TrenchPlan } from '../trench/trench-plan';
import type { Tick } from './done-ground';

/** Who digs, how often they come, and by when it is to be done. */
export type Pace = {
  readonly digger: Digger;
  readonly sessionsPerWeek: number;
  readonly from: CalendarDate;
  readonly until: CalendarDate;
};

export type Portion = {
  /** Of all that was not done before today. */
  readonly plan: DiggingPlan;
  /** What of it falls to today, whether it is done by now or not. */
  readonly today: readonly (TrenchPart & {
    /** All the digging in that trench [min]. */
    readonly ofMinutes: number;
  })[];
  /** Trenches of today that are done by now, and that are left of today's portion. */
  readonly doneToday: number;
  readonly leftToday: number;
  /** Days on which to dig, today or the first day of the season among them; 0 once it is past. */
  readonly daysLeft: number;
};

/**
 * What a digger does today: whole trenches as far as their session goes, and what is left of the days.
 *
 * Method: what was not done before today is parted over sessions anew; the first of them is today's. A trench that was
 * begun and not ticked counts in full.
 *
 * @param ticks      trenches done
 * @param soilMassG  turned in the trenches that were not done before today; null where it is not known [g]
 * @returns          null once no trench is left that was not done before today
 * @throws RangeError as `planDays`
 * @source           as `planDays`
 * @example          six trenches of 19 min, 32 min of digging a session, none done → today trench 1 alone
 */
export function portionOf(
  plan: TrenchPlan,
  ticks: readonly Tick[],
  { digger, sessionsPerWeek, from, until }: Pace,
  today: CalendarDate,
  soilMassG: number | null,
): Portion | null {
  const before = ticks.filter(({ doneOn }) => doneOn < today);
  const left = plan.trenches.filter(({ number }) => !before.some(({ trench }) => trench === number));
  if (left.length === 0) return null;
  const start = today < from ? from : today;
  const daysLeft = start > until ? 0 : daysBetween(start, addDays(until, 1));
  const minutes = left.map(({ footprint }) => diggingMinutes(areaCm2(footprint), plan.order.method, digger.pace));
  const days = planDays({
    work: { kind: 'trenches', minutes },
    digger,
    sessionsPerWeek,
    daysLeft,
    soilMassG,
    sessionsDone: new Set(before.map(({ doneOn }) => doneOn)).size,
  });
  const parts = (days.split?.[0] ?? []).map((part) => ({
    ...part,
    trench: left[part.trench - 1]?.number ?? 0,
    ofMinutes: minutes[part.trench - 1] ?? 0,
  }));
  const isDone = (number: number) => ticks.some(({ trench }) => trench === number);
  return {
    plan: days,
    today: parts,
    doneToday: ticks.length - before.length,
    leftToday: parts.filter(({ trench, finishes }) => finishes && !isDone(trench)).length,
    daysLeft,
  };
}
