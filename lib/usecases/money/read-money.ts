import 'server-only';
import { z } from 'zod';
import { accountHolders } from '@/lib/data/account-holder';
import { deliveriesOf } from '@/lib/data/delivery';
import { balancesIn, balancesOn } from '@/lib/data/ledger-sums';
import { type OwnAccount, ownAccountsOf, payNoteOf } from '@/lib/data/own-account';
import type { Account } from '@/lib/domain/ledger/account';
import { builtInAccounts } from '@/lib/domain/ledger/own-accounts';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import { toCsv } from '@/lib/platform/csv';
import { query, type ReadContext } from '../operation';
import { twoSided } from './read-account';

/** What stands on every account, for the committee: holdings, bank, cash, suppliers, purchases, the society's own. It sums to nothing. */
export const readMoney = query({
  name: 'read-money',
  allow: canReadCommitteePapers,
  input: z.object({}),
  read: async (context) => ({ ...(await balancesFor(context)), keeps: canKeepMoney(context.scope) }),
});

/** The same as a table. */
export const readBalancesCsv = query({
  name: 'read-balances-csv',
  allow: canReadCommitteePapers,
  input: z.object({}),
  read: async (context) => {
    const { holdings, others } = await balancesFor(context);
    const columns = ['account', 'plots', 'holders', 'stands on it £', 'below nothing £'];
    return {
      name: `balances-${context.today}.csv`,
      text: toCsv(columns, [
        ...holdings.map(({ plots, members, minor }) => [
          ...['holding', plots.join(', '), members.map(({ name }) => name).join(' and ')],
          ...twoSided(minor),
        ]),
        ...others.map(({ account, name, minor }) => [name ?? account, '', '', ...twoSided(minor)]),
      ]),
    };
  },
});

async function balancesFor({ db, scope, today, now }: ReadContext) {
  const [balances, holders, own, deliveries] = await Promise.all([
    balancesIn(db, scope),
    accountHolders(db, scope, today),
    ownAccountsOf(db, scope),
    deliveriesOf(db, scope, now),
  ]);
  const minorOn = new Map(balances.map(({ account, minor }) => [account, minor]));
  const holdings = holders
    .map((holder) => ({ ...holder, minor: minorOn.get(`holding:${holder.holdingId}`) ?? 0 }))
    .filter(({ endedOn, plots, minor }) => minor !== 0 || (endedOn === null && plots.length > 0));
  const named: [Account, string | null][] = [
    ...(['bank', 'cash', ...builtInAccounts] as const).map((account): [Account, null] => [account, null]),
    ...own
      .filter(({ key, isRetired }) => !isRetired || minorOn.get(`other:${key}`))
      .map(({ key, name }): [Account, string] => [`other:${key}`, name]),
    ...deliveries
      .filter(({ id }) => minorOn.get(`purchases:${id}`))
      .map(({ id, name }): [Account, string] => [`purchases:${id}`, name]),
  ];
  return {
    today,
    holdings,
    others: named.map(([account, name]) => ({ account, name, minor: minorOn.get(account) ?? 0 })),
    sumMinor: balances.reduce((sum, { minor }) => sum + minor, 0),
  };
}

/** The accounts that the society keeps apart with what stands on them, and how members pay. */
export const readAccounts = query({
  name: 'read-accounts',
  allow: canReadCommitteePapers,
  input: z.object({}),
  read: async ({ db, scope }) => {
    const own = await ownAccountsOf(db, scope);
    const accountOf = ({ key }: OwnAccount): Account => `other:${key}`;
    const balances = await balancesOn(db, scope, own.map(accountOf));
    return {
      own: own.map((one) => ({ ...one, minor: balances.get(accountOf(one)) ?? 0 })),
      payNote: await payNoteOf(db, scope),
      keeps: canKeepMoney(scope),
    };
  },
});

/** What the forms of the ledger offer: holdings, accounts that take entries, settled deliveries. */
export const readLedgerForms = query({
  name: 'read-ledger-forms',
  allow: canKeepMoney,
  input: z.object({}),
  read: async ({ db, scope, today, now }) => {
    const [holders, own, deliveries] = await Promise.all([
      accountHolders(db, scope, today),
      ownAccountsOf(db, scope),
      deliveriesOf(db, scope, now),
    ]);
    const settled = deliveries.filter(({ state }) => state === 'settled');
    return { today, holders, own, deliveries: settled.map(({ id, name }) => ({ id, name })) };
  },
});
