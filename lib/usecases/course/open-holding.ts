import 'server-only';
import type { Db } from '@/lib/data/db';
import { type HoldingOnDay, holdingById } from '@/lib/data/holding';
import { type CourseRecord, courseById } from '@/lib/data/course';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canKeepGround } from '@/lib/domain/policy/holding';
import { NotFound } from '../refusal';

type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };

/** A holding whose ground the viewer keeps; not found for anybody else. */
export async function openHolding({ db, scope, today }: At, id: string): Promise<HoldingOnDay> {
  const holding = await holdingById(db, scope, id, today);
  if (!holding || !canKeepGround(scope, holding)) throw new NotFound();
  return holding;
}

/** A course of ground that the viewer keeps; not found for anybody else. */
export async function openCourse(at: At, id: string): Promise<{ course: CourseRecord; holding: HoldingOnDay }> {
  const course = await courseById(at.db, at.scope, id);
  if (!course) throw new NotFound();
  return { course, holding: await openHolding(at, course.holdingId) };
}
