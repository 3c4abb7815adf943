import 'server-only';
import type { HeapLook } from '@/generated/prisma/client';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** How many loads somebody thought were left, and what had been ticked off by then. */
export type HeapLookRecord = { readonly loads: number; readonly collectedLoads: number; readonly at: Date };

function toLook({ loads, collectedLoads, at }: HeapLook): HeapLookRecord {
  return { loads, collectedLoads, at };
}

/** The newest look at each heap that anybody looked at, by delivery. Ids rise with time, so they settle one instant's order. */
export async function newestLooks(
  db: Db,
  { societyId }: Scope,
  deliveryIds: readonly string[],
): Promise<ReadonlyMap<string, HeapLookRecord>> {
  const rows = await db.heapLook.findMany({
    where: { societyId, deliveryId: { in: [...deliveryIds] } },
    orderBy: [{ deliveryId: 'asc' }, { at: 'desc' }, { id: 'desc' }],
    distinct: ['deliveryId'],
  });
  return new Map(rows.map((row) => [row.deliveryId, toLook(row)]));
}

/** Write down a look at a heap. */
export async function createLook(tx: Tx, scope: Scope, deliveryId: string, look: HeapLookRecord): Promise<string> {
  const { societyId, memberId: byMemberId } = scope;
  return (await tx.heapLook.create({ data: { ...look, societyId, deliveryId, byMemberId }, select: { id: true } })).id;
}
