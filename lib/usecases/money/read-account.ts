import 'server-only';
import { z } from 'zod';
import { type AccountHolder, accountHolders } from '@/lib/data/account-holder';
import { balancesOn } from '@/lib/data/ledger-sums';
import { payNoteOf } from '@/lib/data/own-account';
import type { Account } from '@/lib/domain/ledger/account';
import { plainPounds } from '@/lib/domain/ledger/pounds';
import { canKeepMoney, canSeeAccount } from '@/lib/domain/policy/money';
import { canEnter } from '@/lib/domain/policy/standing';
import { toCsv } from '@/lib/platform/csv';
import { days } from '@/lib/schemas/money/ledger';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { daysAsked, statementOfHolding } from './statement-of';

const ofHolding = z.object({ holdingId: z.uuid(), ...days });

/** The accounts of one's own holdings, and of those that ended while one held them: what is owed, and what for. */
export const readOwnAccounts = query({
  name: 'read-own-accounts',
  allow: canEnter,
  input: z.object(days),
  read: async (context, asked) => {
    const { db, scope, today } = context;
    const span = daysAsked(today, asked);
    const holders = await accountHolders(db, scope, today, { memberId: scope.memberId });
    const accounts = await Promise.all(holders.map((holder) => accountOf(context, holder, span)));
    return { ...span, today, accounts, payNote: await payNoteOf(db, scope) };
  },
});

/** One holding's account: for its holders, and for the committee. */
export const readAccount = query({
  name: 'read-account',
  allow: canEnter,
  input: ofHolding,
  read: async (context, { holdingId, ...asked }) => {
    const { scope, today } = context;
    const account = await found(context, holdingId, daysAsked(today, asked));
    return {
      ...account,
      today,
      societyName: scope.societyName,
      payNote: await payNoteOf(context.db, scope),
      keeps: canKeepMoney(scope),
    };
  },
});

/** The same as a table for any spreadsheet; no amount in it is below nothing, so that none is taken for a formula. */
export const readAccountCsv = query({
  name: 'read-account-csv',
  allow: canEnter,
  input: ofHolding,
  read: async (context, { holdingId, ...asked }) => {
    const { holder, statement } = await found(context, holdingId, daysAsked(context.today, asked));
    const { from, to, openingMinor, lines } = statement;
    const columns = ['day', 'what for', 'kind', 'loads', 'charged £', 'paid or taken off £', 'owed £', 'in credit £'];
    return {
      name: `account-${holder.plots.join('-').replaceAll(/[^\w-]/g, '') || 'no-plot'}-${from}-to-${to}.csv`,
      text: toCsv(columns, [
        [from, 'brought forward', '', '', '', '', ...twoSided(openingMinor)],
        ...lines.map(({ on, words, kind, share, minor, balanceMinor }) => [
          ...[on, words, kind, share?.loads ?? ''],
          ...[...twoSided(minor), ...twoSided(balanceMinor)],
        ]),
      ]),
    };
  },
});

/** An amount in one of two columns: above nothing, or below it. */
export function twoSided(minor: number): [string, string] {
  return minor < 0 ? ['', plainPounds(-minor)] : [plainPounds(minor), ''];
}

async function found(context: ReadContext, holdingId: string, span: ReturnType<typeof daysAsked>) {
  const { db, scope, today } = context;
  const [holder] = await accountHolders(db, scope, today, { holdingIds: [holdingId] });
  if (!holder || !canSeeAccount(scope, holder)) throw new NotFound();
  return accountOf(context, holder, span);
}

async function accountOf(context: ReadContext, holder: AccountHolder, span: ReturnType<typeof daysAsked>) {
  const { db, scope } = context;
  const account: Account = `holding:${holder.holdingId}`;
  const balances = await balancesOn(db, scope, [account]);
  return {
    holder,
    balanceMinor: balances.get(account) ?? 0,
    statement: await statementOfHolding(context, holder, span),
  };
}
