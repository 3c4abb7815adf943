'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { recordLook } from '@/lib/usecases/deliveries/look-at-heap';

/** The heap may leave the page with it, so the page itself says what was done. */
export async function lookAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(recordLook, {
    slug,
    form,
    fixed: { deliveryId },
    done: ({ loads }) => ({ redirectTo: `/${slug}/office/order?seen=${loads}` }),
  });
}
