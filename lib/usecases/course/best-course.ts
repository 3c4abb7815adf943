import 'server-only';
import { courseProgramme, type CourseWish, strictProgramme, wishesOf } from '@/lib/domain/course/course-programme';
import { type CourseCost, costOf, isBetter, type Level, levels } from '@/lib/domain/course/cost';
import { type CourseInstance, type CoursePlan, openKey } from '@/lib/domain/course/instance';
import { smallestConflict } from '@/lib/domain/course/smallest-conflict';
import { type Row, withRows } from '@/lib/domain/programme/programme';
import type { Solver } from '@/lib/platform/solver';

/** What the planner found: the plan, what it costs, and whether anything better could exist. */
export type BestCourse = {
  readonly plan: CoursePlan;
  readonly cost: CourseCost;
  /** Null: proven best. Else the first level at which time ran out, and how much better a plan might do there. */
  readonly gap: { readonly level: Level; readonly atLeast: number | null } | null;
  /** A smallest set of wishes that can't all be met with every break kept; null where all can, or time ran out. */
  readonly conflict: readonly CourseWish[] | null;
  readonly conflictKnown: boolean;
};

export type CourseProgress = {
  readonly at: Level | 'conflict';
  /** The best plan's cost at this level so far, and what none can be below [weight × cm², or cm²]. */
  readonly best: number | null;
  readonly bound: number | null;
};

type Limits = { readonly seconds: number; readonly onProgress?: (progress: CourseProgress) => void };

const cm2PerM2 = 10_000;

/**
 * The best course for an instance: level by level, each solved to proof before the next is looked at, within a time limit.
 * Where a rule is broken or something wanted is lacking, also why: a smallest set of wishes that clash.
 *
 * @param limits.seconds  for everything together; what is found by then is given, and said not to be proven
 */
export async function bestCourse(solver: Solver, instance: CourseInstance, limits: Limits): Promise<BestCourse> {
  const until = Date.now() + limits.seconds * 1000;
  const { plan, cost, gap } = await levelByLevel(solver, instance, until, limits.onProgress);
  const isAllMet = cost.rules === 0 && cost.shortfall === 0;
  if (isAllMet) return { plan, cost, gap, conflict: null, conflictKnown: true };
  limits.onProgress?.({ at: 'conflict', best: null, bound: null });
  const conflict = await conflictOf(solver, instance, until);
  return { plan, cost, gap, conflict: conflict ?? null, conflictKnown: conflict !== undefined };
}

async function levelByLevel(
  solver: Solver,
  instance: CourseInstance,
  until: number,
  onProgress: Limits['onProgress'],
): Promise<Pick<BestCourse, 'plan' | 'cost' | 'gap'>> {
  const { programme, objectives, planOf, hold } = courseProgramme(instance);
  const held: Row[] = [];
  // There is always some plan: what is fixed, and the rest left open.
  const open = instance.beds.map(({ fixed }) => fixed.map((key) => key ?? openKey));
  let found = { plan: open as CoursePlan, cost: costOf(instance, open).cost };
  for (const level of levels) {
    if (objectives[level].length === 0) continue;
    const report = (best: number | null, bound: number | null) => onProgress?.({ at: level, best, bound });
    report(null, null);
    const seconds = Math.max(0.2, (until - Date.now()) / 1000);
    const solution = await solver.solve(withRows(programme, held), objectives[level], {
      seconds,
      onProgress: ({ best, bound }) => report(toCm2(best), toCm2(bound)),
    });
    if (solution.values) {
      const plan = planOf(solution.values);
      const { cost } = costOf(instance, plan);
      if (isBetter(cost, found.cost)) found = { plan, cost };
    }
    if (solution.status !== 'best') return { ...found, gap: { level, atLeast: toCm2(solution.bound) } };
    held.push(hold(level, found.cost[level]));
  }
  return { ...found, gap: null };
}

// Undefined where time ran out before it was known.
async function conflictOf(
  solver: Solver,
  instance: CourseInstance,
  until: number,
): Promise<readonly CourseWish[] | null | undefined> {
  const wishes = wishesOf(instance);
  const search = smallestConflict(wishes.length);
  let step = search.next();
  while (!step.done) {
    const seconds = (until - Date.now()) / 1000;
    if (seconds <= 0) return undefined;
    const asked = step.value.flatMap((at) => wishes[at] ?? []);
    const { status } = await solver.solve(strictProgramme(instance, asked), [], { seconds });
    if (status === 'stopped') return undefined;
    step = search.next(status === 'best');
  }
  return step.value && step.value.flatMap((at) => wishes[at] ?? []);
}

function toCm2(value: number | null): number | null {
  return value === null ? null : Math.round(value * cm2PerM2);
}
