import 'server-only';
import { accountByEmail, createAccount } from '@/lib/data/account';
import { db, inTransaction } from '@/lib/data/db';
import { invitationByToken, useInvitation } from '@/lib/data/invitation';
import { now } from '@/lib/platform/clock';
import { hashPassword, sha256Hex } from '@/lib/platform/secret';
import type { SessionClaim } from '@/lib/platform/session';
import { joinInput } from '@/lib/schemas/members/account';
import { settle, wordsOf } from '../operation';
import { type Outcome, refuse } from '../refusal';
import { tryPassword } from './attempts';

/** What the page of an invitation shows; null when the token is nobody's. */
export function readInvitation(token: string) {
  return invitationByToken(db(), sha256Hex(token), now());
}

/**
 * Accept an invitation: a new account, or one that is there already and whose password is given, so that one person may
 * belong to several societies. Guessing that password is limited as at the door.
 */
export async function join(raw: unknown, network: string): Promise<Outcome<{ claim: SessionClaim; slug: string }>> {
  const parsed = joinInput.safeParse(raw);
  if (!parsed.success) return { ok: false, refusals: wordsOf(parsed.error) };
  const { token, email, newPassword } = parsed.data;
  const tokenHash = sha256Hex(token);
  const invitation = await invitationByToken(db(), tokenHash, now());
  return settle(async () => {
    if (!invitation?.open) refuse('link-no-longer-good');
    const known = await accountByEmail(db(), email);
    const attempt = { email, network, password: newPassword };
    if (known && !(await tryPassword({ ...attempt, passwordHash: known.passwordHash })))
      refuse('address-has-account', { field: 'newPassword' });
    const passwordHash = known ? '' : await hashPassword(newPassword);
    const account = await inTransaction(async (tx) => {
      const account = known ?? (await createAccount(tx, email, passwordHash));
      const used = await useInvitation(tx, tokenHash, account.id, now());
      if (used === null) refuse('link-no-longer-good');
      if (used === 'member-already') refuse('member-already', { field: 'email' });
      return account;
    });
    return { claim: { accountId: account.id, sessionVersion: account.sessionVersion }, slug: invitation.slug };
  });
}
