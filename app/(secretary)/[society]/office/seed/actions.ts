'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { handOutSeed } from '@/lib/usecases/seed/hand-out';
import { addSeedItem, retireSeedItem } from '@/lib/usecases/seed/keep-items';
import { markSeedOrdered, noteSeedArrived } from '@/lib/usecases/seed/order-packs';
import {
  callOffSeedOrder,
  changeSeedOrder,
  closeSeedOrder,
  openSeedOrder,
  planSeedOrder,
} from '@/lib/usecases/seed/plan-order';
import { correctSeedOrder, settleSeedOrder } from '@/lib/usecases/seed/settle-order';

const at = (slug: string, id: string) => `/${slug}/office/seed/${id}`;
// A step takes its form off the page, so the page itself says what was done.
const saying = (slug: string, id: string, said: string) => () => ({ redirectTo: `${at(slug, id)}?said=${said}` });

type Typed = Record<string, string | string[]>;

// A list's fields carry what they are of after a colon; together they are its rows.
function rowsOf(typed: Typed, keys: readonly string[], named: string | null) {
  const ids = Object.keys(typed).flatMap((name) => (name.startsWith(`${keys[0]}:`) ? [name.split(':')[1] ?? ''] : []));
  const row = (id: string) => Object.fromEntries(keys.map((key) => [key, typed[`${key}:${id}`] ?? '']));
  return ids.map((id) => (named ? { ...row(id), [named]: id } : row(id)));
}

function plainOf(typed: Typed): Typed {
  return Object.fromEntries(Object.entries(typed).filter(([name]) => !name.includes(':')));
}

export async function planAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(planSeedOrder, { slug, form, done: ({ orderId }) => ({ redirectTo: at(slug, orderId) }) });
}

export async function changeAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changeSeedOrder, { slug, form, fixed: { orderId }, done: saying(slug, orderId, 'changed') });
}

export async function openAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(openSeedOrder, { slug, form, fixed: { orderId }, done: saying(slug, orderId, 'opened') });
}

export async function closeAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(closeSeedOrder, { slug, form, fixed: { orderId }, done: saying(slug, orderId, 'closed') });
}

export async function callOffAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(callOffSeedOrder, { slug, form, fixed: { orderId }, done: saying(slug, orderId, 'called-off') });
}

export async function addItemAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(addSeedItem, {
    slug,
    form,
    shape: (typed) => ({ ...plainOf(typed), packs: rowsOf(typed, ['amount', 'price'], null) }),
    fixed: { orderId },
    done: () => ({ message: 'On the list.' }),
  });
}

export async function takeOffAction(slug: string, itemId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(retireSeedItem, { slug, form, fixed: { itemId }, done: () => ({ message: 'Off the list.' }) });
}

export async function orderAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(markSeedOrdered, { slug, form, fixed: { orderId }, done: saying(slug, orderId, 'ordered') });
}

export async function arriveAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(noteSeedArrived, {
    slug,
    form,
    shape: (typed) => ({ ...plainOf(typed), packs: rowsOf(typed, ['came', 'price'], 'packId') }),
    fixed: { orderId },
    done: ({ short }) => ({ redirectTo: `${at(slug, orderId)}?said=${short ? 'arrived-short' : 'arrived'}` }),
  });
}

export async function handOutAction(
  slug: string,
  orderId: string,
  holdingId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(handOutSeed, {
    slug,
    form,
    fixed: { orderId, holdingId },
    done: () => ({ message: 'Noted.' }),
  });
}

export async function settleAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(settleSeedOrder, { slug, form, fixed: { orderId }, done: saying(slug, orderId, 'settled') });
}

export async function correctAction(slug: string, orderId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(correctSeedOrder, { slug, form, fixed: { orderId }, done: saying(slug, orderId, 'corrected') });
}
