import 'server-only';
import { attemptSucceeded, beginAttempt, failuresSince, forgetAttempt } from '@/lib/data/account';
import { db } from '@/lib/data/db';
import { now } from '@/lib/platform/clock';
import { passwordMatches, sha256Hex } from '@/lib/platform/secret';
import { refuse } from '../refusal';

const waitMinutes = 15;
// Common practice: enough for a forgetful member, too few for guessing. A whole site may share one address of the network.
const mostByAddress = 10;
const mostByNetwork = 60;

type Attempt = { email: string; network: string; password: string; passwordHash: string | null };

/** Whether the password is right, wherever it is typed; refuses when too many attempts failed lately. */
export async function tryPassword({ email, network, password, passwordHash }: Attempt): Promise<boolean> {
  const at = now();
  const address = sha256Hex(`address ${email}`);
  const caller = sha256Hex(`network ${network}`);
  const attempt = await beginAttempt(db(), [address, caller], at);
  const failures = await failuresSince(db(), [address, caller], new Date(at.getTime() - waitMinutes * 60_000));
  if ((failures.get(address) ?? 0) > mostByAddress || (failures.get(caller) ?? 0) > mostByNetwork) {
    await forgetAttempt(db(), attempt);
    refuse('too-many-attempts', { numbers: { minutes: waitMinutes } });
  }
  const right = await passwordMatches(passwordHash, password);
  if (right) await attemptSucceeded(db(), attempt);
  return right;
}
