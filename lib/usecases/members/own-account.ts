import 'server-only';
import { changePasswordHash, passwordHashOf, raiseSessionVersion, societiesOf } from '@/lib/data/account';
import { db, inTransaction } from '@/lib/data/db';
import { now, todayIn } from '@/lib/platform/clock';
import { hashPassword, passwordMatches } from '@/lib/platform/secret';
import type { SessionClaim } from '@/lib/platform/session';
import { changePasswordInput } from '@/lib/schemas/members/account';
import { settle, wordsOf } from '../operation';
import { NotFound, type Outcome, refuse } from '../refusal';

/** The societies of a session; none when it was signed out elsewhere. */
export function mySocieties({ accountId, sessionVersion }: SessionClaim) {
  return societiesOf(db(), accountId, sessionVersion, todayIn);
}

/** Change one's own password; every other device is signed out. */
export async function changeOwnPassword(claim: SessionClaim, raw: unknown): Promise<Outcome<SessionClaim>> {
  const parsed = changePasswordInput.safeParse(raw);
  if (!parsed.success) return { ok: false, refusals: wordsOf(parsed.error) };
  const present = await passwordHashOf(db(), claim);
  if (!present) throw new NotFound();
  return settle(async () => {
    if (!(await passwordMatches(present, parsed.data.password))) refuse('password-wrong', { field: 'password' });
    const passwordHash = await hashPassword(parsed.data.newPassword);
    return inTransaction(async (tx) => toClaim(await changePasswordHash(tx, claim.accountId, passwordHash, now())));
  });
}

/** Sign every device out, this one too. */
export async function signOutEverywhere(claim: SessionClaim): Promise<Outcome<null>> {
  if (!(await passwordHashOf(db(), claim))) throw new NotFound();
  await inTransaction((tx) => raiseSessionVersion(tx, claim.accountId));
  return { ok: true, value: null };
}

function toClaim({ id, sessionVersion }: { id: string; sessionVersion: number }): SessionClaim {
  return { accountId: id, sessionVersion };
}
