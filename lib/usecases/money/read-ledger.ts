import 'server-only';
import { z } from 'zod';
import { countEntries, entriesOf, entryById } from '@/lib/data/ledger';
import { memberById } from '@/lib/data/member';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import { toCsv } from '@/lib/platform/csv';
import { ledgerAsked } from '@/lib/schemas/money/ledger';
import { query } from '../operation';
import { NotFound } from '../refusal';
import { accountNames } from './account-names';
import { twoSided } from './read-account';

const pageEntries = 40;

/** The ledger by day, the newest first. */
export const readLedger = query({
  name: 'read-ledger',
  allow: canReadCommitteePapers,
  input: ledgerAsked,
  read: async (context, { page, ...filter }) => {
    const { db, scope } = context;
    const [entries, count, names] = await Promise.all([
      entriesOf(db, scope, filter, { skip: page * pageEntries, take: pageEntries }),
      countEntries(db, scope, filter),
      accountNames(context),
    ]);
    return { entries, count, names, page, pages: Math.max(1, Math.ceil(count / pageEntries)) };
  },
});

/** The same as a table, one row a line; no amount in it is below nothing, so that none is taken for a formula. */
export const readLedgerCsv = query({
  name: 'read-ledger-csv',
  allow: canReadCommitteePapers,
  input: ledgerAsked,
  read: async (context, { page: _, ...filter }) => {
    const [entries, names] = await Promise.all([entriesOf(context.db, context.scope, filter), accountNames(context)]);
    const columns = ['day', 'entry', 'kind', 'words', 'takes back', 'account', 'name', 'on to it £', 'off it £'];
    return {
      name: `ledger-${context.today}.csv`,
      text: toCsv(
        columns,
        entries.toReversed().flatMap(({ on, id, kind, words, reverses, lines }) =>
          lines.map(({ account, minor }) => {
            return [on, id, kind, words, reverses ?? '', account, names[account] ?? '', ...twoSided(minor)];
          }),
        ),
      ),
    };
  },
});

/** One entry with its lines: what it says, who entered it, and whether it may be taken back. */
export const readEntry = query({
  name: 'read-entry',
  allow: canReadCommitteePapers,
  input: z.object({ entryId: z.uuid() }),
  read: async (context, { entryId }) => {
    const { db, scope, today } = context;
    const entry = await entryById(db, scope, entryId);
    if (!entry) throw new NotFound();
    const [by, names] = await Promise.all([memberById(db, scope, entry.madeByMemberId, today), accountNames(context)]);
    const ofPrice = entry.deliveryId !== null && (entry.kind === 'purchase' || entry.kind === 'charge');
    const stands = entry.kind !== 'correction' && entry.reversedBy === null;
    return {
      entry,
      names,
      by: by?.name ?? 'a former member',
      timeZone: scope.timeZone,
      ofPrice,
      keeps: canKeepMoney(scope),
      mayTakeBack: stands && !ofPrice && canKeepMoney(scope),
    };
  },
});
