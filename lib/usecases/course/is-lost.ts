import type { CourseRecord } from '@/lib/data/course';

/** A course that nobody has been at for so long was left by a process that died [ms]. */
const lostMs = 20_000;

/** Whether a course waits or is being solved by nobody any more: it may be asked for again. */
export function isLost({ state, beatAt, askedAt }: CourseRecord, now: Date): boolean {
  if (state === 'waiting') return now.getTime() - askedAt.getTime() > 3 * lostMs;
  return state === 'solving' && now.getTime() - (beatAt ?? askedAt).getTime() > lostMs;
}
