import { todayIn } from '@/lib/platform/clock';
import { chargeHoldings } from '@/lib/usecases/money/charge-holdings';
import { enterPayment, paySupplier } from '@/lib/usecases/money/enter-payment';
import { addAccount, changePayNote } from '@/lib/usecases/money/keep-accounts';
import { done, once } from '../../fixtures/society';
import type { Members, Word } from './members';

/** What the holder paid and was charged, a supplier paid, and an account that the society keeps apart. */
export async function makeMoney(
  word: Word,
  { treasurer: { caller: treasurer } }: Members,
  holdingId: string,
  settledId: string,
): Promise<{ entryId: string; accountId: string }> {
  const on = todayIn('Europe/London');
  const payment = { holdingId, amount: '2', on, into: 'bank', words: word('payment words') };
  const { entryId } = await done(enterPayment.run(treasurer, once(payment)));
  const charge = { who: holdingId, amount: '3', on, account: 'other:society', words: word('charge words') };
  await done(chargeHoldings.run(treasurer, once(charge)));
  const supplier = { deliveryId: settledId, amount: '12', on, from: 'cash', words: word('supplier paid') };
  await done(paySupplier.run(treasurer, once(supplier)));
  const { accountId } = await done(addAccount.run(treasurer, once({ name: word('own account') })));
  await done(changePayNote.run(treasurer, once({ note: word('how to pay') })));
  return { entryId, accountId };
}
