import 'server-only';
import type { Delivery, Prisma } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type DeliveryState, effectiveState } from '@/lib/domain/delivery/steps';
import type { AmountUnit } from '@/lib/domain/quantity/load';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A delivery as members may see it. The lot's bytes are never in it before they are revealed. */
export type DeliveryRecord = {
  readonly id: string;
  readonly siteId: string;
  readonly name: string;
  readonly state: DeliveryState;
  readonly materialKey: string;
  readonly ageMonths: number | null;
  readonly supplier: string | null;
  readonly supplierId: string | null;
  /** Deliveries that come with one lorry share it; each is its own heap. */
  readonly togetherId: string | null;
  readonly loadUnit: LoadUnit;
  readonly baleMassG: number | null;
  readonly amount: { readonly thousandths: number; readonly unit: AmountUnit };
  readonly densityGPerL: number;
  readonly barrowLitres: number;
  readonly rateGPerM2: number;
  readonly intervalYears: number;
  readonly cultivableSharePercent: number;
  readonly expectedLoads: number;
  readonly capLoads: number | null;
  /** In words; and the drop point of the site where it is tipped, if one is named. */
  readonly dropPoint: string | null;
  readonly dropPointId: string | null;
  readonly arrivesOn: CalendarDate;
  readonly collectByOn: CalendarDate;
  readonly closesAt: Date;
  readonly keyHolderId: string | null;
  readonly gateNote: string | null;
  readonly unloadersWanted: number;
  readonly priceMinor: number;
  /** What is given for it beside money, or in its place. */
  readonly thanks: string | null;
  readonly lot: { readonly commitment: string; readonly bytesHex: string | null } | null;
  readonly heapLoads: number | null;
  readonly sharedLoads: number;
  readonly collectedLoads: number;
  /** Held from being shared out, since when and why; null while it is not. */
  readonly held: { readonly since: Date; readonly reason: string } | null;
};

function toDelivery(row: Delivery, now: Date): DeliveryRecord {
  const {
    lotBytesHex,
    lotCommitment,
    lotRevealedAt,
    amountThousandths,
    amountUnit,
    arrivesOn,
    collectByOn,
    state,
    heldAt,
    heldReason,
    ...rest
  } = row;
  return {
    ...rest,
    loadUnit: row.loadUnit as LoadUnit,
    state: effectiveState(state, row.closesAt.getTime(), now.getTime()),
    amount: { thousandths: Number(amountThousandths), unit: amountUnit as AmountUnit },
    arrivesOn: fromDbDay(arrivesOn),
    collectByOn: fromDbDay(collectByOn),
    lot: lotCommitment ? { commitment: lotCommitment, bytesHex: lotRevealedAt ? lotBytesHex : null } : null,
    held: heldAt && { since: heldAt, reason: heldReason ?? '' },
  };
}

/** The society's deliveries, newest first. */
export async function deliveriesOf(db: Db, scope: Scope, now: Date): Promise<DeliveryRecord[]> {
  const rows = await db.delivery.findMany({ where: { societyId: scope.societyId }, orderBy: { arrivesOn: 'desc' } });
  return rows.map((row) => toDelivery(row, now));
}

/** One delivery, or null. */
export async function deliveryById(db: Db, scope: Scope, id: string, now: Date): Promise<DeliveryRecord | null> {
  const row = await db.delivery.findFirst({ where: { id, societyId: scope.societyId } });
  return row && toDelivery(row, now);
}

/**
 * One delivery, locked until the transaction ends. Booking shares the lock with other bookings; whatever changes the
 * delivery itself takes it alone, so that no booking slips in behind a closing.
 */
export async function lockDelivery(
  tx: Tx,
  scope: Scope,
  id: string,
  now: Date,
  how: 'share' | 'alone',
): Promise<DeliveryRecord | null> {
  const { societyId } = scope;
  if (how === 'share')
    await tx.$queryRaw`SELECT 1 FROM "Delivery" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR SHARE`;
  else
    await tx.$queryRaw`SELECT 1 FROM "Delivery" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR UPDATE`;
  return deliveryById(tx, scope, id, now);
}

export type DeliveryFacts = Omit<
  DeliveryRecord,
  'id' | 'togetherId' | 'state' | 'lot' | 'heapLoads' | 'sharedLoads' | 'collectedLoads' | 'held'
>;

function toRow({ amount, arrivesOn, collectByOn, ...facts }: DeliveryFacts) {
  return {
    ...facts,
    amountThousandths: amount.thousandths,
    amountUnit: amount.unit,
    arrivesOn: toDbDay(arrivesOn),
    collectByOn: toDbDay(collectByOn),
  };
}

/** Plan a delivery. */
export async function createDelivery(tx: Tx, scope: Scope, facts: DeliveryFacts): Promise<string> {
  const { id } = await tx.delivery.create({
    data: { ...toRow(facts), societyId: scope.societyId },
    select: { id: true },
  });
  return id;
}

/** Change what was planned. */
export async function changeDelivery(tx: Tx, scope: Scope, id: string, facts: DeliveryFacts): Promise<void> {
  await tx.delivery.updateMany({ where: { id, societyId: scope.societyId }, data: toRow(facts) });
}

type StepData = Partial<
  Pick<
    Delivery,
    'state' | 'closesAt' | 'closedAt' | 'heapLoads' | 'confirmedAt' | 'settledAt' | 'lotRevealedAt' | 'priceMinor'
  >
> & { shareOutRecord?: Prisma.InputJsonValue };

/** Write down a step that a delivery took. */
export async function moveDelivery(tx: Tx, scope: Scope, id: string, data: StepData): Promise<void> {
  await tx.delivery.updateMany({ where: { id, societyId: scope.societyId }, data });
}

/** Put a delivery off. */
export async function postponeTo(
  tx: Tx,
  scope: Scope,
  id: string,
  days: { arrivesOn: CalendarDate; collectByOn: CalendarDate; closesAt: Date },
): Promise<void> {
  const data = { arrivesOn: toDbDay(days.arrivesOn), collectByOn: toDbDay(days.collectByOn), closesAt: days.closesAt };
  await tx.delivery.updateMany({ where: { id, societyId: scope.societyId }, data });
}

/** Say at which drop point of its site a delivery is tipped. */
export async function tipDeliveryAt(tx: Tx, scope: Scope, id: string, dropPointId: string): Promise<void> {
  await tx.delivery.updateMany({ where: { id, societyId: scope.societyId }, data: { dropPointId } });
}

/** The name of a delivery that is still to be tipped at a drop point, or null where none is. */
export async function deliveryComingTo(db: Db, scope: Scope, dropPointId: string): Promise<string | null> {
  const row = await db.delivery.findFirst({
    where: { societyId: scope.societyId, dropPointId, state: { in: ['planned', 'open', 'closed'] } },
    select: { name: true },
  });
  return row?.name ?? null;
}

/** Hold a delivery from being shared out, or with null release it. */
export async function setHeld(
  tx: Tx,
  scope: Scope,
  id: string,
  held: { since: Date; reason: string } | null,
): Promise<void> {
  const data = { heldAt: held?.since ?? null, heldReason: held?.reason ?? null };
  await tx.delivery.updateMany({ where: { id, societyId: scope.societyId }, data });
}

/** What a litre of it weighs, and the loads expected by that. */
export async function setDensityOf(
  tx: Tx,
  scope: Scope,
  id: string,
  data: { densityGPerL: number; expectedLoads: number },
): Promise<void> {
  await tx.delivery.updateMany({ where: { id, societyId: scope.societyId }, data });
}

/** Keep the lot's bytes, and the hash of them that is published. */
export async function keepLot(
  tx: Tx,
  scope: Scope,
  id: string,
  lot: { bytesHex: string; commitment: string },
): Promise<void> {
  const data = { state: 'open' as const, lotBytesHex: lot.bytesHex, lotCommitment: lot.commitment };
  await tx.delivery.updateMany({ where: { id, societyId: scope.societyId }, data });
}

/** The lot's bytes, for whoever computes with them on the server; never for a screen before they are revealed. */
export async function lotBytesOf(db: Db, scope: Scope, id: string): Promise<string | null> {
  const row = await db.delivery.findFirst({ where: { id, societyId: scope.societyId }, select: { lotBytesHex: true } });
  return row?.lotBytesHex ?? null;
}

/** The stored inputs and result of a confirmed share-out. */
export async function shareOutRecordOf(db: Db, scope: Scope, id: string): Promise<unknown> {
  const row = await db.delivery.findFirst({
    where: { id, societyId: scope.societyId },
    select: { shareOutRecord: true },
  });
  return row?.shareOutRecord ?? null;
}

/** What a load of a delivery is. */
export async function loadUnitOf(db: Db, scope: Scope, id: string): Promise<LoadUnit> {
  const row = await db.delivery.findFirst({ where: { id, societyId: scope.societyId }, select: { loadUnit: true } });
  return (row?.loadUnit ?? 'barrow') as LoadUnit;
}

/** Another delivery of the same material that is tipped or being collected and not settled, if any. */
export async function unsettledBefore(db: Db, scope: Scope, delivery: DeliveryRecord): Promise<string | null> {
  const row = await db.delivery.findFirst({
    where: {
      societyId: scope.societyId,
      materialKey: delivery.materialKey,
      id: { not: delivery.id },
      state: { in: ['shared', 'collecting'] },
    },
    select: { name: true },
  });
  return row?.name ?? null;
}

/** Offers to help unload. */
export async function unloadersOf(db: Db, scope: Scope, deliveryId: string) {
  const offers = await db.unloadOffer.findMany({
    where: { deliveryId, societyId: scope.societyId },
    select: { memberId: true },
  });
  const members = await db.member.findMany({
    where: { societyId: scope.societyId, id: { in: offers.map(({ memberId }) => memberId) } },
    select: { id: true, name: true },
  });
  return members;
}

/** Offer to help unload, or withdraw the offer. */
export async function setUnloadOffer(tx: Tx, scope: Scope, deliveryId: string, offers: boolean): Promise<void> {
  const { societyId, memberId } = scope;
  await tx.unloadOffer.deleteMany({ where: { societyId, deliveryId, memberId } });
  if (offers) await tx.unloadOffer.create({ data: { societyId, deliveryId, memberId } });
}
