import 'server-only';
import { notFound, redirect } from 'next/navigation';
import { env } from '@/lib/platform/env';
import { readSession } from '@/lib/platform/session';
import type { Caller } from '@/lib/usecases/operation';
import { NotFound } from '@/lib/usecases/refusal';
import { heldAnswer } from './held-answers';

/** The caller of a page or action in a society; somebody who is not signed in goes to the door. */
export async function callerOf(slug: string): Promise<Caller> {
  const session = await readSession();
  if (!session) redirect(`/sign-in?to=/${encodeURIComponent(slug)}`);
  return { ...session, slug };
}

/** Run a read for a page: what does not exist for this viewer becomes the not-found page. */
export async function ask<Answer>(
  question: { name: string; run: (caller: Caller, raw: unknown) => Promise<Answer> },
  slug: string,
  input: unknown = {},
): Promise<Answer> {
  const caller = await callerOf(slug);
  try {
    const answer = () => question.run(caller, input);
    return await (env().holdsAnswers ? heldAnswer(JSON.stringify([question.name, caller, input]), answer) : answer());
  } catch (error) {
    if (error instanceof NotFound) notFound();
    throw error;
  }
}
