import 'server-only';
import { randomUUID } from 'node:crypto';
import { revalidatePath } from 'next/cache';
import { notFound, redirect, unstable_rethrow } from 'next/navigation';
import type { FormState, Preview } from '@/app/_ui/form-state';
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

/**
 * A form that is looked at before it is sent: the first press shows what it would do, the second does it.
 *
 * @param look  the question that shows it, with what it is asked and how its answer is laid out
 */
export async function lookThenSubmit<Reply, Seen>(
  look: {
    question: { run: (caller: Caller, raw: unknown) => Promise<Outcome<Seen>> };
    asked: readonly string[];
    preview: (seen: Seen) => Preview;
  },
  operation: { run: (caller: Caller, raw: unknown) => Promise<Outcome<Reply>> },
  given: { slug: string; form: FormData; fixed?: object; done: (reply: Reply) => Done },
): Promise<FormState> {
  const { slug, form, fixed } = given;
  const isSure = form.get('step') === 'take';
  form.delete('step');
  if (isSure) return submitForm(operation, given);
  const caller = await callerOf(slug);
  const typed = typedValues(form);
  const asked = Object.fromEntries(look.asked.map((name) => [name, typed[name] ?? '']));
  return guarded(typed, async () => {
    const outcome = await look.question.run(caller, { ...asked, ...fixed });
    if (!outcome.ok) return refused(typed, besideFields(outcome.refusals), withoutField(outcome.refusals));
    const preview = look.preview(outcome.value);
    const message = 'Nothing is taken in yet. This is what it says:';
    return { status: 'looked', values: typed, errors: {}, preview, message, writeId: writeIdOf(typed) };
  });
}

/** The same for forms that stand outside any society: signing in, joining, a new password. */
export async function answer<Reply>(
  form: FormData,
  run: (typed: Typed) => Promise<Outcome<Reply>>,
  done: (reply: Reply) => Done | Promise<Done>,
): Promise<FormState> {
  const typed = typedValues(form);
  return guarded(typed, async () => {
    const outcome = await run(typed);
    if (!outcome.ok) return refused(typed, besideFields(outcome.refusals), withoutField(outcome.refusals));
    const { redirectTo, message } = await done(outcome.value);
    revalidatePath('/', 'layout');
    if (redirectTo) redirect(redirectTo);
    return { status: 'done', values: {}, errors: {}, ...(message ? { message } : {}), writeId: randomUUID() };
  });
}

/** Do it, and turn a failure into a plain message with a number to ask about, and nothing lost. */
async function guarded(typed: Typed, work: () => Promise<FormState>): Promise<FormState> {
  try {
    return await work();
  } catch (error) {
    // Next's own signals, such as a redirect, pass.
    unstable_rethrow(error);
    if (error instanceof NotFound) notFound();
    const id = randomUUID();
    logFailure(id, error);
    return refused(
      typed,
      {},
      `Something went wrong on our side, and nothing was changed. Please try again; if it stays, give the secretary this number: ${id}`,
    );
  }
}

function refused(values: Typed, errors: Record<string, string>, formError?: string): FormState {
  // Passwords are never sent back to the page.
  const kept = Object.fromEntries(Object.entries(values).filter(([key]) => !/password/i.test(key)));
  return { status: 'refused', values: kept, errors, ...(formError ? { formError } : {}), writeId: writeIdOf(values) };
}

// The id stays while nothing was written under it.
function writeIdOf({ writeId }: Typed): string {
  return typeof writeId === 'string' ? writeId : randomUUID();
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

/** What is wrong, by the field that it stands beside. */
export function besideFields(refusals: readonly Refusal[]): Record<string, string> {
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
