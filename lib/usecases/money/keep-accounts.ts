import 'server-only';
import { balancesOn } from '@/lib/data/ledger-sums';
import { addOwnAccount, lockOwnAccount, setPayNote, setRetired } from '@/lib/data/own-account';
import { builtInAccounts, ownAccount } from '@/lib/domain/ledger/own-accounts';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { accountInput, addAccountInput, payNoteInput } from '@/lib/schemas/money/ledger';
import { mutation } from '../operation';
import { NotFound, refuse } from '../refusal';

/** Add an account that the society keeps apart: seed, rents, keys. */
export const addAccount = mutation({
  name: 'add-account',
  allow: canKeepMoney,
  input: addAccountInput,
  write: async ({ tx, scope, note }, { name }) => {
    const account = ownAccount(name);
    if (builtInAccounts.some((one) => one === account)) refuse('account-built-in', { field: 'name' });
    const accountId = await addOwnAccount(tx, scope, account.slice('other:'.length), name);
    if (!accountId) refuse('account-name-taken', { field: 'name', numbers: { name } });
    note({ verb: 'added', thing: 'ledger account', thingId: accountId });
    return { accountId };
  },
});

/** Retire an account that nothing stands on: its entries stay, and nothing new is entered on it. */
export const retireAccount = mutation({
  name: 'retire-account',
  allow: canKeepMoney,
  input: accountInput,
  write: async ({ tx, scope, now, note }, { accountId }) => {
    const own = await lockOwnAccount(tx, scope, { id: accountId }, 'alone');
    if (!own) throw new NotFound();
    const account = `other:${own.key}` as const;
    const minor = (await balancesOn(tx, scope, [account])).get(account) ?? 0;
    if (minor !== 0) refuse('account-not-empty', { numbers: { minor } });
    await setRetired(tx, scope, accountId, now);
    note({ verb: 'retired', thing: 'ledger account', thingId: accountId });
    return { accountId };
  },
});

/** Take a retired account up again. */
export const takeUpAccount = mutation({
  name: 'take-up-account',
  allow: canKeepMoney,
  input: accountInput,
  write: async ({ tx, scope, note }, { accountId }) => {
    if (!(await lockOwnAccount(tx, scope, { id: accountId }, 'alone'))) throw new NotFound();
    await setRetired(tx, scope, accountId, null);
    note({ verb: 'taken up again', thing: 'ledger account', thingId: accountId });
    return { accountId };
  },
});

/** Say how members pay what they owe; it stands on their account's page, and in no mail. */
export const changePayNote = mutation({
  name: 'change-pay-note',
  allow: canKeepMoney,
  input: payNoteInput,
  write: async ({ tx, scope, note: noted }, { note }) => {
    await setPayNote(tx, scope, note);
    noted({ verb: 'changed', thing: 'how to pay', thingId: scope.societyId, after: { characters: note?.length ?? 0 } });
    return { kept: note !== null };
  },
});
