import 'server-only';
import { attemptSucceeded, beginAttempt, failuresSince, forgetAttempt } from '@/lib/data/account';
import { db } from '@/lib/data/db';
import { now } from '@/lib/platform/clock';
import { passwordMatches, sha256Hex } from '@/lib/platform/secret';
import { refuse } from '../refusal';

type Limit = { readonly key: string; readonly most: number; readonly minutes: number };

// Common practice: enough for a forgetful member, too few for guessing. A whole site may share one address of the network.
const signingIn = (email: string, network: string): Limit[] => [
  { key: sha256Hex(`address ${email}`), most: 10, minutes: 15 },
  { key: sha256Hex(`network ${network}`), most: 60, minutes: 15 },
];
const resetting = (email: string, network: string): Limit[] => [
  { key: sha256Hex(`reset of ${email}`), most: 3, minutes: 60 },
  { key: sha256Hex(`reset from ${network}`), most: 30, minutes: 60 },
];

type Attempt = { email: string; network: string; password: string; passwordHash: string | null };

/** Whether the password is right, wherever it is typed; refuses when too many attempts failed lately. */
export async function tryPassword({ email, network, password, passwordHash }: Attempt): Promise<boolean> {
  const { ids, waitMinutes } = await countAttempt(signingIn(email, network));
  if (waitMinutes > 0) refuse('too-many-attempts', { numbers: { minutes: waitMinutes } });
  const right = await passwordMatches(passwordHash, password);
  if (right) await attemptSucceeded(db(), ids);
  return right;
}

/** Whether one more mail with a link for a new password may go out; each one asked for counts. */
export async function mayMailReset(email: string, network: string): Promise<boolean> {
  return (await countAttempt(resetting(email, network))).waitMinutes === 0;
}

// The attempt is written first and counts itself, so that attempts made at once all count.
async function countAttempt(limits: readonly Limit[]): Promise<{ ids: string[]; waitMinutes: number }> {
  const at = now();
  const ids = await beginAttempt(
    db(),
    limits.map(({ key }) => key),
    at,
  );
  const waits = await Promise.all(limits.map((limit) => minutesToWait(limit, at)));
  const waitMinutes = Math.max(...waits);
  if (waitMinutes > 0) await forgetAttempt(db(), ids);
  return { ids, waitMinutes };
}

async function minutesToWait({ key, most, minutes }: Limit, at: Date): Promise<number> {
  const failures = await failuresSince(db(), key, new Date(at.getTime() - minutes * 60_000));
  // The attempt itself is among them; there is room again once the oldest too many has passed out of sight.
  const oldest = failures.length > most ? failures[failures.length - 1 - most] : undefined;
  return oldest ? Math.max(1, Math.ceil((oldest.getTime() + minutes * 60_000 - at.getTime()) / 60_000)) : 0;
}
