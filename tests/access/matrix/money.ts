import { todayIn } from '@/lib/platform/clock';
import { chargeHoldings } from '@/lib/usecases/money/charge-holdings';
import { correctPrice, writeOff } from '@/lib/usecases/money/correct-price';
import { enterPayment, paySupplier } from '@/lib/usecases/money/enter-payment';
import { addAccount, changePayNote, retireAccount, takeUpAccount } from '@/lib/usecases/money/keep-accounts';
import { enterOpening, moveMoney } from '@/lib/usecases/money/move-money';
import { readAccount, readAccountCsv, readOwnAccounts } from '@/lib/usecases/money/read-account';
import { readEntry, readLedger, readLedgerCsv } from '@/lib/usecases/money/read-ledger';
import { readAccounts, readBalancesCsv, readLedgerForms, readMoney } from '@/lib/usecases/money/read-money';
import { readReconciliation, readSeasonMoney } from '@/lib/usecases/money/read-reconciliation';
import { reverseEntry } from '@/lib/usecases/money/reverse-entry';
import { once } from '../../fixtures/society';
import { committee, everybody, moneyKeepers, type Person, type Row } from '../row';

const today = todayIn('Europe/London');
const typed = { amount: '1', on: today, words: 'w' };
const ofHolder: readonly Person[] = [...committee, 'holder'];

export const money: readonly Row[] = [
  { operation: readOwnAccounts, input: () => ({}), allow: everybody },
  { operation: readAccount, input: ({ holdingId }) => ({ holdingId }), allow: ofHolder },
  { operation: readAccountCsv, input: ({ holdingId }) => ({ holdingId }), allow: ofHolder },
  { operation: readMoney, input: () => ({}), allow: committee },
  { operation: readBalancesCsv, input: () => ({}), allow: committee },
  { operation: readAccounts, input: () => ({}), allow: committee },
  { operation: readLedgerForms, input: () => ({}), allow: moneyKeepers },
  {
    operation: readLedger,
    input: ({ holdingId }) => ({ account: `holding:${holdingId}` }),
    allow: committee,
    idIsFilter: true,
  },
  {
    operation: readLedgerCsv,
    input: ({ holdingId }) => ({ account: `holding:${holdingId}` }),
    allow: committee,
    idIsFilter: true,
  },
  { operation: readEntry, input: ({ entryId }) => ({ entryId }), allow: committee },
  { operation: readReconciliation, input: ({ settledId }) => ({ deliveryId: settledId }), allow: committee },
  { operation: readSeasonMoney, input: () => ({ season: Number(today.slice(0, 4)) }), allow: committee },
  {
    operation: enterPayment,
    input: ({ holdingId }) => once({ ...typed, holdingId, into: 'bank' }),
    allow: moneyKeepers,
  },
  {
    operation: paySupplier,
    input: ({ settledId }) => once({ ...typed, deliveryId: settledId, from: 'bank' }),
    allow: moneyKeepers,
  },
  {
    operation: chargeHoldings,
    input: ({ holdingId }) => once({ ...typed, who: holdingId, account: 'other:society' }),
    allow: moneyKeepers,
  },
  {
    operation: moveMoney,
    input: ({ holdingId }) => once({ ...typed, from: 'bank', to: `holding:${holdingId}` }),
    allow: moneyKeepers,
  },
  {
    operation: enterOpening,
    input: ({ holdingId }) => once({ account: `holding:${holdingId}`, side: 'has', amount: '1', on: today }),
    allow: moneyKeepers,
  },
  {
    operation: reverseEntry,
    input: ({ entryId }) => once({ entryId, reason: 'r', sure: 'yes' }),
    allow: moneyKeepers,
  },
  {
    operation: correctPrice,
    input: ({ settledId }) => once({ deliveryId: settledId, price: '13', reason: 'r' }),
    allow: moneyKeepers,
  },
  {
    operation: writeOff,
    input: ({ leftOverId }) => once({ deliveryId: leftOverId, reason: 'r' }),
    allow: moneyKeepers,
  },
  { operation: addAccount, input: () => once({ name: 'Seed' }), allow: moneyKeepers },
  { operation: retireAccount, input: ({ accountId }) => once({ accountId }), allow: moneyKeepers },
  { operation: takeUpAccount, input: ({ accountId }) => once({ accountId }), allow: moneyKeepers },
  { operation: changePayNote, input: () => once({ note: 'In cash.' }), allow: moneyKeepers },
];
