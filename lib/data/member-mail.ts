import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Db } from './db';
import { isHereOn, type Scope } from './scope';

/** The addresses of members who are in the society on a day and have one. */
export async function mailAddresses(
  db: Db,
  scope: Scope,
  memberIds: readonly string[],
  day: CalendarDate,
): Promise<string[]> {
  const rows = await db.member.findMany({
    where: { societyId: scope.societyId, id: { in: [...memberIds] }, email: { not: null } },
    select: { email: true, leftOn: true },
  });
  return [...new Set(rows.flatMap(({ email, leftOn }) => (email && isHereOn(leftOn, day) ? [email] : [])))];
}
