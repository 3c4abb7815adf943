import 'server-only';
import type { Db, Tx } from './db';

// Accounts stand outside any society, so these take no scope. They are called by signing in, joining and resetting only.

/** An account by its address, which is kept in lower case. */
export function accountByEmail(db: Db, email: string) {
  return db.account.findUnique({ where: { email }, select: { id: true, passwordHash: true, sessionVersion: true } });
}

/** Make an account. */
export function createAccount(tx: Tx, email: string, passwordHash: string) {
  return tx.account.create({ data: { email, passwordHash }, select: { id: true, sessionVersion: true } });
}

/** Set a new password and sign every device out. */
export async function changePasswordHash(tx: Tx, accountId: string, passwordHash: string, at: Date) {
  // A link mailed earlier would undo the change.
  await tx.passwordReset.updateMany({ where: { accountId, usedAt: null }, data: { usedAt: at } });
  return tx.account.update({
    where: { id: accountId },
    data: { passwordHash, sessionVersion: { increment: 1 } },
    select: { id: true, sessionVersion: true },
  });
}

/** Sign every device out. */
export function raiseSessionVersion(tx: Tx, accountId: string) {
  return tx.account.update({
    where: { id: accountId },
    data: { sessionVersion: { increment: 1 } },
    select: { id: true, sessionVersion: true },
  });
}

/** The societies an account is a member of; none for a session of an older version. */
export async function societiesOf(db: Db, accountId: string, sessionVersion: number) {
  const members = await db.member.findMany({
    where: { accountId, leftOn: null, account: { sessionVersion } },
    select: { society: { select: { slug: true, name: true } } },
    orderBy: { society: { name: 'asc' } },
  });
  return members.map(({ society }) => society);
}

/** Failed attempts since an instant, by each of the keys. */
export async function failuresSince(db: Db, keys: readonly string[], since: Date): Promise<Map<string, number>> {
  const rows = await db.signInAttempt.groupBy({
    by: ['key'],
    where: { key: { in: [...keys] }, succeeded: false, at: { gte: since } },
    _count: true,
  });
  return new Map(rows.map(({ key, _count }) => [key, _count]));
}

/** Note an attempt under its keys, as failed until it succeeds, so that attempts made at once all count. */
export async function beginAttempt(db: Db, keys: readonly string[], at: Date): Promise<string[]> {
  const rows = await db.signInAttempt.createManyAndReturn({
    data: keys.map((key) => ({ key, succeeded: false, at })),
    select: { id: true },
  });
  return rows.map(({ id }) => id);
}

/** Note that an attempt succeeded. */
export async function attemptSucceeded(db: Db, ids: readonly string[]): Promise<void> {
  await db.signInAttempt.updateMany({ where: { id: { in: [...ids] } }, data: { succeeded: true } });
}

/** Forget an attempt that was turned away: it must not make the wait longer. */
export async function forgetAttempt(db: Db, ids: readonly string[]): Promise<void> {
  await db.signInAttempt.deleteMany({ where: { id: { in: [...ids] } } });
}

/** Keep a reset's hashed token. */
export async function createReset(tx: Tx, accountId: string, tokenHash: string, expiresAt: Date): Promise<void> {
  await tx.passwordReset.create({ data: { accountId, tokenHash, expiresAt } });
}

/** Use a reset up: true once, for a token that has not expired. */
export async function useReset(tx: Tx, tokenHash: string, now: Date): Promise<string | null> {
  const used = await tx.passwordReset.updateManyAndReturn({
    where: { tokenHash, usedAt: null, expiresAt: { gt: now } },
    data: { usedAt: now },
    select: { accountId: true },
  });
  return used[0]?.accountId ?? null;
}

/** The password hash behind a session that still holds; null for one of an older version. */
export async function passwordHashOf(
  db: Db,
  claim: { accountId: string; sessionVersion: number },
): Promise<string | null> {
  const { accountId: id, sessionVersion } = claim;
  return (
    (await db.account.findFirst({ where: { id, sessionVersion }, select: { passwordHash: true } }))?.passwordHash ??
    null
  );
}
