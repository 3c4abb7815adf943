import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { Tx } from './db';
import type { Scope } from './scope';

/** One change as it is written into the book. Ids only: never names, addresses or gate codes. */
export type Change = {
  readonly verb: string;
  readonly thing: string;
  readonly thingId: string | null;
  readonly forMemberId?: string | null;
  readonly forHoldingId?: string | null;
  readonly before?: Prisma.InputJsonValue | null;
  readonly after?: Prisma.InputJsonValue | null;
};

/** Append changes to the society's book, in the transaction that makes them. */
export async function writeAudit(
  tx: Tx,
  scope: Scope,
  writeId: string,
  at: Date,
  changes: readonly Change[],
): Promise<void> {
  await tx.auditRow.createMany({
    data: changes.map(({ before, after, forMemberId, forHoldingId, ...change }) => ({
      ...change,
      societyId: scope.societyId,
      actorMemberId: scope.memberId,
      forMemberId: forMemberId ?? null,
      forHoldingId: forHoldingId ?? null,
      writeId,
      at,
      ...(before == null ? {} : { before }),
      ...(after == null ? {} : { after }),
    })),
  });
}
