'use server';

import { redirect } from 'next/navigation';
import { answer, submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { endSession, readSession, startSession } from '@/lib/platform/session';
import { changeOwnDetails } from '@/lib/usecases/members/keep-members';
import { changeOwnPassword, signOutEverywhere } from '@/lib/usecases/members/own-account';
import { chooseNameStays } from '@/lib/usecases/board/name-stays';

export async function changeDetailsAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeOwnDetails, { slug, form, done: () => ({ message: 'Saved.' }) });
}

export async function changePasswordAction(_: FormState, form: FormData): Promise<FormState> {
  const session = await readSession();
  if (!session) redirect('/sign-in');
  return answer(
    form,
    (typed) => changeOwnPassword(session, typed),
    async (claim) => {
      await startSession(claim);
      return { message: 'Your password is changed, and every other device is signed out.' };
    },
  );
}

export async function signOutAction(): Promise<void> {
  await endSession();
  redirect('/sign-in');
}

export async function signOutEverywhereAction(): Promise<void> {
  const session = await readSession();
  if (session) await signOutEverywhere(session);
  await endSession();
  redirect('/sign-in');
}

export async function nameStaysAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(chooseNameStays, { slug, form, done: () => ({ message: 'Saved.' }) });
}
