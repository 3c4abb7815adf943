import 'server-only';
import type { Db } from './db';
import type { Scope } from './scope';

/** What a heap was measured at, each time, oldest first, as the book has it [loads]. */
export async function measuredLoadsOf(db: Db, scope: Scope, deliveryId: string): Promise<number[]> {
  const rows = await db.auditRow.findMany({
    where: { societyId: scope.societyId, thing: 'delivery', thingId: deliveryId, verb: 'measured' },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    select: { after: true },
  });
  return rows.flatMap(({ after }) => {
    const loads = (after as { loads?: unknown } | null)?.loads;
    return typeof loads === 'number' ? [loads] : [];
  });
}
