import 'server-only';
import { randomUUID } from 'node:crypto';
import { revalidatePath } from 'next/cache';
import { notFound, redirect } from 'next/navigation';
import type { FormState } from '@/app/_ui/form-state';
import { logFailure } from '@/lib/platform/log';
import type { Caller } from '@/lib/usecases/operation';
import { NotFound, type Outcome, type Refusal } from '@/lib/usecases/refusal';
import { callerOf } from './caller';
import { wordsFor } from './words';

type Typed = Record<string, string | string[]>;
type Done = { redirectTo?: string; message?: string };

/**
 * The one way from a form to a use-case and back: what was typed goes in, and comes back unlost with the
 * errors beside their fields, or the page moves on.
 *
 * @param fixed  values that the page knows and the form does not carry, such as ids from the address
 */
export async function submitForm<Reply>(
  operation: { run: (caller: Caller, raw: unknown) => Promise<Outcome<Reply>> },
  given: {
    slug: string;
    form: FormData;
    fixed?: object;
    shape?: (typed: Typed) => object;
    done: (reply: Reply) => Done;
  },
): Promise<FormState> {
  const caller = await callerOf(given.slug);
  return answer(
    given.form,
    (typed) => operation.run(caller, { ...(given.shape?.(typed) ?? typed), ...given.fixed }),
    given.done,
  );
}

/** The same for forms that stand outside any society: signing in, joining, a new password. */
export async function answer<Reply>(
  form: FormData,
  run: (typed: Typed) => Promise<Outcome<Reply>>,
  done: (reply: Reply) => Done | Promise<Done>,
): Promise<FormState> {
  const typed = typedValues(form);
  let outcome: Outcome<Reply>;
  try {
    outcome = await run(typed);
  } catch (error) {
    if (error instanceof NotFound) notFound();
    const id = randomUUID();
    logFailure(id, error);
    return refused(
      typed,
      {},
      `Something went wrong on our side, and nothing was changed. Please try again; if it stays, give the secretary this number: ${id}`,
    );
  }
  if (!outcome.ok) return refused(typed, besideFields(outcome.refusals), withoutField(outcome.refusals));
  const { redirectTo, message } = await done(outcome.value);
  revalidatePath('/', 'layout');
  if (redirectTo) redirect(redirectTo);
  return { status: 'done', values: {}, errors: {}, ...(message ? { message } : {}), writeId: randomUUID() };
}

function refused(values: Typed, errors: Record<string, string>, formError?: string): FormState {
  // The id stays: nothing was written under it.
  const writeId = typeof values.writeId === 'string' ? values.writeId : randomUUID();
  // Passwords are never sent back to the page.
  const kept = Object.fromEntries(Object.entries(values).filter(([key]) => !/password/i.test(key)));
  return { status: 'refused', values: kept, errors, ...(formError ? { formError } : {}), writeId };
}

function typedValues(form: FormData): Typed {
  const typed: Typed = {};
  for (const key of new Set(form.keys())) {
    if (key.startsWith('$ACTION')) continue;
    const values = form.getAll(key).filter((value): value is string => typeof value === 'string');
    typed[key] = values.length > 1 ? values : (values[0] ?? '');
  }
  return typed;
}

function besideFields(refusals: readonly Refusal[]): Record<string, string> {
  return Object.fromEntries(refusals.flatMap((refusal) => (refusal.field ? [[refusal.field, wordsFor(refusal)]] : [])));
}

function withoutField(refusals: readonly Refusal[]): string | undefined {
  return (
    refusals
      .filter(({ field }) => !field)
      .map(wordsFor)
      .join(' ') || undefined
  );
}
