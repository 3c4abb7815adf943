import 'server-only';
import type { Booking, Prisma } from '@/generated/prisma/client';
import type { ShareReason } from '@/lib/domain/sharing/share-out';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

export type BookingRecord = {
  readonly id: string;
  readonly holdingId: string;
  readonly asked: number;
  readonly needLoads: number;
  readonly needReason: unknown;
  readonly onPaper: boolean;
  readonly withdrawn: boolean;
  /** When it came, where that was after booking had closed. */
  readonly lateAt: Date | null;
  readonly fromStanding: boolean;
  readonly bedIds: readonly string[];
  readonly creditBeforeMillionths: number | null;
  readonly share: number | null;
  readonly dueMillionths: number | null;
  readonly reason: ShareReason | null;
  readonly collectedLoads: number;
  readonly beyondLoads: number;
  readonly gaveUp: boolean;
};

function toBooking(row: Booking & { beds: { bedId: string }[] }): BookingRecord {
  const millionths = (value: bigint | null) => (value === null ? null : Number(value));
  return {
    id: row.id,
    holdingId: row.holdingId,
    asked: row.asked,
    needLoads: row.needLoads,
    needReason: row.needReason,
    onPaper: row.onPaper,
    withdrawn: row.withdrawnAt !== null,
    lateAt: row.lateAt,
    fromStanding: row.fromStanding,
    bedIds: row.beds.map(({ bedId }) => bedId),
    creditBeforeMillionths: millionths(row.creditBeforeMillionths),
    share: row.share,
    dueMillionths: millionths(row.dueMillionths),
    reason: row.reason as ShareReason | null,
    collectedLoads: row.collectedLoads,
    beyondLoads: row.beyondLoads,
    gaveUp: row.gaveUpAt !== null,
  };
}

const withBeds = { beds: { select: { bedId: true }, orderBy: { order: 'asc' } } } satisfies Prisma.BookingInclude;

/** The bookings of a delivery that stand. */
export async function bookingsOf(db: Db, scope: Scope, deliveryId: string): Promise<BookingRecord[]> {
  const rows = await db.booking.findMany({
    where: { deliveryId, societyId: scope.societyId, withdrawnAt: null },
    include: withBeds,
    orderBy: { id: 'asc' },
  });
  return rows.map(toBooking);
}

/** The ground that the bookings of a delivery were made for, by booking: each bed's plot, and what of it was due. */
export async function bookedGroundOf(
  db: Db,
  scope: Scope,
  deliveryId: string,
): Promise<ReadonlyMap<string, readonly { readonly plotId: string; readonly dueCm2: number }[]>> {
  const rows = await db.bookingBed.findMany({
    where: { societyId: scope.societyId, booking: { deliveryId, withdrawnAt: null } },
    select: { bookingId: true, dueCm2: true, bed: { select: { plotId: true } } },
  });
  const byBooking = new Map<string, { plotId: string; dueCm2: number }[]>();
  for (const { bookingId, bed, dueCm2 } of rows)
    byBooking.set(bookingId, [...(byBooking.get(bookingId) ?? []), { plotId: bed.plotId, dueCm2: Number(dueCm2) }]);
  return byBooking;
}

/** How many bookings of a delivery stand, and what they ask for and need together: those in time, and those on the waiting list. */
export async function bookingTotals(db: Db, scope: Scope, deliveryId: string) {
  const of = async (lateAt: null | { not: null }) => {
    const where = { deliveryId, societyId: scope.societyId, withdrawnAt: null, lateAt };
    const { _count, _sum } = await db.booking.aggregate({
      where,
      _count: true,
      _sum: { asked: true, needLoads: true },
    });
    return { claims: _count, asked: _sum.asked ?? 0, need: _sum.needLoads ?? 0 };
  };
  return { ...(await of(null)), late: await of({ not: null }) };
}

/** The loads that the bookings of some deliveries ask for, by delivery; one that nobody has booked on is left out. */
export async function askedOf(db: Db, scope: Scope, deliveryIds: readonly string[]): Promise<Map<string, number>> {
  const rows = await db.booking.groupBy({
    by: ['deliveryId'],
    where: { deliveryId: { in: [...deliveryIds] }, societyId: scope.societyId, withdrawnAt: null },
    _sum: { asked: true },
  });
  return new Map(rows.map(({ deliveryId, _sum }) => [deliveryId, _sum.asked ?? 0]));
}

/** A holding's booking on a delivery, withdrawn or not, or null. */
export async function bookingOfHolding(
  db: Db,
  scope: Scope,
  deliveryId: string,
  holdingId: string,
): Promise<BookingRecord | null> {
  const row = await db.booking.findFirst({
    where: { deliveryId, holdingId, societyId: scope.societyId },
    include: withBeds,
  });
  return row && toBooking(row);
}

/** What holdings have on all deliveries and stands, by delivery. */
export async function bookingsOfHoldings(
  db: Db,
  scope: Scope,
  holdingIds: readonly string[],
): Promise<ReadonlyMap<string, readonly BookingRecord[]>> {
  const rows = await db.booking.findMany({
    where: { holdingId: { in: [...holdingIds] }, societyId: scope.societyId, withdrawnAt: null },
    include: withBeds,
    orderBy: { id: 'asc' },
  });
  const byDelivery = new Map<string, BookingRecord[]>();
  for (const row of rows) byDelivery.set(row.deliveryId, [...(byDelivery.get(row.deliveryId) ?? []), toBooking(row)]);
  return byDelivery;
}

/** One booking of a delivery that stands, or null. */
export async function bookingById(db: Db, scope: Scope, deliveryId: string, id: string): Promise<BookingRecord | null> {
  const row = await db.booking.findFirst({
    where: { id, deliveryId, societyId: scope.societyId, withdrawnAt: null },
    include: withBeds,
  });
  return row && toBooking(row);
}

export type NewBooking = {
  readonly holdingId: string;
  readonly asked: number;
  readonly needLoads: number;
  readonly needReason: Prisma.InputJsonValue;
  readonly onPaper: boolean;
  readonly lateAt?: Date | null;
  readonly fromStanding?: boolean;
  readonly beds: readonly { readonly bedId: string; readonly dueCm2: number }[];
};

/** Book for a holding, or change its booking: there is one for each delivery and holding, whoever sends it first. */
export async function saveBooking(
  tx: Tx,
  scope: Scope,
  deliveryId: string,
  booking: NewBooking,
  at: Date,
): Promise<string> {
  const { societyId, memberId } = scope;
  const { holdingId, beds, lateAt = null, fromStanding = false, ...asked } = booking;
  const data = { ...asked, lateAt, fromStanding, bookedByMemberId: memberId, changedAt: at, withdrawnAt: null };
  const { id } = await tx.booking.upsert({
    where: { deliveryId_holdingId: { deliveryId, holdingId } },
    create: { ...data, societyId, deliveryId, holdingId },
    update: data,
    select: { id: true },
  });
  await tx.bookingBed.deleteMany({ where: { bookingId: id, societyId } });
  await tx.bookingBed.createMany({ data: beds.map((bed, order) => ({ ...bed, order, societyId, bookingId: id })) });
  return id;
}

/** Withdraw a booking; the row stays. */
export async function withdrawBooking(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  await tx.booking.updateMany({ where: { id, societyId: scope.societyId }, data: { withdrawnAt: at, changedAt: at } });
}

export type WrittenShare = {
  readonly id: string;
  readonly share: number;
  readonly dueMillionths: number;
  readonly reason: ShareReason;
  readonly creditBeforeMillionths: number;
};

/** Write shares. Those that fall come first: the heap may not seem overshared for a moment. */
export async function writeShares(
  tx: Tx,
  scope: Scope,
  shares: readonly WrittenShare[],
  before: ReadonlyMap<string, number>,
): Promise<void> {
  const rise = ({ id, share }: WrittenShare) => share - (before.get(id) ?? 0);
  for (const { id, ...data } of shares.toSorted((a, b) => rise(a) - rise(b)))
    await tx.booking.updateMany({
      where: { id, societyId: scope.societyId },
      data: { ...data, reason: data.reason as Prisma.InputJsonValue },
    });
}

/** A share given up: what is asked falls to what was collected. */
export async function giveUpRest(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  await tx.$executeRaw`UPDATE "Booking" SET "share" = LEAST("share", "collectedLoads"), "asked" = LEAST("asked", "collectedLoads"), "gaveUpAt" = ${at}
    WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid`;
}

/** Tick off loads. Triggers count them on the booking and the heap; the database refuses what would exceed either. */
export async function createCollection(
  tx: Tx,
  scope: Scope,
  row: {
    deliveryId: string;
    bookingId: string;
    loads: number;
    beyond: boolean;
    reason: string | null;
    reversesId: string | null;
    at: Date;
  },
): Promise<string> {
  const { id } = await tx.collection.create({
    data: { ...row, societyId: scope.societyId, byMemberId: scope.memberId },
    select: { id: true },
  });
  return id;
}

/** The newest tick of a booking that was not undone, or null. */
export async function lastTick(db: Db, scope: Scope, bookingId: string) {
  const rows = await db.collection.findMany({
    where: { bookingId, societyId: scope.societyId },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  });
  const undone = new Set(rows.map(({ reversesId }) => reversesId));
  return rows.find(({ id, loads }) => loads > 0 && !undone.has(id)) ?? null;
}

/** The newest tick of each booking of a delivery that was not undone, by booking. */
export async function lastTicks(db: Db, scope: Scope, deliveryId: string) {
  const rows = await db.collection.findMany({
    where: { deliveryId, societyId: scope.societyId },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    select: { id: true, bookingId: true, loads: true, beyond: true, at: true, reversesId: true },
  });
  const undone = new Set(rows.map(({ reversesId }) => reversesId));
  const stand = rows.filter(({ id, loads }) => loads > 0 && !undone.has(id));
  return new Map(stand.map((tick) => [tick.bookingId, tick]));
}

/** The beds a booking named, in the holder's order, with their ground. */
export async function bookedBeds(db: Db, scope: Scope, bookingId: string) {
  const rows = await db.bookingBed.findMany({
    where: { bookingId, societyId: scope.societyId },
    include: { bed: true },
    orderBy: { order: 'asc' },
  });
  return rows.map(({ bed, dueCm2 }) => ({
    bedId: bed.id,
    frameId: bed.frameId,
    dueCm2: Number(dueCm2),
    footprint: { xCm: bed.xCm, yCm: bed.yCm, widthCm: bed.widthCm, lengthCm: bed.lengthCm },
  }));
}
