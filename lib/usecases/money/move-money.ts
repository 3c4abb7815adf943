import 'server-only';
import { societyAccount } from '@/lib/domain/ledger/own-accounts';
import { moved } from '@/lib/domain/ledger/postings';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { moveInput, openingInput } from '@/lib/schemas/money/ledger';
import { mutation } from '../operation';
import { refuse } from '../refusal';
import { enter } from './enter';
import { openAccount } from './open-account';

/** Move money off one account on to another: bank and cash, seed bought at the bank, what is paid back to a holding. */
export const moveMoney = mutation({
  name: 'move-money',
  allow: canKeepMoney,
  input: moveInput,
  write: async (context, { from, to, amount, on, words }) => {
    await openAccount(context, from, 'from');
    await openAccount(context, to, 'to');
    if (from === to) refuse('same-account', { field: 'to' });
    return { entryId: await enter(context, { ...moved(from, to, amount), on, words }), minor: amount };
  },
});

/** Enter what stood on an account before the ledger began: against the society's own funds. */
export const enterOpening = mutation({
  name: 'enter-opening',
  allow: canKeepMoney,
  input: openingInput,
  write: async (context, { account, side, amount, on }) => {
    await openAccount(context, account, 'account');
    if (account === societyAccount) refuse('same-account', { field: 'account' });
    const { lines } = side === 'has' ? moved(societyAccount, account, amount) : moved(account, societyAccount, amount);
    const entry = { kind: 'transfer' as const, lines, on, words: 'opening balance' };
    return { entryId: await enter(context, entry), minor: amount };
  },
});
