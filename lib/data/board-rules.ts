import 'server-only';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** The board's rules as the society last set them, or null where it set none. */
export async function boardRulesOf(db: Db, { societyId }: Scope): Promise<{ body: string; setAt: Date } | null> {
  return db.boardRules.findFirst({
    where: { societyId },
    orderBy: [{ setAt: 'desc' }, { id: 'desc' }],
    select: { body: true, setAt: true },
  });
}

/** Set the rules anew; those before stay on record. */
export async function setBoardRules(tx: Tx, { societyId, memberId }: Scope, body: string, setAt: Date): Promise<void> {
  await tx.boardRules.create({ data: { societyId, body, setByMemberId: memberId, setAt } });
}
