'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { makeSheet } from '@/lib/usecases/sheets/make-sheet';
import { retireSheet } from '@/lib/usecases/sheets/retire-sheet';
import { tickTrench, untickTrench } from '@/lib/usecases/sheets/tick-trench';

export async function makeSheetAction(slug: string, bedId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(makeSheet, {
    slug,
    form,
    fixed: { bedId },
    done: ({ sheetId }) => ({ redirectTo: `/${slug}/ground/sheets/${sheetId}` }),
  });
}

export async function tickTrenchAction(
  slug: string,
  sheetId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(tickTrench, {
    slug,
    form,
    fixed: { sheetId },
    done: ({ done }) => ({ redirectTo: `/${slug}/ground/sheets/${sheetId}?ticked=${done}#now` }),
  });
}

export async function untickTrenchAction(
  slug: string,
  sheetId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(untickTrench, {
    slug,
    form,
    fixed: { sheetId },
    done: ({ done }) => ({ redirectTo: `/${slug}/ground/sheets/${sheetId}?back=${done}#now` }),
  });
}

export async function retireSheetAction(
  slug: string,
  sheetId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retireSheet, {
    slug,
    form,
    fixed: { sheetId },
    done: ({ bedId }) => ({ redirectTo: `/${slug}/ground/beds/${bedId}` }),
  });
}
