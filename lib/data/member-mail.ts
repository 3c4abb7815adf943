import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Db } from './db';
import { isHereOn, type Scope } from './scope';

/** The addresses of members who are in the society on a day and have one, by member. */
export async function addressByMember(
  db: Db,
  scope: Scope,
  memberIds: readonly string[],
  day: CalendarDate,
): Promise<ReadonlyMap<string, string>> {
  const rows = await db.member.findMany({
    where: { societyId: scope.societyId, id: { in: [...memberIds] }, email: { not: null } },
    select: { id: true, email: true, leftOn: true },
  });
  return new Map(
    rows.flatMap(({ id, email, leftOn }) => (email && isHereOn(leftOn, day) ? [[id, email] as const] : [])),
  );
}

/** The same, each address once. */
export async function mailAddresses(...given: Parameters<typeof addressByMember>): Promise<string[]> {
  return [...new Set((await addressByMember(...given)).values())];
}
