import 'server-only';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

export type OwnAccount = {
  readonly id: string;
  readonly key: string;
  readonly name: string;
  readonly isRetired: boolean;
};

type Row = { id: string; key: string; name: string; retiredAt: Date | null };

const toOwn = ({ id, key, name, retiredAt }: Row): OwnAccount => ({ id, key, name, isRetired: retiredAt !== null });

/** The accounts that the society keeps apart, by name, the retired ones too. */
export async function ownAccountsOf(db: Db, { societyId }: Scope): Promise<OwnAccount[]> {
  const rows = await db.ledgerAccount.findMany({ where: { societyId }, orderBy: { name: 'asc' } });
  return rows.map(toOwn);
}

/**
 * One such account by its key, locked until the transaction ends: whoever enters something shares the lock, whoever
 * retires it takes it alone.
 */
export async function lockOwnAccount(
  tx: Tx,
  { societyId }: Scope,
  by: { readonly key: string } | { readonly id: string },
  how: 'share' | 'alone',
): Promise<OwnAccount | null> {
  const row = await tx.ledgerAccount.findFirst({ where: { societyId, ...by }, select: { id: true } });
  if (!row) return null;
  if (how === 'share') await tx.$queryRaw`SELECT 1 FROM "LedgerAccount" WHERE "id" = ${row.id}::uuid FOR SHARE`;
  else await tx.$queryRaw`SELECT 1 FROM "LedgerAccount" WHERE "id" = ${row.id}::uuid FOR UPDATE`;
  return toOwn(await tx.ledgerAccount.findFirstOrThrow({ where: { id: row.id, societyId } }));
}

/** Add one; null where another of that key is there, whoever was first. */
export async function addOwnAccount(tx: Tx, { societyId }: Scope, key: string, name: string): Promise<string | null> {
  const rows = await tx.ledgerAccount.createManyAndReturn({
    data: [{ societyId, key, name }],
    skipDuplicates: true,
    select: { id: true },
  });
  return rows[0]?.id ?? null;
}

/** Retire one, or with null take it up again. */
export async function setRetired(tx: Tx, { societyId }: Scope, id: string, retiredAt: Date | null): Promise<void> {
  await tx.ledgerAccount.updateMany({ where: { id, societyId }, data: { retiredAt } });
}

/** How members pay what they owe, in the treasurer's words, or null. */
export async function payNoteOf(db: Db, { societyId }: Scope): Promise<string | null> {
  const { payNote } = await db.society.findUniqueOrThrow({ where: { id: societyId }, select: { payNote: true } });
  return payNote;
}

export async function setPayNote(tx: Tx, { societyId }: Scope, payNote: string | null): Promise<void> {
  await tx.society.updateMany({ where: { id: societyId }, data: { payNote } });
}
