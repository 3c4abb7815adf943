import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import { type SeedOrderState, seedOrderStateAt } from '@/lib/domain/seed/order-steps';
import type { SeedUnit } from '@/lib/domain/seed/seed-unit';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

export type SeedPackRecord = {
  readonly id: string;
  readonly amount: number;
  readonly priceMinor: number;
  readonly ordered: number | null;
  readonly arrived: number | null;
};

export type SeedItemRecord = {
  readonly id: string;
  readonly cropKey: string;
  readonly variety: string;
  readonly unit: SeedUnit;
  readonly packs: readonly SeedPackRecord[];
};

export type SeedOrderRecord = {
  readonly id: string;
  readonly name: string;
  /** At the instant it was asked for: lists close by themselves. */
  readonly state: SeedOrderState;
  readonly closesAt: Date;
  readonly notes: string | null;
  readonly seller: string | null;
  readonly extraMinor: number;
  readonly orderedAt: Date | null;
  readonly arrivedAt: Date | null;
  readonly settledAt: Date | null;
  readonly entryId: string | null;
  readonly items: readonly SeedItemRecord[];
};

const standing = {
  items: {
    where: { retiredAt: null },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
    include: { packs: { where: { retiredAt: null }, orderBy: [{ amount: 'asc' }, { id: 'asc' }] } },
  },
} satisfies Prisma.SeedOrderInclude;

type Row = Prisma.SeedOrderGetPayload<{ include: typeof standing }>;

function toOrder(row: Row, now: Date): SeedOrderRecord {
  const { id, name, closesAt, notes, seller, extraMinor, orderedAt, arrivedAt, settledAt, entryId, items } = row;
  return {
    ...{ id, name, closesAt, notes, seller, extraMinor, orderedAt, arrivedAt, settledAt, entryId },
    state: seedOrderStateAt(row.state as SeedOrderState, closesAt.getTime(), now.getTime()),
    items: items.map(({ id: itemId, cropKey, variety, unit, packs }) => ({
      ...{ id: itemId, cropKey, variety, unit: unit as SeedUnit },
      packs: packs.map(({ id: packId, amount, priceMinor, ordered, arrived }) => ({
        ...{ id: packId, amount, priceMinor, ordered, arrived },
      })),
    })),
  };
}

/** The society's orders of seed, the newest first. */
export async function seedOrdersOf(db: Db, { societyId }: Scope, now: Date): Promise<SeedOrderRecord[]> {
  const rows = await db.seedOrder.findMany({ where: { societyId }, include: standing, orderBy: { createdAt: 'desc' } });
  return rows.map((row) => toOrder(row, now));
}

/** One order with its items and packs, or null. */
export async function seedOrderById(db: Db, { societyId }: Scope, id: string, now: Date) {
  const row = await db.seedOrder.findFirst({ where: { id, societyId }, include: standing });
  return row && toOrder(row, now);
}

/**
 * One order, locked until the transaction ends: lists are put down sharing the lock, and every step takes it alone, so that what is
 * ordered is what was put down.
 */
export async function lockSeedOrder(tx: Tx, scope: Scope, id: string, now: Date, how: 'share' | 'alone') {
  const { societyId } = scope;
  if (how === 'share')
    await tx.$queryRaw`SELECT 1 FROM "SeedOrder" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR SHARE`;
  else
    await tx.$queryRaw`SELECT 1 FROM "SeedOrder" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR UPDATE`;
  return seedOrderById(tx, scope, id, now);
}

export type SeedOrderFacts = Pick<SeedOrderRecord, 'name' | 'closesAt' | 'notes' | 'seller'>;

export async function createSeedOrder(tx: Tx, { societyId, memberId }: Scope, facts: SeedOrderFacts): Promise<string> {
  const data = { ...facts, societyId, byMemberId: memberId };
  return (await tx.seedOrder.create({ data, select: { id: true } })).id;
}

type Moved = Partial<SeedOrderFacts> & {
  readonly state?: SeedOrderState;
  readonly extraMinor?: number;
  readonly orderedAt?: Date;
  readonly arrivedAt?: Date;
  readonly settledAt?: Date | null;
  readonly calledOffAt?: Date;
  readonly entryId?: string | null;
};

/** Change what an order says, or move it to another state. */
export async function moveSeedOrder(tx: Tx, { societyId }: Scope, id: string, data: Moved): Promise<void> {
  await tx.seedOrder.updateMany({ where: { id, societyId }, data });
}

export type SeedItemFacts = Pick<SeedItemRecord, 'cropKey' | 'variety' | 'unit'> & {
  readonly packs: readonly Pick<SeedPackRecord, 'amount' | 'priceMinor'>[];
};

/** Add what can be ordered, in the packs it is sold in. */
export async function createSeedItem(
  tx: Tx,
  { societyId }: Scope,
  orderId: string,
  { packs, ...facts }: SeedItemFacts,
): Promise<string> {
  const { id } = await tx.seedItem.create({ data: { ...facts, societyId, orderId }, select: { id: true } });
  await tx.seedPack.createMany({ data: packs.map((pack) => ({ ...pack, societyId, itemId: id })) });
  return id;
}

/** Take an item off the list. */
export async function retireSeedItem(tx: Tx, { societyId }: Scope, id: string, retiredAt: Date): Promise<void> {
  await tx.seedItem.updateMany({ where: { id, societyId }, data: { retiredAt } });
}

type PackChange = {
  readonly id: string;
  readonly ordered?: number;
  readonly arrived?: number;
  readonly priceMinor?: number;
};

/** Write on packs how many were ordered, or came, and at what price. */
export async function writePacks(tx: Tx, { societyId }: Scope, changes: readonly PackChange[]): Promise<void> {
  for (const { id, ...data } of changes) await tx.seedPack.updateMany({ where: { id, societyId }, data });
}

/** The order that an item stands on, or null where it is off the list. */
export async function orderOfItem(db: Db, { societyId }: Scope, itemId: string): Promise<string | null> {
  const row = await db.seedItem.findFirst({
    where: { id: itemId, societyId, retiredAt: null },
    select: { orderId: true },
  });
  return row?.orderId ?? null;
}

/** The order that an entry of the ledger charged, or null. */
export async function seedOrderOfEntry(db: Db, { societyId }: Scope, entryId: string): Promise<string | null> {
  const row = await db.seedOrder.findFirst({ where: { entryId, societyId }, select: { id: true } });
  return row?.id ?? null;
}
