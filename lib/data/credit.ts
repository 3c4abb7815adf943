import 'server-only';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Credits of a material by holding, in millionths of a load; the lapsed line under the empty text. They sum to zero. */
export async function creditsOf(db: Db, scope: Scope, materialKey: string): Promise<Map<string, number>> {
  const rows = await db.creditEntry.groupBy({
    by: ['holdingId'],
    where: { societyId: scope.societyId, materialKey },
    _sum: { changeMillionths: true },
  });
  return new Map(rows.map(({ holdingId, _sum }) => [holdingId ?? '', Number(_sum.changeMillionths ?? 0n)]));
}

/** The materials that any credit stands in. */
export async function creditedMaterials(db: Db, scope: Scope): Promise<string[]> {
  const rows = await db.creditEntry.findMany({
    where: { societyId: scope.societyId },
    distinct: ['materialKey'],
    select: { materialKey: true },
  });
  return rows.map(({ materialKey }) => materialKey);
}

/** What was entered for holdings, newest first, with the delivery it came of. */
export async function creditEntriesOf(db: Db, scope: Scope, holdingIds: readonly string[]) {
  const rows = await db.creditEntry.findMany({
    where: { societyId: scope.societyId, holdingId: { in: [...holdingIds] } },
    include: { delivery: { select: { name: true } } },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  });
  return rows.map(({ id, holdingId, materialKey, deliveryId, delivery, changeMillionths, code, at }) => ({
    ...{ id, holdingId: holdingId ?? '', materialKey, deliveryId, delivery: delivery?.name ?? null, code, at },
    changeMillionths: Number(changeMillionths),
  }));
}

export type NewCredit = { readonly holdingId: string | null; readonly changeMillionths: number };

/** Write credits: once for a delivery, and always summing to zero, which the database checks when the transaction ends. */
export async function writeCredits(
  tx: Tx,
  scope: Scope,
  given: { materialKey: string; deliveryId: string | null; code: string; at: Date; entries: readonly NewCredit[] },
): Promise<void> {
  const { entries, ...common } = given;
  const data = entries
    .filter(({ changeMillionths }) => changeMillionths !== 0)
    .map((entry) => ({ ...entry, ...common, societyId: scope.societyId }));
  await tx.creditEntry.createMany({ data });
}
