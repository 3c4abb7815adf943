import 'server-only';
import { z } from 'zod';
import {
  bookingOfHolding,
  bookingTotals,
  type BookingRecord,
  bookingsOf,
  bookingsOfHoldings,
} from '@/lib/data/booking';
import { creditedMaterials, creditsOf } from '@/lib/data/credit';
import { deliveriesOf, deliveryById, type DeliveryRecord, shareOutRecordOf, unloadersOf } from '@/lib/data/delivery';
import { dropPointName } from '@/lib/data/drop-point';
import { comingTogether } from '@/lib/data/delivery-together';
import { byNumber, type HoldingOnDay, holdingsOfMember, holdingsOn } from '@/lib/data/holding';
import { memberById, membersOn } from '@/lib/data/member';
import { settingsOn } from '@/lib/data/setting';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { mayTake } from '@/lib/domain/delivery/steps';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canBook } from '@/lib/domain/policy/holding';
import { canReadSeasonPaper } from '@/lib/domain/policy/season-paper';
import { canEnter, canRunSociety, canTickOffForOthers } from '@/lib/domain/policy/standing';
import { canonicalBookings } from '@/lib/domain/sharing/lot';
import { type Place, queueOf } from '@/lib/domain/sharing/queue';
import { shareOut } from '@/lib/domain/sharing/share-out';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { needsForDelivery } from './book-loads';
import { standingAsking } from './book-standing';
import { asRecord, frozenClaims, placesOfLate } from './claims';

const one = z.object({ deliveryId: z.uuid() });

async function found({ db, scope, now }: ReadContext, deliveryId: string): Promise<DeliveryRecord> {
  const delivery = await deliveryById(db, scope, deliveryId, now);
  if (!delivery || !canSeeDelivery(scope, delivery)) throw new NotFound();
  return delivery;
}

function titled(delivery: DeliveryRecord) {
  return { ...delivery, material: materialOf(delivery.materialKey)?.name ?? delivery.materialKey };
}

/** The society's deliveries, and what one's own holdings have on each. */
export const listDeliveries = query({
  name: 'list-deliveries',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, now, today }) => {
    const mine = await holdingsOfMember(db, scope, scope.memberId, today);
    const deliveries = (await deliveriesOf(db, scope, now)).filter((delivery) => canSeeDelivery(scope, delivery));
    const bookings = await bookingsOfHoldings(
      db,
      scope,
      mine.map(({ id }) => id),
    );
    const rows = deliveries.map((delivery) => ({
      ...titled(delivery),
      mine: bookings.get(delivery.id) ?? [],
      comesWith: deliveries
        .filter(({ id, togetherId }) => togetherId !== null && togetherId === delivery.togetherId && id !== delivery.id)
        .map(({ name }) => name),
    }));
    const { seasonPaperFor } = await settingsOn(db, scope, today);
    const readsSeason = canReadSeasonPaper(scope, seasonPaperFor);
    return { deliveries: rows, timeZone: scope.timeZone, today, readsSeason };
  },
});

// What comes on the same lorry and is there for the viewer.
async function withIt({ db, scope, now }: ReadContext, { id, togetherId }: DeliveryRecord) {
  if (togetherId === null) return [];
  const group = await comingTogether(db, scope, id, now);
  return group.filter((other) => other.id !== id && canSeeDelivery(scope, other));
}

// A delivery, and how holdings stand with it.
async function standingOn(context: ReadContext, delivery: DeliveryRecord, holdings: readonly HoldingOnDay[]) {
  const { db, scope, today } = context;
  const [needs, totals, bookings] = await Promise.all([
    needsForDelivery({ tx: db, scope, today }, delivery, holdings),
    bookingTotals(db, scope, delivery.id),
    Promise.all(holdings.map(({ id }) => bookingOfHolding(db, scope, delivery.id, id))),
  ]);
  const claims = holdings.map((holding) => ({
    holding,
    mayBook: canBook(scope, holding),
    need: needs.get(holding.id) ?? null,
    booking: bookings.find((one) => one?.holdingId === holding.id && !one.withdrawn) ?? null,
  }));
  const isOn = claims.some(({ booking }) => booking?.lateAt);
  return { delivery: titled(delivery), totals, claims, waiting: await waitingOn(context, delivery, isOn) };
}

/** A delivery as a member sees it: its facts, what their ground needs of it, their booking or share. */
export const readDelivery = query({
  name: 'read-delivery',
  allow: canEnter,
  input: one,
  read: async (context, { deliveryId }) => {
    const { db, scope, today } = context;
    const delivery = await found(context, deliveryId);
    const mine = (await holdingsOfMember(db, scope, scope.memberId, today)).filter(({ plots }) => plots.length);
    const also = (await withIt(context, delivery)).map((other) => standingOn(context, other, mine));
    const keyHolder = delivery.keyHolderId ? await memberById(db, scope, delivery.keyHolderId, today) : null;
    const unloaders = await unloadersOf(db, scope, deliveryId);
    const tippedAt = delivery.dropPointId ? await dropPointName(db, scope, delivery.dropPointId) : null;
    return {
      ...(await standingOn(context, delivery, mine)),
      also: await Promise.all(also),
      tippedAt,
      timeZone: scope.timeZone,
      units: scope.units,
      today,
      keyHolder: keyHolder?.name ?? null,
      unloaders: unloaders.map(({ name }) => name),
      iUnload: unloaders.some(({ id }) => id === scope.memberId),
      runs: canRunSociety(scope),
      ticks: canTickOffForOthers(scope),
    };
  },
});

/** Who stands on the waiting list, in the order of coming; read only where the viewer does, for their place on it. */
async function waitingOn(
  { db, scope }: ReadContext,
  { id, state }: DeliveryRecord,
  isOn: boolean,
): Promise<{ readonly mayJoin: boolean; readonly bookingIds: readonly string[] }> {
  const places = isOn ? placesOfLate(await bookingsOf(db, scope, id)) : new Map<string, number>();
  const bookingIds = [...places].sort(([, one], [, other]) => one - other).map(([bookingId]) => bookingId);
  return { mayJoin: mayTake('book-late', state), bookingIds };
}

/** One line of the shares: whose it is, what was asked, needed and given, and why. */
export type ShareLine = {
  readonly bookingId: string;
  readonly holding: HoldingOnDay;
  readonly asked: number;
  readonly need: number;
  readonly share: number;
  readonly dueMillionths: number;
  readonly creditBeforeMillionths: number;
  readonly creditAfterMillionths: number;
  readonly reason: ReturnType<typeof shareOut>['shares'][number]['reason'];
  readonly collectedLoads: number;
  readonly beyondLoads: number;
  readonly gaveUp: boolean;
  /** Its place on the waiting list, from 0; null for who was in time. */
  readonly late: number | null;
};

/** The whole share-out, provisional or confirmed: the queue, the lot, every share and credit. Only once the lot is revealed. */
export const readQueue = query({
  name: 'read-queue',
  allow: canEnter,
  input: one,
  read: async (context, { deliveryId }) => {
    const { db, scope, today } = context;
    const delivery = await found(context, deliveryId);
    const { timeZone } = scope;
    if (!delivery.lot?.bytesHex) return { delivery: titled(delivery), timeZone, today, result: null };
    const bookings = await bookingsOf(db, scope, deliveryId);
    const record = asRecord(await shareOutRecordOf(db, scope, deliveryId));
    const { claims, frozen, seed } = await frozenClaims(db, scope, delivery, bookings, record);
    const loads = delivery.heapLoads ?? delivery.expectedLoads;
    const result = shareOut({ loads, claims, lotSeed: seed });
    const holdings = await holdingsById(context, bookings);
    const byId = new Map(bookings.map((booking) => [booking.id, booking]));
    const late = placesOfLate(bookings);
    const credits = new Map(claims.map(({ id, creditMillionths }) => [id, creditMillionths]));
    const lines = result.shares.flatMap((share): ShareLine[] => {
      const booking = byId.get(share.id);
      const holding = booking && holdings.get(booking.holdingId);
      if (!booking || !holding) return [];
      const { asked, needLoads: need, collectedLoads, beyondLoads, gaveUp } = booking;
      return [
        {
          ...share,
          bookingId: share.id,
          holding,
          asked,
          need,
          collectedLoads,
          beyondLoads,
          gaveUp,
          creditBeforeMillionths: credits.get(share.id) ?? 0,
          late: late.get(share.id) ?? null,
        },
      ];
    });
    const places: Place[] = queueOf(
      claims.map(({ collected: _, ...claim }) => claim),
      seed,
      Math.min(loads, 2000),
    );
    return {
      delivery: titled(delivery),
      timeZone,
      today,
      mine: (await holdingsOfMember(db, scope, scope.memberId, today)).map(({ id }) => id),
      result: {
        lines: lines.toSorted((a, b) => byNumber(a.holding.plots[0]?.number ?? '', b.holding.plots[0]?.number ?? '')),
        places,
        ended: result.ended,
        lotOrder: result.lotOrder,
        method: result.method,
        seed,
        loads,
        provisional: record === null,
        canonical: canonicalBookings(deliveryId, frozen),
      },
    };
  },
});

async function holdingsById(
  { db, scope, today }: ReadContext,
  bookings: readonly BookingRecord[],
): Promise<ReadonlyMap<string, HoldingOnDay>> {
  const booked = new Set(bookings.map(({ holdingId }) => holdingId));
  return new Map(
    (await holdingsOn(db, scope, today)).filter(({ id }) => booked.has(id)).map((holding) => [holding.id, holding]),
  );
}

/** The secretary's and the gate helper's sheet: every holding, its booking, what it needs, and how it stands. */
export const readGateList = query({
  name: 'read-gate-list',
  allow: canTickOffForOthers,
  input: one,
  read: async (context, { deliveryId }) => {
    const { db, scope, today } = context;
    const delivery = await found(context, deliveryId);
    const [holdings, bookings] = await Promise.all([holdingsOn(db, scope, today), bookingsOf(db, scope, deliveryId)]);
    const needs = await needsForDelivery({ tx: db, scope, today }, delivery, holdings);
    const byHolding = new Map(bookings.map((booking) => [booking.holdingId, booking]));
    return {
      delivery: titled(delivery),
      also: (await withIt(context, delivery)).map(({ id, name, state }) => ({ id, name, state })),
      timeZone: scope.timeZone,
      society: scope.societyName,
      today,
      runs: canRunSociety(scope),
      members: (await membersOn(db, scope, today)).filter(({ isHere }) => isHere).map(({ id, name }) => ({ id, name })),
      // Before it opens: what will then be booked without anybody doing anything.
      standing: delivery.state === 'planned' ? (await standingAsking(context, delivery)).map(({ asked }) => asked) : [],
      rows: holdings.map((holding) => ({
        holding,
        need: needs.get(holding.id)?.loads ?? 0,
        booking: forGate(byHolding.get(holding.id)),
      })),
    };
  },
});

// Which beds a claim is for, and when each was last manured, is the holders' own affair.
function forGate(booking: BookingRecord | undefined): Omit<BookingRecord, 'needReason' | 'bedIds'> | null {
  if (!booking) return null;
  const { needReason: _, bedIds: __, ...line } = booking;
  return line;
}

/** Credits by material and holding, the lapsed line, and the largest on the site. */
export const readCredits = query({
  name: 'read-credits',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const materials = await creditedMaterials(db, scope);
    const holdings = new Map((await holdingsOn(db, scope, today)).map((holding) => [holding.id, holding]));
    return Promise.all(
      materials.map(async (key) => {
        const credits = await creditsOf(db, scope, key);
        const rows = [...credits]
          .filter(([, millionths]) => millionths !== 0)
          .map(([holdingId, millionths]) => ({
            plots:
              holdings
                .get(holdingId)
                ?.plots.map(({ number }) => number)
                .join(', ') ?? 'lapsed',
            millionths,
          }));
        return { key, name: materialOf(key)?.name ?? key, rows: rows.sort((a, b) => b.millionths - a.millionths) };
      }),
    );
  },
});
