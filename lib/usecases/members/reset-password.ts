import 'server-only';
import { accountByEmail, changePasswordHash, createReset, useReset } from '@/lib/data/account';
import { db, inTransaction } from '@/lib/data/db';
import { queueMail } from '@/lib/data/mail';
import { now } from '@/lib/platform/clock';
import { env } from '@/lib/platform/env';
import { hashPassword, newToken, sha256Hex } from '@/lib/platform/secret';
import type { SessionClaim } from '@/lib/platform/session';
import { forgotInput, resetInput } from '@/lib/schemas/members/account';
import { settle, wordsOf } from '../operation';
import { type Outcome, refuse } from '../refusal';
import { mayMailReset } from './attempts';

const hour = 3_600_000;

/** Mail a link for a new password, a few an hour at most. The answer is the same whether or not the address is known. */
export async function askForReset(raw: unknown, network: string): Promise<Outcome<null>> {
  const parsed = forgotInput.safeParse(raw);
  if (!parsed.success) return { ok: false, refusals: wordsOf(parsed.error) };
  const { email } = parsed.data;
  const account = (await mayMailReset(email, network)) ? await accountByEmail(db(), email) : null;
  if (account)
    await inTransaction(async (tx) => {
      const { token, tokenHash } = newToken();
      await createReset(tx, account.id, tokenHash, new Date(now().getTime() + hour));
      const body = `Somebody asked for a new password for this address. If it was you, choose one here within the hour:\n\n${env().nextAuthUrl}/reset/${token}\n\nIf it was not you, do nothing: your password stays as it is.`;
      await queueMail(tx, [{ to: email, subject: 'A new password for Barrowmoot', body, societyId: null }]);
    });
  return { ok: true, value: null };
}

/** Choose a new password by a mailed link; every device is signed out. */
export async function resetPassword(raw: unknown): Promise<Outcome<SessionClaim>> {
  const parsed = resetInput.safeParse(raw);
  if (!parsed.success) return { ok: false, refusals: wordsOf(parsed.error) };
  const passwordHash = await hashPassword(parsed.data.newPassword);
  return settle(() =>
    inTransaction(async (tx) => {
      const accountId = await useReset(tx, sha256Hex(parsed.data.token), now());
      if (!accountId) refuse('link-no-longer-good');
      const { id, sessionVersion } = await changePasswordHash(tx, accountId, passwordHash, now());
      return { accountId: id, sessionVersion };
    }),
  );
}
