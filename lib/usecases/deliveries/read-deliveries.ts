import 'server-only';
import { z } from 'zod';
import {
  bookingOfHolding,
  bookingTotals,
  type BookingRecord,
  bookingsOf,
  bookingsOfHoldings,
} from '@/lib/data/booking';
import { deliveriesOf, type DeliveryRecord, unloadersOf } from '@/lib/data/delivery';
import { dropPointName } from '@/lib/data/drop-point';
import { comingTogether } from '@/lib/data/delivery-together';
import { type HoldingOnDay, holdingsOfMember, holdingsOn } from '@/lib/data/holding';
import { memberById, membersOn } from '@/lib/data/member';
import { settingsOn } from '@/lib/data/setting';
import { mayTake } from '@/lib/domain/delivery/steps';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canBook } from '@/lib/domain/policy/holding';
import { canReadSeasonPaper } from '@/lib/domain/policy/season-paper';
import { canEnter, canRunSociety, canTickOffForOthers } from '@/lib/domain/policy/standing';
import { query, type ReadContext } from '../operation';
import { needsForDelivery } from './book-loads';
import { standingAsking } from './book-standing';
import { placesOfLate } from './claims';
import { foundDelivery, oneDelivery, titled } from './found-delivery';

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
  input: oneDelivery,
  read: async (context, { deliveryId }) => {
    const { db, scope, today } = context;
    const delivery = await foundDelivery(context, deliveryId);
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

/** The secretary's and the gate helper's sheet: every holding, its booking, what it needs, and how it stands. */
export const readGateList = query({
  name: 'read-gate-list',
  allow: canTickOffForOthers,
  input: oneDelivery,
  read: async (context, { deliveryId }) => {
    const { db, scope, today } = context;
    const delivery = await foundDelivery(context, deliveryId);
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
