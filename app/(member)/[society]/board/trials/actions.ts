'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { giveResult } from '@/lib/usecases/trials/give-result';
import { joinTrial } from '@/lib/usecases/trials/join-trial';
import { leaveTrial, treatBlock } from '@/lib/usecases/trials/keep-block';
import { callOffTrial, proposeTrial } from '@/lib/usecases/trials/propose-trial';

const atTrial =
  (slug: string) =>
  ({ trialId }: { trialId: string }) => ({ redirectTo: `/${slug}/board/trials/${trialId}` });

export async function proposeAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(proposeTrial, { slug, form, done: atTrial(slug) });
}

export async function joinAction(slug: string, trialId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(joinTrial, { slug, form, fixed: { trialId }, done: atTrial(slug) });
}

export async function leaveAction(slug: string, blockId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(leaveTrial, { slug, form, fixed: { blockId }, done: atTrial(slug) });
}

export async function treatAction(slug: string, blockId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(treatBlock, { slug, form, fixed: { blockId }, done: atTrial(slug) });
}

export async function resultAction(slug: string, groundId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(giveResult, { slug, form, fixed: { groundId }, done: atTrial(slug) });
}

export async function callOffAction(slug: string, trialId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(callOffTrial, { slug, form, fixed: { trialId }, done: atTrial(slug) });
}
