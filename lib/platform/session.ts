import 'server-only';
import { decode, encode } from 'next-auth/jwt';
import { cookies } from 'next/headers';
import { env } from './env';

/** What a device carries: which account, and which version of its sessions. Checked against the database. */
export type SessionClaim = { readonly accountId: string; readonly sessionVersion: number };

const maxAgeSeconds = 30 * 24 * 3600;

/** The cookie's name; under TLS with the prefix that browsers refuse to send in the clear. */
function sessionCookieName(): string {
  return isSecure() ? '__Host-barrowmoot' : 'barrowmoot';
}

/** The claim that came with this request, or null. It says nothing yet about rights. */
export async function readSession(): Promise<SessionClaim | null> {
  const token = (await cookies()).get(sessionCookieName())?.value;
  if (!token) return null;
  const claims = await decode({ token, secret: env().nextAuthSecret }).catch(() => null);
  if (typeof claims?.sub !== 'string' || typeof claims.version !== 'number') return null;
  return { accountId: claims.sub, sessionVersion: claims.version };
}

/** Sign the device in. Only in a form's action, where a cookie can be set. */
export async function startSession(claim: SessionClaim): Promise<void> {
  (await cookies()).set(sessionCookieName(), await sessionToken(claim), {
    httpOnly: true,
    secure: isSecure(),
    sameSite: 'lax',
    path: '/',
    maxAge: maxAgeSeconds,
  });
}

/** Sign the device out. */
export async function endSession(): Promise<void> {
  (await cookies()).delete(sessionCookieName());
}

/** The signed and encrypted token for a claim. */
function sessionToken({ accountId, sessionVersion }: SessionClaim): Promise<string> {
  return encode({
    token: { sub: accountId, version: sessionVersion },
    secret: env().nextAuthSecret,
    maxAge: maxAgeSeconds,
  });
}

function isSecure(): boolean {
  return env().nextAuthUrl.startsWith('https:');
}
