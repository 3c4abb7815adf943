'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { changeSocietyRecipe } from '@/lib/usecases/recipes/change-recipe';

export async function changeSocietyRecipeAction(
  slug: string,
  group: string,
  from: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeSocietyRecipe, {
    slug,
    form,
    fixed: { group, from },
    done: ({ changed }) => ({
      message: changed ? 'Set. Whoever has set their own keeps it.' : 'Nothing was different, so nothing was changed.',
    }),
  });
}
