import 'server-only';
import { deliveryById } from '@/lib/data/delivery';
import { suppliersAccount } from '@/lib/domain/ledger/own-accounts';
import { moved } from '@/lib/domain/ledger/postings';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { paymentInput, supplierPaymentInput } from '@/lib/schemas/money/ledger';
import { mutation } from '../operation';
import { NotFound } from '../refusal';
import { enter } from './enter';
import { openAccount } from './open-account';

/** Enter what a holding paid, into the bank or in cash. */
export const enterPayment = mutation({
  name: 'enter-payment',
  allow: canKeepMoney,
  input: paymentInput,
  write: async (context, { holdingId, amount, on, into, words }) => {
    const account = `holding:${holdingId}` as const;
    await openAccount(context, account, 'holdingId');
    const said = words ?? (into === 'bank' ? 'paid into the bank' : 'paid in cash');
    return { entryId: await enter(context, { ...moved(account, into, amount), on, words: said }), minor: amount };
  },
});

/** Enter what was paid to those who bring manure and straw. */
export const paySupplier = mutation({
  name: 'pay-supplier',
  allow: canKeepMoney,
  input: supplierPaymentInput,
  write: async (context, { amount, on, from, deliveryId, words }) => {
    const { tx, scope, now } = context;
    if (deliveryId && !(await deliveryById(tx, scope, deliveryId, now))) throw new NotFound();
    const entry = { ...moved(from, suppliersAccount, amount), on, words, deliveryId };
    return { entryId: await enter(context, entry), minor: amount };
  },
});
