'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { setDensity } from '@/lib/usecases/deliveries/set-density';
import { keepMeasured } from '@/lib/usecases/measures/keep-measured';

export async function setDensityAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(setDensity, {
    slug,
    form,
    done: ({ deliveryId }) => ({ redirectTo: `/${slug}/office/deliveries/${deliveryId}?said=weighed` }),
  });
}

export async function keepMeasuredAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(keepMeasured, {
    slug,
    form,
    done: ({ changed }) => ({
      message: changed ? 'Kept among your habits; sheets made from now on go by it.' : 'It stood there already.',
    }),
  });
}
