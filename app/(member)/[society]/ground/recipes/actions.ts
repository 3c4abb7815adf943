'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { changeHabits } from '@/lib/usecases/recipes/change-habits';
import { changeRecipe } from '@/lib/usecases/recipes/change-recipe';

const nothing = 'Nothing was different, so nothing was changed.';

export async function changeRecipeAction(
  slug: string,
  group: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeRecipe, {
    slug,
    form,
    fixed: { group },
    done: ({ changed }) => ({ message: changed ? 'Kept. It holds for all your beds of this group.' : nothing }),
  });
}

export async function changeHabitsAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeHabits, {
    slug,
    form,
    done: ({ changed }) => ({ message: changed ? 'Kept. It holds for all your ground.' : nothing }),
  });
}
