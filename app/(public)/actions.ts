'use server';

import { headers } from 'next/headers';
import { answer } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { startSession } from '@/lib/platform/session';
import { join } from '@/lib/usecases/members/join';
import { mySocieties } from '@/lib/usecases/members/own-account';
import { askForReset, resetPassword } from '@/lib/usecases/members/reset-password';
import { signIn } from '@/lib/usecases/members/sign-in';
import { unsubscribe } from '@/lib/usecases/reminders/letter-wish';

export async function signInAction(_: FormState, form: FormData): Promise<FormState> {
  const network = await callersNetwork();
  return answer(
    form,
    (typed) => signIn(typed, network),
    async ({ claim, to }) => {
      await startSession(claim);
      return { redirectTo: await afterSignIn(claim, to) };
    },
  );
}

/** The caller's network address as the nearest server saw it; what the caller claims stands before it. */
async function callersNetwork(): Promise<string> {
  return (await headers()).get('x-forwarded-for')?.split(',').at(-1)?.trim() ?? 'unknown';
}

async function afterSignIn(claim: Parameters<typeof mySocieties>[0], to: string): Promise<string> {
  // Only a path of ours: never another site's address.
  if (/^\/[a-z0-9-]/.test(to) && !to.startsWith('//')) return to;
  const societies = await mySocieties(claim);
  return societies.length === 1 ? `/${societies[0]?.slug}` : '/societies';
}

export async function joinAction(token: string, _: FormState, form: FormData): Promise<FormState> {
  const network = await callersNetwork();
  return answer(
    form,
    (typed) => join({ ...typed, token }, network),
    async ({ claim, slug }) => {
      await startSession(claim);
      return { redirectTo: `/${slug}` };
    },
  );
}

export async function forgotAction(_: FormState, form: FormData): Promise<FormState> {
  const message = 'If that address has an account, a link for a new password is on its way. It works for an hour.';
  const network = await callersNetwork();
  return answer(
    form,
    (typed) => askForReset(typed, network),
    () => ({ message }),
  );
}

export async function resetAction(token: string, _: FormState, form: FormData): Promise<FormState> {
  return answer(
    form,
    (typed) => resetPassword({ ...typed, token }),
    async (claim) => {
      await startSession(claim);
      return { redirectTo: '/' };
    },
  );
}

export async function unsubscribeAction(token: string, _: FormState, form: FormData): Promise<FormState> {
  return answer(
    form,
    async () => {
      await unsubscribe(token);
      return { ok: true as const, value: null };
    },
    () => ({ redirectTo: `/unsubscribe/${encodeURIComponent(token)}` }),
  );
}
