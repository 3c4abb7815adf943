import 'server-only';
import { randomUUID } from 'node:crypto';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

export type SeedWantRecord = {
  readonly id: string;
  readonly itemId: string;
  readonly holdingId: string;
  readonly amount: number;
  readonly given: number | null;
  readonly owesMinor: number | null;
  readonly handedOutAt: Date | null;
};

const shown = {
  id: true,
  itemId: true,
  holdingId: true,
  amount: true,
  given: true,
  owesMinor: true,
  handedOutAt: true,
} as const;

/** What is wanted of some orders, of everybody or of some holdings; neither what was withdrawn nor what is off the list. */
export function seedWantsOf(
  db: Db,
  { societyId }: Scope,
  orderIds: readonly string[],
  holdingIds?: readonly string[],
): Promise<SeedWantRecord[]> {
  return db.seedWant.findMany({
    where: {
      ...{ societyId, withdrawnAt: null, item: { orderId: { in: [...orderIds] }, retiredAt: null } },
      ...(holdingIds ? { holdingId: { in: [...holdingIds] } } : {}),
    },
    select: shown,
    orderBy: { id: 'asc' },
  });
}

/** Put down what a holding wants of an item, or change it: one want for each. */
export async function writeSeedWant(
  tx: Tx,
  { societyId, memberId: byMemberId }: Scope,
  { itemId, holdingId, amount }: Pick<SeedWantRecord, 'itemId' | 'holdingId' | 'amount'>,
  changedAt: Date,
): Promise<void> {
  await tx.$executeRaw`
    INSERT INTO "SeedWant" ("id", "societyId", "itemId", "holdingId", "amount", "byMemberId", "changedAt")
    VALUES (${randomUUID()}::uuid, ${societyId}::uuid, ${itemId}::uuid, ${holdingId}::uuid, ${amount}, ${byMemberId}::uuid, ${changedAt})
    ON CONFLICT ("itemId", "holdingId") DO UPDATE
      SET "amount" = ${amount}, "byMemberId" = ${byMemberId}::uuid, "changedAt" = ${changedAt}, "withdrawnAt" = NULL`;
}

/** Withdraw wants. */
export async function withdrawSeedWants(
  tx: Tx,
  { societyId, memberId: byMemberId }: Scope,
  ids: readonly string[],
  at: Date,
): Promise<void> {
  const data = { withdrawnAt: at, changedAt: at, byMemberId };
  await tx.seedWant.updateMany({ where: { id: { in: [...ids] }, societyId }, data });
}

/** Write on wants what each is given, and owes. */
export async function writeGiven(
  tx: Tx,
  { societyId }: Scope,
  wants: readonly { readonly id: string; readonly given: number; readonly owesMinor: number }[],
): Promise<void> {
  for (const { id, ...data } of wants) await tx.seedWant.updateMany({ where: { id, societyId }, data });
}

/** Tick off wants as handed out, or with null take the tick back. */
export async function setHandedOut(
  tx: Tx,
  { societyId }: Scope,
  ids: readonly string[],
  handedOutAt: Date | null,
): Promise<void> {
  await tx.seedWant.updateMany({ where: { id: { in: [...ids] }, societyId }, data: { handedOutAt } });
}
