import 'server-only';
import { accountByEmail, failuresSince, noteAttempt } from '@/lib/data/account';
import { db } from '@/lib/data/db';
import { now } from '@/lib/platform/clock';
import { passwordMatches, sha256Hex } from '@/lib/platform/secret';
import type { SessionClaim } from '@/lib/platform/session';
import { signInInput } from '@/lib/schemas/members/account';
import { settle, wordsOf } from '../operation';
import { type Outcome, refuse } from '../refusal';

const waitMinutes = 15;
// Common practice: enough for a forgetful member, too few for guessing. A whole site may share one address of the network.
const mostByAddress = 10;
const mostByNetwork = 60;

/** Sign in by address and password. Never tells whether an address is known; attempts are limited in the database. */
export async function signIn(raw: unknown, network: string): Promise<Outcome<{ claim: SessionClaim; to: string }>> {
  const parsed = signInInput.safeParse(raw);
  if (!parsed.success) return { ok: false, refusals: wordsOf(parsed.error) };
  const { email, password, to } = parsed.data;
  return settle(async () => {
    const at = now();
    const keys = { address: sha256Hex(`address ${email}`), network: sha256Hex(`network ${network}`) };
    const failures = await failuresSince(db(), Object.values(keys), new Date(at.getTime() - waitMinutes * 60_000));
    if ((failures.get(keys.address) ?? 0) >= mostByAddress || (failures.get(keys.network) ?? 0) >= mostByNetwork)
      refuse('too-many-attempts', { numbers: { minutes: waitMinutes } });
    const account = await accountByEmail(db(), email);
    const right = await passwordMatches(account?.passwordHash ?? null, password);
    await noteAttempt(db(), Object.values(keys), right, at);
    if (!account || !right) refuse('sign-in-wrong', { field: 'password' });
    return { claim: { accountId: account.id, sessionVersion: account.sessionVersion }, to };
  });
}
