import 'server-only';
import type { Db } from '@/lib/data/db';
import { membersOn } from '@/lib/data/member';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';

/** Everybody who is in the society. */
export async function everyMemberId(db: Db, scope: Scope, day: CalendarDate): Promise<string[]> {
  return (await membersOn(db, scope, day)).filter(({ isHere }) => isHere).map(({ id }) => id);
}
