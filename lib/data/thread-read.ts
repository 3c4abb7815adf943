import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Mark a thread as read up to an instant; never back. */
export async function readTo(tx: Tx, { societyId, memberId }: Scope, threadId: string, at: Date): Promise<void> {
  await tx.$executeRaw`
    INSERT INTO "ThreadRead" ("societyId", "threadId", "memberId", "readToAt")
    VALUES (${societyId}::uuid, ${threadId}::uuid, ${memberId}::uuid, ${at})
    ON CONFLICT ("threadId", "memberId") DO UPDATE SET "readToAt" = greatest("ThreadRead"."readToAt", EXCLUDED."readToAt")`;
}

/** Say that a notice was read: the first time counts. */
export async function confirmRead(tx: Tx, scope: Scope, threadId: string, at: Date): Promise<void> {
  await readTo(tx, scope, threadId, at);
  await tx.threadRead.updateMany({
    where: { societyId: scope.societyId, threadId, memberId: scope.memberId, confirmedAt: null },
    data: { confirmedAt: at },
  });
}

/** Who has said that they read a notice, and who of today's members has not, by name. */
export async function readersOf(db: Db, { societyId }: Scope, threadId: string, day: CalendarDate) {
  const members = await db.member.findMany({
    where: { societyId, OR: [{ leftOn: null }, { leftOn: { gt: toDbDay(day) } }] },
    select: { id: true, name: true, threadsRead: { where: { threadId, confirmedAt: { not: null } } } },
    orderBy: { name: 'asc' },
  });
  return members.map(({ id, name, threadsRead: [read] }) => ({ id, name, confirmedAt: read?.confirmedAt ?? null }));
}

/** Threads that the viewer began or wrote in, and in which others have written since they last read them. */
export async function threadsWithReplies(db: Db, { societyId, memberId }: Scope) {
  return db.$queryRaw<{ id: string; title: string; replies: number; since: Date }[]>`
    SELECT t."id", t."title", count(*)::int AS "replies", min(p."writtenAt") AS "since"
    FROM "Thread" t JOIN "Post" p ON p."threadId" = t."id" AND p."byMemberId" <> ${memberId}::uuid
      AND p."hiddenAt" IS NULL AND p."takenBackAt" IS NULL
      LEFT JOIN "ThreadRead" r ON r."threadId" = t."id" AND r."memberId" = ${memberId}::uuid
    WHERE t."societyId" = ${societyId}::uuid AND p."writtenAt" > coalesce(r."readToAt", t."createdAt")
      AND EXISTS (SELECT 1 FROM "Post" o WHERE o."threadId" = t."id" AND o."byMemberId" = ${memberId}::uuid)
    GROUP BY t."id" ORDER BY "since"`;
}
