import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { Tx } from './db';
import type { Scope } from './scope';

/**
 * Claim the id that came with a write. The insert waits for a concurrent twin to end, so that of two sendings
 * one does the work and the other gets its reply.
 *
 * @returns 'first' when this is the first sending; otherwise the reply of the first
 */
export async function claimWrite(
  tx: Tx,
  scope: Scope,
  writeId: string,
  useCase: string,
): Promise<'first' | { reply: unknown } | 'foreign'> {
  const claimed = await tx.$executeRaw`
    INSERT INTO "WriteOnce" ("societyId", "writeId", "memberId", "useCase", "reply")
    VALUES (${scope.societyId}::uuid, ${writeId}::uuid, ${scope.memberId}::uuid, ${useCase}, 'null')
    ON CONFLICT DO NOTHING`;
  if (claimed === 1) return 'first';
  const row = await tx.writeOnce.findUniqueOrThrow({
    where: { societyId_writeId: { societyId: scope.societyId, writeId } },
  });
  return row.memberId === scope.memberId && row.useCase === useCase ? { reply: row.reply } : 'foreign';
}

/** Keep the reply of a write, for its second sending. */
export async function keepReply(tx: Tx, scope: Scope, writeId: string, reply: Prisma.InputJsonValue): Promise<void> {
  await tx.writeOnce.update({ where: { societyId_writeId: { societyId: scope.societyId, writeId } }, data: { reply } });
}
