'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { typeInBookings } from '@/lib/usecases/deliveries/book-loads';
import { enterBeyond } from '@/lib/usecases/deliveries/collect';
import {
  callOffDelivery,
  changeDelivery,
  closeDelivery,
  openDelivery,
  planDelivery,
  postponeDelivery,
} from '@/lib/usecases/deliveries/plan-delivery';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap, previewShareOut } from '@/lib/usecases/deliveries/share-out';

const at = (slug: string, id: string) => `/${slug}/office/deliveries/${id}`;

export async function planAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(planDelivery, { slug, form, done: ({ deliveryId }) => ({ redirectTo: at(slug, deliveryId) }) });
}

export async function changeAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeDelivery, {
    slug,
    form,
    fixed: { deliveryId },
    done: () => ({ redirectTo: at(slug, deliveryId) }),
  });
}

export async function openAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(openDelivery, {
    slug,
    form,
    fixed: { deliveryId },
    done: () => ({ message: 'Booking is open. The lot is drawn and its hash published.' }),
  });
}

export async function closeAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(closeDelivery, {
    slug,
    form,
    fixed: { deliveryId },
    done: () => ({ message: 'Booking is closed.' }),
  });
}

export async function postponeAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(postponeDelivery, {
    slug,
    form,
    fixed: { deliveryId },
    done: () => ({ message: 'Put off. All who booked are told; their bookings stand.' }),
  });
}

export async function callOffAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(callOffDelivery, {
    slug,
    form,
    fixed: { deliveryId },
    done: () => ({ message: 'Called off. All who booked are told; no credit changes.' }),
  });
}

export async function measureAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(measureHeap, {
    slug,
    form,
    fixed: { deliveryId },
    done: ({ loads }) => ({ message: `Measured: ${loads} loads.` }),
  });
}

export async function previewAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(previewShareOut, {
    slug,
    form,
    fixed: { deliveryId },
    done: () => ({ redirectTo: `/${slug}/deliveries/${deliveryId}/queue` }),
  });
}

export async function confirmAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(confirmShareOut, {
    slug,
    form,
    fixed: { deliveryId },
    done: ({ shares }) => ({ message: `Confirmed: ${shares} shares. Everybody who can be mailed is told.` }),
  });
}

export async function beyondAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(enterBeyond, {
    slug,
    form,
    fixed: { deliveryId },
    done: ({ loads }) => ({ message: `Entered: ${loads} beyond the share. The shares were worked out again.` }),
  });
}

export async function settleAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(settleDelivery, {
    slug,
    form,
    fixed: { deliveryId },
    done: () => ({
      message: 'Settled. Credits are written, and the beds that loads were booked for are logged as manured.',
    }),
  });
}

/** Rows come as `asked:<holding id>`. */
export async function typeInAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  const shape = (typed: Record<string, string | string[]>) => ({
    writeId: typed.writeId,
    rows: Object.entries(typed).flatMap(([name, asked]) =>
      name.startsWith('asked:') ? [{ holdingId: name.slice(6), asked }] : [],
    ),
  });
  return submitForm(typeInBookings, {
    slug,
    form,
    shape,
    fixed: { deliveryId },
    done: ({ count }) => ({ message: `${count} bookings stand as typed.` }),
  });
}
