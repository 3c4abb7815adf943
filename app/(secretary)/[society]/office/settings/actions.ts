'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { changeSetting } from '@/lib/usecases/settings/settings';

export async function changeSettingAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeSetting, {
    slug,
    form,
    done: () => ({ message: 'Set. Deliveries that are open keep the values they were opened with.' }),
  });
}
