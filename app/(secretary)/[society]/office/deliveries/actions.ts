'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { typeInBookings } from '@/lib/usecases/deliveries/book-loads';
import { bookLate } from '@/lib/usecases/deliveries/book-late';
import { enterBeyond } from '@/lib/usecases/deliveries/collect';
import { holdDelivery, releaseDelivery } from '@/lib/usecases/deliveries/hold-delivery';
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
// A step takes its form off the page, so the page itself says what was done.
const saying = (slug: string, id: string, said: string) => () => ({ redirectTo: `${at(slug, id)}?said=${said}` });

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
  return submitForm(openDelivery, { slug, form, fixed: { deliveryId }, done: saying(slug, deliveryId, 'opened') });
}

export async function closeAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(closeDelivery, { slug, form, fixed: { deliveryId }, done: saying(slug, deliveryId, 'closed') });
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
    done: saying(slug, deliveryId, 'postponed'),
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
    done: saying(slug, deliveryId, 'called-off'),
  });
}

export async function holdAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(holdDelivery, { slug, form, fixed: { deliveryId }, done: saying(slug, deliveryId, 'held') });
}

export async function releaseAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(releaseDelivery, { slug, form, fixed: { deliveryId }, done: saying(slug, deliveryId, 'released') });
}

export async function measureAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(measureHeap, { slug, form, fixed: { deliveryId }, done: saying(slug, deliveryId, 'measured') });
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
  return submitForm(confirmShareOut, { slug, form, fixed: { deliveryId }, done: saying(slug, deliveryId, 'shared') });
}

export async function bookLateAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(bookLate, {
    slug,
    form,
    fixed: { deliveryId },
    done: ({ asked, share }) => ({
      message: `On the waiting list for ${asked}.${share ? ` ${share} are theirs already.` : ''}`,
    }),
  });
}

export async function beyondAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(enterBeyond, { slug, form, fixed: { deliveryId }, done: saying(slug, deliveryId, 'beyond') });
}

export async function settleAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(settleDelivery, { slug, form, fixed: { deliveryId }, done: saying(slug, deliveryId, 'settled') });
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
