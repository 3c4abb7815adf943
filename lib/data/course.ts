import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { Db, Json, Tx } from './db';
import type { Scope } from './scope';

export type CourseState = 'waiting' | 'solving' | 'solved' | 'cancelled' | 'failed';

const shown = {
  id: true,
  holdingId: true,
  askedByMemberId: true,
  firstSeason: true,
  years: true,
  wishes: true,
  state: true,
  progress: true,
  found: true,
  board: true,
  askedAt: true,
  beatAt: true,
  endedAt: true,
  takenOnAt: true,
} satisfies Prisma.CourseSelect;

type Kept = 'state' | 'wishes' | 'progress' | 'found' | 'board';

/** A course as it is kept. What is wished, found and changed is the use-cases' own shape, and plain data here. */
export type CourseRecord = Omit<Prisma.CourseGetPayload<{ select: typeof shown }>, Kept> & {
  readonly state: CourseState;
} & Readonly<Record<Exclude<Kept, 'state'>, unknown>>;

/** The courses a holding asked for, newest first. */
export async function coursesOf(db: Db, scope: Scope, holdingIds: readonly string[]): Promise<CourseRecord[]> {
  const where = { societyId: scope.societyId, holdingId: { in: [...holdingIds] } };
  const rows = await db.course.findMany({ where, select: shown, orderBy: { askedAt: 'desc' }, take: 20 });
  return rows as CourseRecord[];
}

/** One course, or null. */
export async function courseById(db: Db, scope: Scope, id: string): Promise<CourseRecord | null> {
  const row = await db.course.findFirst({ where: { id, societyId: scope.societyId }, select: shown });
  return row as CourseRecord | null;
}

type NewCourse = { holdingId: string; firstSeason: number; years: number; wishes: Json };

/** Write down what is asked, and queue the solving with it. */
export async function createCourse(tx: Tx, scope: Scope, course: NewCourse, at: Date): Promise<string> {
  const data = { ...course, societyId: scope.societyId, askedByMemberId: scope.memberId, askedAt: at };
  const { id } = await tx.course.create({ data, select: { id: true } });
  await tx.$executeRaw`SELECT graphile_worker.add_job('solve-course', json_build_object('id', ${id}::text), max_attempts => 1)`;
  return id;
}

/** Write a course down that needs no solving. */
export async function createSolvedCourse(
  tx: Tx,
  scope: Scope,
  course: NewCourse & { found: Json },
  at: Date,
): Promise<string> {
  const { societyId, memberId: askedByMemberId } = scope;
  const data = { ...course, societyId, askedByMemberId, state: 'solved', askedAt: at, endedAt: at };
  return (await tx.course.create({ data, select: { id: true } })).id;
}

/** Take a waiting course up; false when somebody else has, or it was cancelled. */
export async function beginCourse(
  db: Db,
  id: string,
  at: Date,
): Promise<{ societyId: string; askedByMemberId: string } | null> {
  const [row] = await db.course.updateManyAndReturn({
    where: { id, state: 'waiting' },
    data: { state: 'solving', beatAt: at },
    select: { societyId: true, askedByMemberId: true },
  });
  return row ?? null;
}

/** Say how far it is, and that somebody is still at it; false when it was cancelled. */
export async function beatCourse(db: Db, scope: Scope, id: string, at: Date, progress: Json): Promise<boolean> {
  const where = { id, societyId: scope.societyId, state: 'solving' };
  return (await db.course.updateMany({ where, data: { beatAt: at, progress } })).count === 1;
}

/** End a course that is being solved, with what was found or without. */
export async function endCourse(
  db: Db,
  scope: Scope,
  id: string,
  end: { state: 'solved' | 'failed'; found?: Json; at: Date },
): Promise<void> {
  const { state, found, at } = end;
  const where = { id, societyId: scope.societyId, state: 'solving' };
  await db.course.updateMany({ where, data: { state, endedAt: at, ...(found === undefined ? {} : { found }) } });
}

/** Cancel a course that waits or is being solved; false when it had ended. */
export async function cancelCourse(tx: Tx, scope: Scope, id: string, at: Date): Promise<boolean> {
  const where = { id, societyId: scope.societyId, state: { in: ['waiting', 'solving'] } };
  return (await tx.course.updateMany({ where, data: { state: 'cancelled', endedAt: at } })).count === 1;
}

/** Keep the plan as it was changed by hand. */
export async function keepBoard(tx: Tx, scope: Scope, id: string, board: Json): Promise<void> {
  await tx.course.updateMany({ where: { id, societyId: scope.societyId }, data: { board } });
}

/** Note that a course was taken on. */
export async function noteTakenOn(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  await tx.course.updateMany({ where: { id, societyId: scope.societyId }, data: { takenOnAt: at } });
}
