import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Db, Tx } from './db';
import { isHereOn } from './scope';

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
export async function societiesOf(
  db: Db,
  accountId: string,
  sessionVersion: number,
  today: (timeZone: string) => CalendarDate,
) {
  const members = await db.member.findMany({
    where: { accountId, account: { sessionVersion } },
    select: { leftOn: true, society: { select: { slug: true, name: true, timeZone: true } } },
    orderBy: { society: { name: 'asc' } },
  });
  return members
    .filter(({ leftOn, society }) => isHereOn(leftOn, today(society.timeZone)))
    .map(({ society: { slug, name } }) => ({ slug, name }));
}

/** Remove an account that belongs to nobody any more; one that another society's member uses stays. */
export async function removeLooseAccount(tx: Tx, accountId: string): Promise<void> {
  if (await tx.member.count({ where: { accountId } })) return;
  await tx.passwordReset.deleteMany({ where: { accountId } });
  await tx.account.delete({ where: { id: accountId } });
}

/** When attempts under a key failed since an instant, oldest first. */
export async function failuresSince(db: Db, key: string, since: Date): Promise<Date[]> {
  const rows = await db.signInAttempt.findMany({
    where: { key, succeeded: false, at: { gte: since } },
    select: { at: true },
    orderBy: { at: 'asc' },
  });
  return rows.map(({ at }) => at);
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
