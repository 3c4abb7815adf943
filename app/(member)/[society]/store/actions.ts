'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { finishLot, goOverLot, undoGoingOver } from '@/lib/usecases/store/go-over-lot';
import { correctLot, cureLot, moveLot, takeBackLot } from '@/lib/usecases/store/keep-lots';
import { addPlace, changePlace, retirePlace } from '@/lib/usecases/store/keep-places';
import { putIn } from '@/lib/usecases/store/put-in';
import { sayUse } from '@/lib/usecases/store/say-use';

export async function addPlaceAction(
  slug: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(addPlace, {
    slug,
    form,
    fixed: { holdingId },
    done: () => ({ redirectTo: `/${slug}/store/places?said=added` }),
  });
}

export async function changePlaceAction(
  slug: string,
  placeId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changePlace, { slug, form, fixed: { placeId }, done: () => ({ message: 'Changed.' }) });
}

export async function retirePlaceAction(
  slug: string,
  placeId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(retirePlace, {
    slug,
    form,
    fixed: { placeId },
    done: () => ({ redirectTo: `/${slug}/store/places?said=retired` }),
  });
}

/** The harvest that it comes from is known to the page. */
export async function putInAction(
  slug: string,
  harvestId: string | null,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(putIn, {
    slug,
    form,
    fixed: { harvestId: harvestId ?? '' },
    done: ({ lotId }) => ({ redirectTo: `/${slug}/store/lots/${lotId}?said=put-in` }),
  });
}

/** Everything that is done to a lot is said by its page: what was folded out may be gone from it. */
export async function correctLotAction(slug: string, lotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(correctLot, { slug, form, fixed: { lotId }, done: () => said(slug, lotId, 'corrected') });
}

export async function moveLotAction(slug: string, lotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(moveLot, { slug, form, fixed: { lotId }, done: () => said(slug, lotId, 'moved') });
}

export async function cureLotAction(slug: string, lotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(cureLot, { slug, form, fixed: { lotId }, done: () => said(slug, lotId, 'cured') });
}

export async function finishLotAction(slug: string, lotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(finishLot, { slug, form, fixed: { lotId }, done: () => said(slug, lotId, 'finished') });
}

export async function undoOfLotAction(slug: string, id: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(undoGoingOver, {
    slug,
    form,
    fixed: { goingOverId: id },
    done: ({ lotId }) => said(slug, lotId, 'undone'),
  });
}

export async function takeBackLotAction(slug: string, lotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(takeBackLot, {
    slug,
    form,
    fixed: { lotId },
    done: () => ({ redirectTo: `/${slug}/store?said=taken-back` }),
  });
}

/** In the round the next lot comes under the thumb; what was just written is said above it, with its undo. */
export async function roundAction(slug: string, lotId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(goOverLot, {
    slug,
    form,
    fixed: { lotId },
    done: () => ({ redirectTo: `/${slug}/store/round?went=${lotId}` }),
  });
}

export async function undoInRoundAction(slug: string, id: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(undoGoingOver, {
    slug,
    form,
    fixed: { goingOverId: id },
    done: ({ lotId }) => ({ redirectTo: `/${slug}/store/round?lot=${lotId}` }),
  });
}

export async function sayUseAction(
  slug: string,
  holdingId: string,
  keepingKey: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(sayUse, {
    slug,
    form,
    fixed: { holdingId, keepingKey },
    done: () => ({ message: 'Kept. The answer follows from it.' }),
  });
}

function said(slug: string, lotId: string, what: string) {
  return { redirectTo: `/${slug}/store/lots/${lotId}?said=${what}` };
}
