import 'server-only';
import { randomUUID } from 'node:crypto';
import type { LedgerEntry, LedgerLine, Prisma } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type Account, accountKind } from '@/lib/domain/ledger/account';
import { checkedEntry, type Entry, type EntryKind } from '@/lib/domain/ledger/entry';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** An entry as it stands in the book, with the words it was entered under. */
export type LedgerRecord = Entry & {
  readonly words: string;
  readonly deliveryId: string | null;
  /** The entry that takes this one back, or null. */
  readonly reversedBy: string | null;
  readonly madeByMemberId: string;
  readonly at: Date;
};

/** An entry to be written. */
export type NewEntry = Omit<Entry, 'id'> & { readonly words: string; readonly deliveryId?: string | null };

const withLines = {
  lines: { orderBy: { account: 'asc' } },
  reversedBy: { select: { id: true } },
} satisfies Prisma.LedgerEntryInclude;

type Row = LedgerEntry & { lines: LedgerLine[]; reversedBy: { id: string }[] };

// What is read is checked by the same rules as what is written.
function toRecord(row: Row): LedgerRecord {
  const { id, words, deliveryId, madeByMemberId, at, reversesId } = row;
  const entry = checkedEntry({
    id,
    on: fromDbDay(row.on),
    kind: row.kind as EntryKind,
    lines: row.lines.map(({ account, minor }) => ({ account: account as Account, minor: Number(minor) })),
    ...(reversesId ? { reverses: reversesId } : {}),
  });
  return { ...entry, words, deliveryId, madeByMemberId, at, reversedBy: row.reversedBy[0]?.id ?? null };
}

/** Write entries, one after the other; the database checks when the transaction ends that each of them balances. */
export async function postEntries(tx: Tx, scope: Scope, entries: readonly NewEntry[], at: Date): Promise<string[]> {
  const { societyId, memberId: madeByMemberId } = scope;
  const made = entries.map((entry) => ({ ...entry, ...checkedEntry({ ...entry, id: randomUUID() }) }));
  await tx.ledgerEntry.createMany({
    data: made.map(({ id, on, kind, words, deliveryId, reverses }, nth) => ({
      ...{ id, societyId, kind, words, madeByMemberId, on: toDbDay(on) },
      ...{ deliveryId: deliveryId ?? null, reversesId: reverses ?? null },
      // Their order is kept to the thousandth of a second.
      at: new Date(at.getTime() + nth),
    })),
  });
  await tx.ledgerLine.createMany({
    data: made.flatMap(({ id: entryId, lines }) =>
      lines.map(({ account, minor }) => ({ societyId, entryId, account, minor, holdingId: holdingOf(account) })),
    ),
  });
  return made.map(({ id }) => id);
}

/** The holding whose account it is; null where it is another's. */
export function holdingOf(account: Account): string | null {
  return accountKind(account) === 'holding' ? account.slice('holding:'.length) : null;
}

export type LedgerFilter = {
  readonly from?: CalendarDate | null | undefined;
  readonly to?: CalendarDate | null | undefined;
  readonly account?: Account | null | undefined;
  readonly kind?: EntryKind | null | undefined;
  readonly deliveryIds?: readonly string[];
};

function whereOf({ societyId }: Scope, { from, to, account, kind, deliveryIds }: LedgerFilter) {
  return {
    societyId,
    on: { ...(from ? { gte: toDbDay(from) } : {}), ...(to ? { lte: toDbDay(to) } : {}) },
    ...(account ? { lines: { some: { account } } } : {}),
    ...(kind ? { kind } : {}),
    ...(deliveryIds ? { deliveryId: { in: [...deliveryIds] } } : {}),
  } satisfies Prisma.LedgerEntryWhereInput;
}

/** Entries of the ledger by day, the newest first, each with all of its lines. */
export async function entriesOf(
  db: Db,
  scope: Scope,
  filter: LedgerFilter,
  part?: { readonly skip: number; readonly take: number },
): Promise<LedgerRecord[]> {
  const rows = await db.ledgerEntry.findMany({
    where: whereOf(scope, filter),
    include: withLines,
    orderBy: [{ on: 'desc' }, { at: 'desc' }, { id: 'desc' }],
    ...part,
  });
  return rows.map(toRecord);
}

/** How many entries there are. */
export function countEntries(db: Db, scope: Scope, filter: LedgerFilter): Promise<number> {
  return db.ledgerEntry.count({ where: whereOf(scope, filter) });
}

/** One entry, or null. */
export async function entryById(db: Db, scope: Scope, id: string): Promise<LedgerRecord | null> {
  const row = await db.ledgerEntry.findFirst({ where: { id, societyId: scope.societyId }, include: withLines });
  return row && toRecord(row);
}

/** One entry, locked until the transaction ends, so that of two who take it back at once one finds it taken back. */
export async function lockEntry(tx: Tx, scope: Scope, id: string): Promise<LedgerRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "LedgerEntry"
    WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  return entryById(tx, scope, id);
}

/** The entries of deliveries that stand: neither taken back nor taking back. Lock a delivery before changing its own. */
export async function standingOf(db: Db, scope: Scope, deliveryIds: readonly string[]): Promise<LedgerRecord[]> {
  const entries = await entriesOf(db, scope, { deliveryIds });
  return entries.filter(({ kind, reversedBy }) => kind !== 'correction' && reversedBy === null);
}
