import 'server-only';
import { bookingById, type BookingRecord, createCollection, giveUpRest, lastTick } from '@/lib/data/booking';
import { type DeliveryRecord, moveDelivery } from '@/lib/data/delivery';
import { type HoldingOnDay, holdingById } from '@/lib/data/holding';
import { canUndoTick, undoMinutes } from '@/lib/domain/policy/delivery';
import { othersOf } from '@/lib/domain/policy/holding';
import { canEnter, canRunSociety, canTickOffForOthers } from '@/lib/domain/policy/standing';
import { beyondInput, giveUpInput, tickInput, undoTickInput } from '@/lib/schemas/deliveries/delivery';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';
import { takeStep, tellBookers } from './open-delivery';
import { reshare } from './share-out';
import { tellMoved } from './tell-moved';

type AtHeap = { delivery: DeliveryRecord; booking: BookingRecord; holding: HoldingOnDay };

// A holder ticks their own, a gate helper or the secretary anybody's.
async function atHeap(context: WriteContext, deliveryId: string, bookingId: string): Promise<AtHeap> {
  const { tx, scope, today } = context;
  const delivery = await takeStep(context, deliveryId, 'tick');
  const booking = await bookingById(tx, scope, deliveryId, bookingId);
  const holding = booking && (await holdingById(tx, scope, booking.holdingId, today));
  if (!booking || !holding) throw new NotFound();
  if (!canTickOffForOthers(scope) && !holding.memberIds.includes(scope.memberId)) throw new NotFound();
  if (delivery.state === 'shared') await moveDelivery(tx, scope, deliveryId, { state: 'collecting' });
  return { delivery, booking, holding };
}

/** Tick off loads at the heap: never more than the share, never more than the heap. */
export const tickOff = mutation({
  name: 'tick-off',
  allow: canEnter,
  input: tickInput,
  write: async (context, { deliveryId, bookingId, loads }) => {
    const found = await atHeap(context, deliveryId, bookingId);
    const left = (found.booking.share ?? 0) - (found.booking.collectedLoads - found.booking.beyondLoads);
    if (loads > left) refuse('above-share', { field: 'loads', numbers: { left } });
    await collect(context, found, { loads, beyond: false, reason: null });
    // Where loads were entered beyond a share before it was fetched, only now is more gone than was shared.
    if (found.booking.collectedLoads + loads > (found.booking.share ?? 0)) await shareBeyond(context, found.delivery);
    return { left: left - loads };
  },
});

/** Enter loads that were taken beyond a share, with a reason: what really happened can always be recorded, up to the heap. */
export const enterBeyond = mutation({
  name: 'enter-beyond',
  allow: canRunSociety,
  input: beyondInput,
  write: async (context, { deliveryId, bookingId, loads, reason }) => {
    const found = await atHeap(context, deliveryId, bookingId);
    await collect(context, found, { loads, beyond: true, reason });
    await shareBeyond(context, found.delivery);
    return { loads };
  },
});

// The share becomes what was taken; what others may still have shrinks by the same queue.
async function shareBeyond(context: WriteContext, delivery: DeliveryRecord): Promise<void> {
  await reshare(context, delivery, delivery.heapLoads ?? 0);
  await tellBookers(
    context,
    delivery,
    `${delivery.name}: shares worked out again`,
    `Loads were taken beyond a share of “${delivery.name}”, and the shares were worked out again. Sign in to see yours.`,
  );
}

async function collect(
  context: WriteContext,
  found: AtHeap,
  what: { loads: number; beyond: boolean; reason: string | null },
): Promise<void> {
  const { tx, scope, now, note } = context;
  const { delivery, booking } = found;
  const left = (delivery.heapLoads ?? 0) - delivery.collectedLoads;
  if (what.loads > left) refuse('above-heap', { field: 'loads', numbers: { left } });
  const id = await createCollection(tx, scope, {
    ...what,
    deliveryId: delivery.id,
    bookingId: booking.id,
    reversesId: null,
    at: now,
  });
  note({
    verb: what.beyond ? 'taken beyond share' : 'ticked off',
    thing: 'collection',
    thingId: id,
    forHoldingId: found.holding.id,
    after: { loads: what.loads, ...(what.reason ? { reason: what.reason } : {}) },
  });
}

/** Undo the last tick of a booking, by a reversing row, within ten minutes; the secretary at any time. */
export const undoTick = mutation({
  name: 'undo-tick',
  allow: canEnter,
  input: undoTickInput,
  write: async (context, { deliveryId, bookingId }) => {
    const { tx, scope, now, note } = context;
    const found = await atHeap(context, deliveryId, bookingId);
    const tick = await lastTick(tx, scope, bookingId);
    if (!tick) refuse('nothing-to-undo');
    const ticked = { beyond: tick.beyond, atMs: tick.at.getTime() };
    if (!canUndoTick(scope, ticked, now.getTime())) refuse('too-late-to-undo', { numbers: { minutes: undoMinutes } });
    const id = await createCollection(tx, scope, {
      deliveryId,
      bookingId,
      loads: -tick.loads,
      beyond: tick.beyond,
      reason: tick.reason,
      reversesId: tick.id,
      at: now,
    });
    note({
      verb: 'tick undone',
      thing: 'collection',
      thingId: id,
      forHoldingId: found.holding.id,
      before: { loads: tick.loads },
    });
    if (tick.beyond) await reshare(context, found.delivery, found.delivery.heapLoads ?? 0);
    return { loads: tick.loads };
  },
});

/** Give up what is left of a share: the queue is run again, and the loads go to whoever comes next in it. */
export const giveUp = mutation({
  name: 'give-up-share',
  allow: canEnter,
  input: giveUpInput,
  write: async (context, { deliveryId, bookingId }) => {
    const { tx, scope, now, note } = context;
    const found = await atHeap(context, deliveryId, bookingId);
    const { booking, delivery, holding } = found;
    const left = (booking.share ?? 0) - booking.collectedLoads;
    if (left <= 0) refuse('above-share', { numbers: { left: 0 } });
    await giveUpRest(tx, scope, bookingId, now);
    await tellMoved(context, delivery, await reshare(context, delivery, delivery.heapLoads ?? 0));
    note({
      verb: 'given up',
      thing: 'booking',
      thingId: bookingId,
      forHoldingId: found.holding.id,
      before: { share: booking.share ?? 0 },
      after: { share: booking.collectedLoads },
    });
    await tell(
      context,
      othersOf(holding, scope.memberId),
      'a share given up',
      `What was left of your share of “${delivery.name}” is given up: ${left} loads.`,
    );
    return { left };
  },
});
