import 'server-only';
import { createHash, randomBytes } from 'node:crypto';
import { hash, verify } from '@node-rs/argon2';
import { env } from './env';

/** A token for a link: 32 random bytes, of which only the hash is stored. */
export function newToken(): { token: string; tokenHash: string } {
  const token = randomBytes(32).toString('base64url');
  return { token, tokenHash: sha256Hex(token) };
}

/**
 * A token that is worked out from what it opens and this installation's secret, so that only its hash has to be kept and it can still be
 * written again.
 *
 * @param opens  what it is for and whose, such as `invitation <id>`
 */
export function ownToken(opens: string): string {
  return sha256Hex(`${env().nextAuthSecret} ${opens}`);
}

/** SHA-256 of a text, in lower-case hexadecimal. */
export function sha256Hex(text: string): string {
  return createHash('sha256').update(text, 'utf8').digest('hex');
}

/** The 32 bytes that a lot is drawn from. */
export function drawLotBytes(): string {
  return randomBytes(32).toString('hex');
}

/** Argon2id with the library's defaults (19 MiB, 2 passes), which are those of the OWASP cheat sheet. */
export function hashPassword(password: string): Promise<string> {
  return hash(password);
}

// A hash of nothing anybody knows, so that an unknown address costs as long as a wrong password.
const decoy = hash(randomBytes(16).toString('hex'));

/** Whether the password is right. Takes as long when there is no account. */
export async function passwordMatches(passwordHash: string | null, password: string): Promise<boolean> {
  const right = await verify(passwordHash ?? (await decoy), password);
  return passwordHash !== null && right;
}
