import 'server-only';
import { bookingOfHolding, type BookingRecord, withdrawBooking as writeWithdrawn } from '@/lib/data/booking';
import type { HoldingOnDay } from '@/lib/data/holding';
import { othersOf } from '@/lib/domain/policy/holding';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { bookInput, withdrawInput } from '@/lib/schemas/deliveries/delivery';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';
import { openBookable } from './open-bookable';
import { needsForDelivery } from './book-loads';
import { checkAsked, checkBeds, enterBooking } from './enter-booking';
import { takeStep } from './open-delivery';
import { reshare } from './share-out';
import { tellMoved } from './tell-moved';

/**
 * Ask after booking has closed: for what is left over once all who were in time have theirs, in the order of coming. Whoever
 * asks for more or less later keeps their place. Where the heap is shared out already, the queue is run again: only its tail,
 * where the late stand, can change.
 */
export const bookLate = mutation({
  name: 'book-late',
  allow: canEnter,
  input: bookInput,
  write: async (context, { deliveryId, holdingId, asked, beds }) => {
    const { tx, scope, now } = context;
    const delivery = await takeStep(context, deliveryId, 'book-late');
    const holding = await openBookable(context, holdingId);
    const before = await bookingOfHolding(tx, scope, deliveryId, holdingId);
    const stands = before && !before.withdrawn ? before : null;
    if (stands && !stands.lateAt) refuse('booked-in-time');
    checkAsked(delivery, asked);
    const share = stands?.share ?? 0;
    if (asked < share) refuse('late-below-share', { field: 'asked', numbers: { share } });
    const need = (await needsForDelivery(context, delivery, [holding])).get(holdingId);
    if (!need) throw new NotFound();
    checkBeds(need, beds);
    const onPaper = canRunSociety(scope) && !holding.memberIds.includes(scope.memberId);
    const lateAt = stands?.lateAt ?? now;
    const bookingId = await enterBooking(context, { deliveryId, holding, need, before, asked, beds, onPaper, lateAt });
    if (delivery.state === 'shared' || delivery.state === 'collecting') {
      const moved = await reshare(context, delivery, delivery.heapLoads ?? 0);
      const others = moved.filter((one) => one.holdingId !== holdingId);
      await tellMoved(context, delivery, others);
    }
    const given = (await bookingOfHolding(tx, scope, deliveryId, holdingId))?.share ?? null;
    await tellOthers(context, holding, `Your holding is on the waiting list of “${delivery.name}” for ${asked}.`);
    return { bookingId, asked, share: given };
  },
});

/** Leave the waiting list, as long as nothing was shared to it; a share is given up at the heap instead. */
export const leaveWaitingList = mutation({
  name: 'leave-waiting-list',
  allow: canEnter,
  input: withdrawInput,
  write: async (context, { deliveryId, holdingId }) => {
    const { tx, scope, now, note } = context;
    const delivery = await takeStep(context, deliveryId, 'book-late');
    const holding = await openBookable(context, holdingId);
    const booking = await waitingBooking(context, deliveryId, holdingId);
    if (booking.share) refuse('late-has-share', { numbers: { share: booking.share } });
    await writeWithdrawn(tx, scope, booking.id, now);
    const { id: thingId, asked } = booking;
    note({ verb: 'withdrawn', thing: 'booking', thingId, forHoldingId: holdingId, before: { asked, late: true } });
    await tellOthers(context, holding, `Your holding is off the waiting list of “${delivery.name}”.`);
    return { holdingId };
  },
});

async function waitingBooking(
  { tx, scope }: WriteContext,
  deliveryId: string,
  holdingId: string,
): Promise<BookingRecord> {
  const booking = await bookingOfHolding(tx, scope, deliveryId, holdingId);
  if (!booking || booking.withdrawn || !booking.lateAt) throw new NotFound();
  return booking;
}

async function tellOthers(context: WriteContext, holding: HoldingOnDay, body: string): Promise<void> {
  const { memberId, memberName } = context.scope;
  await tell(context, othersOf(holding, memberId), 'a waiting list', `${body} ${memberName} entered it.`);
}
