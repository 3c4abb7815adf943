'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { logHarvest, retireHarvest } from '@/lib/usecases/harvest/keep-harvests';

export async function logHarvestAction(
  slug: string,
  at: { readonly plantingId: string; readonly replaces: string | null },
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(logHarvest, {
    slug,
    form,
    fixed: { plantingId: at.plantingId, replaces: at.replaces ?? '' },
    done: ({ harvestId, season }) => ({
      redirectTo: `/${slug}/ground/harvests?season=${season}&logged=${harvestId}`,
    }),
  });
}

export async function retireHarvestAction(
  slug: string,
  harvestId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retireHarvest, {
    slug,
    form,
    fixed: { harvestId },
    done: () => ({ redirectTo: `/${slug}/ground/harvests?said=taken-back` }),
  });
}
