import 'server-only';
import { type DeliveryRecord, deliveriesOf } from './delivery';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** The deliveries that come on one lorry with this one, itself among them, in the order of their ids. */
export async function comingTogether(db: Db, scope: Scope, id: string, now: Date): Promise<DeliveryRecord[]> {
  const all = await deliveriesOf(db, scope, now);
  const one = all.find((delivery) => delivery.id === id);
  if (!one) return [];
  const { togetherId } = one;
  const group = togetherId === null ? [one] : all.filter((other) => other.togetherId === togetherId);
  return group.sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** The same, each locked until the transaction ends: always in the order of ids, so that two never wait for each other. */
export async function lockTogether(tx: Tx, scope: Scope, id: string, now: Date): Promise<DeliveryRecord[]> {
  const held = new Set<string>();
  for (;;) {
    const group = await comingTogether(tx, scope, id, now);
    const ids = group.map((one) => one.id);
    // What joined them while the locks were waited for is locked as well.
    if (ids.every((one) => held.has(one))) return group;
    await tx.$queryRaw`SELECT 1 FROM "Delivery" WHERE "societyId" = ${scope.societyId}::uuid AND "id" = ANY(${ids}::uuid[]) ORDER BY "id" FOR UPDATE`;
    for (const one of ids) held.add(one);
  }
}

/** Let deliveries come on one lorry. */
export async function letComeTogether(tx: Tx, scope: Scope, ids: readonly string[], togetherId: string): Promise<void> {
  await tx.delivery.updateMany({ where: { societyId: scope.societyId, id: { in: [...ids] } }, data: { togetherId } });
}
