'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { saveCrop } from '@/lib/usecases/ground/keep-crops';

export async function saveCropAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(saveCrop, { slug, form, done: () => ({ message: 'Saved.' }) });
}
