'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { openBallot, withdrawBallot } from '@/lib/usecases/ballots/open-ballot';
import { changeQuestion, draftQuestion } from '@/lib/usecases/ballots/put-question';
import { enterHand, raiseHand } from '@/lib/usecases/ballots/raise-hand';

const at = (slug: string) => ({
  done: ({ ballotId }: { ballotId: string }) => ({ redirectTo: `/${slug}/board/decisions/${ballotId}` }),
});

export async function draftAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(draftQuestion, { slug, form, ...at(slug) });
}

export async function changeAction(slug: string, ballotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeQuestion, { slug, form, fixed: { ballotId }, ...at(slug) });
}

export async function openAction(slug: string, ballotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(openBallot, { slug, form, fixed: { ballotId }, ...at(slug) });
}

export async function withdrawAction(slug: string, ballotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(withdrawBallot, { slug, form, fixed: { ballotId }, ...at(slug) });
}

export async function raiseAction(slug: string, ballotId: string, _: FormState, form: FormData): Promise<FormState> {
  const message = 'Your hand is raised. Until the close you can raise it for something else.';
  return submitForm(raiseHand, { slug, form, fixed: { ballotId }, done: () => ({ message }) });
}

export async function enterAction(slug: string, ballotId: string, _: FormState, form: FormData): Promise<FormState> {
  const message = 'Entered. It is recorded as entered by you.';
  return submitForm(enterHand, { slug, form, fixed: { ballotId }, done: () => ({ message }) });
}
