'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { chargeHoldings } from '@/lib/usecases/money/charge-holdings';
import { correctPrice, writeOff } from '@/lib/usecases/money/correct-price';
import { enterPayment, paySupplier } from '@/lib/usecases/money/enter-payment';
import { addAccount, changePayNote, retireAccount, takeUpAccount } from '@/lib/usecases/money/keep-accounts';
import { enterOpening, moveMoney } from '@/lib/usecases/money/move-money';
import { reverseEntry } from '@/lib/usecases/money/reverse-entry';

const entered = ({ minor }: { minor: number }) => ({ message: `Entered: ${formatPounds(minor)}.` });
const at = (slug: string, path: string, said: string) => ({ redirectTo: `/${slug}/office/money/${path}?said=${said}` });

export async function paymentAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(enterPayment, { slug, form, done: entered });
}

export async function supplierAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(paySupplier, { slug, form, done: entered });
}

export async function chargeAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  const done = ({ holdings, minor }: { holdings: number; minor: number }) => ({
    message: `Charged: ${formatPounds(minor)} to ${holdings === 1 ? 'one holding' : `${holdings} holdings`}. Whoever can be mailed is told.`,
  });
  return submitForm(chargeHoldings, { slug, form, done });
}

export async function moveAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(moveMoney, { slug, form, done: entered });
}

export async function openingAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(enterOpening, { slug, form, done: entered });
}

export async function reverseAction(slug: string, entryId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(reverseEntry, {
    slug,
    form,
    fixed: { entryId },
    done: ({ entryId: back }) => at(slug, `entries/${back}`, 'taken-back'),
  });
}

export async function priceAction(slug: string, deliveryId: string, _: FormState, form: FormData): Promise<FormState> {
  const done = () => at(slug, `deliveries/${deliveryId}`, 'price');
  return submitForm(correctPrice, { slug, form, fixed: { deliveryId }, done });
}

export async function writeOffAction(
  slug: string,
  deliveryId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  const done = () => at(slug, `deliveries/${deliveryId}`, 'written-off');
  return submitForm(writeOff, { slug, form, fixed: { deliveryId }, done });
}

export async function addAccountAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(addAccount, { slug, form, done: () => ({ message: 'Added.' }) });
}

export async function retireAction(slug: string, accountId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(retireAccount, { slug, form, fixed: { accountId }, done: () => at(slug, 'accounts', 'retired') });
}

export async function takeUpAction(slug: string, accountId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(takeUpAccount, { slug, form, fixed: { accountId }, done: () => at(slug, 'accounts', 'taken-up') });
}

export async function payNoteAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(changePayNote, {
    slug,
    form,
    done: () => ({ message: 'Kept. It stands on every “Your account”.' }),
  });
}
