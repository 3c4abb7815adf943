import 'server-only';
import { accountByEmail } from '@/lib/data/account';
import { db } from '@/lib/data/db';
import type { SessionClaim } from '@/lib/platform/session';
import { signInInput } from '@/lib/schemas/members/account';
import { settle, wordsOf } from '../operation';
import { type Outcome, refuse } from '../refusal';
import { tryPassword } from './attempts';

/** Sign in by address and password. Never tells whether an address is known; attempts are limited in the database. */
export async function signIn(raw: unknown, network: string): Promise<Outcome<{ claim: SessionClaim; to: string }>> {
  const parsed = signInInput.safeParse(raw);
  if (!parsed.success) return { ok: false, refusals: wordsOf(parsed.error) };
  const { email, password, to } = parsed.data;
  return settle(async () => {
    const account = await accountByEmail(db(), email);
    const passwordHash = account?.passwordHash ?? null;
    const right = await tryPassword({ email, network, password, passwordHash });
    if (!account || !right) refuse('sign-in-wrong', { field: 'password' });
    return { claim: { accountId: account.id, sessionVersion: account.sessionVersion }, to };
  });
}
