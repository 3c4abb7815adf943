import 'server-only';
import type { Db } from './db';
import type { Scope } from './scope';

/** The addresses of members who are still in the society and have one. */
export async function mailAddresses(db: Db, scope: Scope, memberIds: readonly string[]): Promise<string[]> {
  const rows = await db.member.findMany({
    where: { societyId: scope.societyId, id: { in: [...memberIds] }, leftOn: null, email: { not: null } },
    select: { email: true },
  });
  return [...new Set(rows.flatMap(({ email }) => (email ? [email] : [])))];
}
