import 'server-only';
import { beatCourse, beginCourse, courseById, endCourse } from '@/lib/data/course';
import { db } from '@/lib/data/db';
import { holdingById } from '@/lib/data/holding';
import { openScopeOfMember } from '@/lib/data/scope';
import type { CourseWish } from '@/lib/domain/course/course-programme';
import { now, todayIn } from '@/lib/platform/clock';
import { env } from '@/lib/platform/env';
import { logFailure } from '@/lib/platform/log';
import { SolverStopped, startSolver } from '@/lib/platform/solver';
import { type BestCourse, bestCourse } from './best-course';
import { type CourseQuestion, courseQuestion } from './course-instance';
import type { Found, KeptWish, Progress, Wishes } from './wishes';

/** How often the screen hears of it, and a cancelling is noticed [ms]. */
const beatMs = 500;

/** Work a course out that somebody asked for: in a process of its own, with a time limit, stopped when it is cancelled. */
export async function solveCourse({ id }: { id: string }): Promise<void> {
  const begun = await beginCourse(db(), id, now());
  if (!begun) return;
  const scope = await openScopeOfMember(db(), begun.askedByMemberId);
  const solver = startSolver();
  let progress: Progress = { at: 'rules', best: null, bound: null };
  const beat = setInterval(() => void hear(), beatMs);
  const hear = async () => {
    const goesOn = await beatCourse(db(), scope, id, now(), progress).catch(() => true);
    if (!goesOn) await solver.stop();
  };
  const since = Date.now();
  try {
    const question = await questionOf(id, scope);
    const best = await bestCourse(solver, question.instance, {
      seconds: env().courseSeconds,
      onProgress: (at) => {
        progress = at;
      },
    });
    const found = toFound(best, question, (Date.now() - since) / 1000);
    await endCourse(db(), scope, id, { state: 'solved', found, at: now() });
  } catch (error) {
    // Cancelled: its state says so already.
    if (error instanceof SolverStopped) return;
    logFailure(`course ${id}`, error);
    await endCourse(db(), scope, id, { state: 'failed', at: now() });
  } finally {
    clearInterval(beat);
    await solver.stop();
  }
}

async function questionOf(id: string, scope: Awaited<ReturnType<typeof openScopeOfMember>>): Promise<CourseQuestion> {
  const today = todayIn(scope.timeZone);
  const course = await courseById(db(), scope, id);
  const holding = course && (await holdingById(db(), scope, course.holdingId, today));
  if (!course || !holding) throw new Error('the course or its holding is gone');
  const { firstSeason, years } = course;
  return courseQuestion({ db: db(), scope, today }, holding, { firstSeason, years, wishes: course.wishes as Wishes });
}

function toFound(
  { plan, cost, gap, conflict, conflictKnown }: BestCourse,
  { beds }: CourseQuestion,
  seconds: number,
): Found {
  return {
    board: Object.fromEntries(beds.map(({ bed }, at) => [bed.id, [...(plan[at] ?? [])]])),
    cost,
    gap,
    conflict: conflict && conflict.map((wish) => toKept(wish, beds)),
    conflictKnown,
    seconds: Math.round(seconds * 10) / 10,
  };
}

function toKept(wish: CourseWish, beds: CourseQuestion['beds']): KeptWish {
  if (wish.kind === 'wanted') return { kind: 'wanted', key: wish.option, areaCm2: wish.areaCm2 };
  return { kind: 'must', bedId: beds[wish.bed]?.bed.id ?? '', year: wish.year, key: wish.option };
}
