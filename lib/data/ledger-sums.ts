import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Account } from '@/lib/domain/ledger/account';
import { type Balance, checkedBalances } from '@/lib/domain/ledger/balances';
import type { EntryKind } from '@/lib/domain/ledger/entry';
import { runningStatement, type StatementMove } from '@/lib/domain/ledger/statement';
import { fromDbDay, toDbDay } from './day';
import type { Db } from './db';
import type { Scope } from './scope';

/** What stands on every account that was ever touched, added up by the database; it sums to nothing, or this throws. */
export async function balancesIn(db: Db, { societyId }: Scope): Promise<readonly Balance[]> {
  const rows = await db.$queryRaw<{ account: string; minor: bigint }[]>`
    SELECT "account", sum("minor")::bigint AS "minor" FROM "LedgerLine"
    WHERE "societyId" = ${societyId}::uuid GROUP BY "account" ORDER BY "account"`;
  return checkedBalances(rows.map(({ account, minor }) => ({ account: account as Account, minor: Number(minor) })));
}

/** What stands on some accounts; nothing where one was never touched. */
export async function balancesOn(
  db: Db,
  { societyId }: Scope,
  accounts: readonly Account[],
): Promise<ReadonlyMap<Account, number>> {
  const rows = await db.$queryRaw<{ account: Account; minor: bigint }[]>`
    SELECT "account", sum("minor")::bigint AS "minor" FROM "LedgerLine"
    WHERE "societyId" = ${societyId}::uuid AND "account" = ANY(${[...accounts]}) GROUP BY "account"`;
  const sums = new Map(rows.map(({ account, minor }) => [account, Number(minor)]));
  return new Map(accounts.map((account) => [account, sums.get(account) ?? 0]));
}

type MoveRow = {
  entryId: string;
  on: Date;
  kind: EntryKind;
  words: string;
  deliveryId: string | null;
  reverses: string | null;
  reversedBy: string | null;
  minor: bigint;
};

/** A line of a statement, with what its entry was for. */
export type WordedMove = StatementMove & Pick<MoveRow, 'words' | 'deliveryId'>;

/** The statement of one account from one day to another, by the account's own lines and not the whole ledger. */
export async function statementIn(
  db: Db,
  { societyId }: Scope,
  account: Account,
  { from, to }: { readonly from: CalendarDate; readonly to: CalendarDate },
) {
  const [opening] = await db.$queryRaw<{ minor: bigint }[]>`
    SELECT coalesce(sum(l."minor"), 0)::bigint AS "minor" FROM "LedgerLine" l JOIN "LedgerEntry" e ON e."id" = l."entryId"
    WHERE l."societyId" = ${societyId}::uuid AND l."account" = ${account} AND e."on" < ${toDbDay(from)}::date`;
  const rows = await db.$queryRaw<MoveRow[]>`
    SELECT e."id"::text AS "entryId", e."on", e."kind", e."words", e."deliveryId"::text, e."reversesId"::text AS "reverses",
      b."id"::text AS "reversedBy", l."minor"
    FROM "LedgerLine" l JOIN "LedgerEntry" e ON e."id" = l."entryId" LEFT JOIN "LedgerEntry" b ON b."reversesId" = e."id"
    WHERE l."societyId" = ${societyId}::uuid AND l."account" = ${account}
      AND e."on" BETWEEN ${toDbDay(from)}::date AND ${toDbDay(to)}::date
    ORDER BY e."on", e."at", e."id"`;
  const moves: WordedMove[] = rows.map(({ on, minor, ...row }) => ({
    ...row,
    on: fromDbDay(on),
    minor: Number(minor),
  }));
  return runningStatement(account, from, to, { openingMinor: Number(opening?.minor ?? 0n), moves });
}

/** What holdings were charged after an entry, of charges that stand, by holding: for what is still to pay of that one. */
export async function chargedAfter(
  db: Db,
  { societyId }: Scope,
  entryId: string,
): Promise<ReadonlyMap<string, number>> {
  const rows = await db.$queryRaw<{ holdingId: string; minor: bigint }[]>`
    SELECT l."holdingId"::text, sum(l."minor")::bigint AS "minor"
    FROM "LedgerLine" mine JOIN "LedgerEntry" own ON own."id" = mine."entryId"
      JOIN "LedgerLine" l ON l."societyId" = mine."societyId" AND l."account" = mine."account" AND l."minor" > 0
      JOIN "LedgerEntry" e ON e."id" = l."entryId" AND (e."on", e."at", e."id") > (own."on", own."at", own."id")
    WHERE mine."societyId" = ${societyId}::uuid AND mine."entryId" = ${entryId}::uuid AND mine."holdingId" IS NOT NULL
      AND e."kind" <> 'correction' AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" b WHERE b."reversesId" = e."id")
    GROUP BY l."holdingId"`;
  return new Map(rows.map(({ holdingId, minor }) => [holdingId, Number(minor)]));
}

/** What entries put on accounts in all, by entry: of a charge, what all those charged pay together. */
export async function totalsOf(
  db: Db,
  { societyId }: Scope,
  entryIds: readonly string[],
): Promise<ReadonlyMap<string, number>> {
  const rows = await db.ledgerLine.groupBy({
    by: ['entryId'],
    where: { societyId, entryId: { in: [...entryIds] }, minor: { gt: 0 } },
    _sum: { minor: true },
  });
  return new Map(rows.map(({ entryId, _sum }) => [entryId, Number(_sum.minor ?? 0n)]));
}
