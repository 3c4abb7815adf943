import 'server-only';
import type { GoingOver } from '@/lib/domain/store/lot';
import { toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Write what was found at a lot, and return the id of the going over. */
export async function createGoingOver(
  tx: Tx,
  scope: Scope,
  lotId: string,
  { on, ...found }: GoingOver,
  at: Date,
): Promise<string> {
  const { societyId, memberId: byMemberId } = scope;
  const data = { ...found, onDay: toDbDay(on), lotId, at, societyId, byMemberId };
  return (await tx.goingOver.create({ data, select: { id: true } })).id;
}

/** The lot of a going over that stands, or null. */
export async function lotOfGoingOver(db: Db, scope: Scope, id: string): Promise<string | null> {
  const where = { id, societyId: scope.societyId, undoneAt: null };
  return (await db.goingOver.findFirst({ where, select: { lotId: true } }))?.lotId ?? null;
}

/** Take goings over back; the rows stay. */
export async function undoGoingsOver(tx: Tx, scope: Scope, ids: readonly string[], at: Date): Promise<void> {
  await tx.goingOver.updateMany({
    where: { id: { in: [...ids] }, societyId: scope.societyId, undoneAt: null },
    data: { undoneAt: at },
  });
}
