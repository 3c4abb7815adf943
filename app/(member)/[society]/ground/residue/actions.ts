'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { endTest, sowTest, startTest, takeBackTest } from '@/lib/usecases/residue/keep-tests';
import { recordReading } from '@/lib/usecases/residue/record-reading';
import { testsAt, testAt } from '../../_parts/residue-address';

type Kept = { readonly testId: string; readonly deliveryId: string | null };
// What was done changes what the page asks next, so the page itself says it.
const saying = (slug: string, said: string) => (test: Kept) => ({ redirectTo: `${testAt(slug, test)}?said=${said}` });

export async function startAction(
  slug: string,
  deliveryId: string | null,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const fixed = deliveryId === null ? {} : { deliveryId };
  return submitForm(startTest, { slug, form, fixed, done: saying(slug, 'started') });
}

export async function sowAction(slug: string, testId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(sowTest, { slug, form, fixed: { testId }, done: saying(slug, 'sown') });
}

/** Pots come as `up:<pot>`, `distorted:<pot>` and `trueLeaves:<pot>`. */
export async function readingAction(slug: string, testId: string, _: FormState, form: FormData): Promise<FormState> {
  const shape = ({ writeId, on, replaces, ...typed }: Record<string, string | string[]>) => ({
    writeId,
    on,
    ...(replaces === undefined ? {} : { replaces }),
    pots: Object.keys(typed)
      .filter((name) => name.startsWith('up:'))
      .map((name) => name.slice(3))
      .map((potId) => ({
        potId,
        up: typed[`up:${potId}`],
        distorted: typed[`distorted:${potId}`],
        trueLeaves: typed[`trueLeaves:${potId}`],
      })),
  });
  return submitForm(recordReading, { slug, form, shape, fixed: { testId }, done: saying(slug, 'read') });
}

export async function endAction(slug: string, testId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(endTest, { slug, form, fixed: { testId }, done: saying(slug, 'ended') });
}

export async function takeBackAction(slug: string, testId: string, _: FormState, form: FormData): Promise<FormState> {
  const done = ({ deliveryId }: Kept) => ({ redirectTo: `${testsAt(slug, deliveryId)}?said=taken-back` });
  return submitForm(takeBackTest, { slug, form, fixed: { testId }, done });
}
