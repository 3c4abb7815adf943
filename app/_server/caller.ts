import 'server-only';
import { notFound, redirect } from 'next/navigation';
import { readSession } from '@/lib/platform/session';
import type { Caller } from '@/lib/usecases/operation';
import { NotFound } from '@/lib/usecases/refusal';

/** The caller of a page or action in a society; somebody who is not signed in goes to the door. */
export async function callerOf(slug: string): Promise<Caller> {
  const session = await readSession();
  if (!session) redirect(`/sign-in?to=/${encodeURIComponent(slug)}`);
  return { ...session, slug };
}

/** Run a read for a page: what does not exist for this viewer becomes the not-found page. */
export async function ask<Answer>(
  question: { run: (caller: Caller, raw: unknown) => Promise<Answer> },
  slug: string,
  input: unknown = {},
): Promise<Answer> {
  const caller = await callerOf(slug);
  try {
    return await question.run(caller, input);
  } catch (error) {
    if (error instanceof NotFound) notFound();
    throw error;
  }
}
