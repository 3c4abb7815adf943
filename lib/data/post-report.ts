import 'server-only';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Tell the committee of a post. Answers false where the viewer told of it already and nobody has looked. */
export async function createReport(tx: Tx, scope: Scope, postId: string, why: string, at: Date): Promise<boolean> {
  const open = { societyId: scope.societyId, postId, byMemberId: scope.memberId, settledAt: null };
  if (await tx.postReport.findFirst({ where: open, select: { id: true } })) return false;
  await tx.postReport.create({
    data: { societyId: scope.societyId, postId, byMemberId: scope.memberId, why, at },
  });
  return true;
}

/** Reports that nobody has looked at, the oldest first. */
export function openReports(db: Db, { societyId }: Scope) {
  return db.postReport.findMany({
    where: { societyId, settledAt: null },
    select: {
      id: true,
      why: true,
      at: true,
      by: { select: { name: true } },
      post: { select: { id: true, body: true, threadId: true, thread: { select: { title: true } } } },
    },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    take: 100,
  });
}

/** Settle every open report of a post; answers how many there were. */
export async function settleReports(
  tx: Tx,
  { societyId }: Scope,
  postId: string,
  outcome: 'hidden' | 'stands',
  at: Date,
): Promise<number> {
  const open = { societyId, postId, settledAt: null };
  return (await tx.postReport.updateMany({ where: open, data: { outcome, settledAt: at } })).count;
}
