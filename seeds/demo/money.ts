import { randomUUID } from 'node:crypto';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { plainPounds } from '@/lib/domain/ledger/pounds';
import { chargeHoldings } from '@/lib/usecases/money/charge-holdings';
import { correctPrice } from '@/lib/usecases/money/correct-price';
import { enterPayment, paySupplier } from '@/lib/usecases/money/enter-payment';
import { addAccount, changePayNote } from '@/lib/usecases/money/keep-accounts';
import { enterOpening, moveMoney } from '@/lib/usecases/money/move-money';
import { readReconciliation } from '@/lib/usecases/money/read-reconciliation';
import { reverseEntry } from '@/lib/usecases/money/reverse-entry';
import type { Caller } from '@/lib/usecases/operation';
import type { Chance } from '../chance';
import { done } from './done';

type Deliveries = { readonly spring: string; readonly summer: string };

const payNote =
  'Cash in an envelope with your plot’s number, through the treasurer’s letter box; or ask him for the number of the society’s account.';

const once = <Input extends object>(input: Input) => ({ writeId: randomUUID(), ...input });

/** A season of the treasurer's work: what stood in the bank, payments, a supplier paid, seed, and two mistakes put right. */
export async function loadMoney(
  treasurer: Caller,
  deliveries: Deliveries,
  chance: Chance,
  today: CalendarDate,
): Promise<void> {
  const ago = (days: number) => addDays(today, -days);
  const opening = { account: 'bank', side: 'has', amount: '412.60', on: ago(300) };
  await done(enterOpening.run(treasurer, once(opening)));
  await done(addAccount.run(treasurer, once({ name: 'Seed' })));
  await done(changePayNote.run(treasurer, once({ note: payNote })));
  const paid = await payFor(treasurer, deliveries.spring, { share: 0.95, from: ago(228) }, chance);
  const supplier = {
    deliveryId: deliveries.spring,
    amount: '152',
    on: ago(226),
    from: 'bank',
    words: 'the stables at Marl Lane, spring load',
  };
  await done(paySupplier.run(treasurer, once(supplier)));
  await buySeed(treasurer, paid.slice(0, 6), ago(190));
  // The note of delivery said less than the invoice.
  const price = { deliveryId: deliveries.summer, price: '76.50', reason: 'the invoice says £76.50' };
  await done(correctPrice.run(treasurer, once(price)));
  await payFor(treasurer, deliveries.summer, { share: 0.45, from: ago(40) }, chance);
  const twice = { holdingId: paid[0] ?? '', amount: '2.50', on: ago(20), into: 'cash', words: '' };
  const { entryId } = await done(enterPayment.run(treasurer, once(twice)));
  await done(reverseEntry.run(treasurer, once({ entryId, reason: 'entered twice', sure: 'yes' })));
}

/** Some holders pay their part of a delivery, most of them in full; returns who did. */
async function payFor(
  treasurer: Caller,
  deliveryId: string,
  { share, from }: { share: number; from: CalendarDate },
  chance: Chance,
): Promise<string[]> {
  const { parts } = await readReconciliation.run(treasurer, { deliveryId });
  const paying = parts.filter(({ minor }) => minor >= 100 && chance.next() < share);
  for (const [nth, { holder, minor }] of paying.entries()) {
    const { holdingId } = holder;
    // Now and then somebody rounds down to a pound.
    const amount = plainPounds(nth % 9 === 4 ? minor - (minor % 100) : minor);
    const into = nth % 3 === 0 ? 'cash' : 'bank';
    const payment = { holdingId, amount, into, on: addDays(from, chance.whole(0, 20)), words: '' };
    await done(enterPayment.run(treasurer, once(payment)));
  }
  return paying.map(({ holder }) => holder.holdingId);
}

async function buySeed(treasurer: Caller, holdingIds: readonly string[], on: CalendarDate): Promise<void> {
  const bought = { from: 'bank', to: 'other:seed', amount: '21.60', on, words: 'seed potatoes, 12 kg' };
  await done(moveMoney.run(treasurer, once(bought)));
  for (const who of holdingIds) {
    const charge = { who, account: 'other:seed', amount: '3.60', on, words: 'seed potatoes, 2 kg' };
    await done(chargeHoldings.run(treasurer, once(charge)));
  }
}
