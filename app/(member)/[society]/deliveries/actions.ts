'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { bookLate, leaveWaitingList } from '@/lib/usecases/deliveries/book-late';
import { bookLoads, offerToUnload, withdrawBooking } from '@/lib/usecases/deliveries/book-loads';
import { giveUp, tickOff, undoTick } from '@/lib/usecases/deliveries/collect';
import { recordLook } from '@/lib/usecases/deliveries/look-at-heap';

export async function bookAction(
  slug: string,
  deliveryId: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(bookLoads, {
    slug,
    form,
    fixed: { deliveryId, holdingId },
    done: ({ asked }) => ({ message: `Booked: ${asked}. You can change it until booking closes.` }),
  });
}

export async function withdrawAction(
  slug: string,
  deliveryId: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(withdrawBooking, {
    slug,
    form,
    fixed: { deliveryId, holdingId },
    done: () => ({ message: 'Withdrawn.' }),
  });
}

export async function bookLateAction(
  slug: string,
  deliveryId: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(bookLate, {
    slug,
    form,
    fixed: { deliveryId, holdingId },
    done: ({ asked, share }) => ({
      message: `You are on the waiting list for ${asked}.${share ? ` ${share} are yours already.` : ''}`,
    }),
  });
}

export async function leaveWaitingListAction(
  slug: string,
  deliveryId: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(leaveWaitingList, {
    slug,
    form,
    fixed: { deliveryId, holdingId },
    done: () => ({ message: 'You are off the waiting list.' }),
  });
}

export async function unloadAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(offerToUnload, {
    slug,
    form,
    fixed: { deliveryId },
    done: ({ offers }) => ({ message: offers ? 'Thank you: you are on the list.' : 'You are off the list.' }),
  });
}

export async function tickAction(
  slug: string,
  deliveryId: string,
  bookingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(tickOff, {
    slug,
    form,
    fixed: { deliveryId, bookingId },
    done: ({ left }) => ({ message: left ? `Ticked off. ${left} left.` : 'Ticked off. That is all of it.' }),
  });
}

/** The count on the page is the answer: a message would take the place of the thumb. */
export async function oneMoreAction(
  slug: string,
  deliveryId: string,
  bookingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(tickOff, { slug, form, fixed: { deliveryId, bookingId }, done: () => ({}) });
}

export async function undoAction(
  slug: string,
  deliveryId: string,
  bookingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(undoTick, {
    slug,
    form,
    fixed: { deliveryId, bookingId },
    done: ({ loads }) => ({ message: `Undone: ${loads}.` }),
  });
}

export async function giveUpAction(
  slug: string,
  deliveryId: string,
  bookingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(giveUp, {
    slug,
    form,
    fixed: { deliveryId, bookingId },
    // The share may leave the page with it, so the page itself says what was done.
    done: ({ left }) => ({ redirectTo: `/${slug}/deliveries/${deliveryId}/collect?gaveUp=${left}` }),
  });
}

export async function lookAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(recordLook, {
    slug,
    form,
    fixed: { deliveryId },
    done: ({ loads }) => ({ message: `Thank you: about ${loads} left. Everybody at the heap sees it.` }),
  });
}
