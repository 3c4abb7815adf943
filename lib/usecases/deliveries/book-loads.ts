import 'server-only';
import { bookingOfHolding, withdrawBooking as writeWithdrawn } from '@/lib/data/booking';
import type { Db } from '@/lib/data/db';
import { type DeliveryRecord, lockDelivery, setUnloadOffer } from '@/lib/data/delivery';
import { type HoldingOnDay, holdingsOn } from '@/lib/data/holding';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { mayTake } from '@/lib/domain/delivery/steps';
import { countOf } from './count-of';
import { bookInput, typeInInput, unloadInput, withdrawInput } from '@/lib/schemas/deliveries/delivery';
import { type HoldingNeed, needsByHolding, seasonServed } from '../ground/holding-need';
import { mutation, type WriteContext } from '../operation';
import { NotFound, type Refusal, Refused, refuse } from '../refusal';
import { checkAsked, checkBeds, enterBooking, tellOtherHolders } from './enter-booking';
import { openBookable } from './open-bookable';
import { takeStep } from './open-delivery';
import { wallIn } from '@/lib/platform/clock';

/** A delivery that takes bookings at this very instant. Bookings share the lock; closing waits for them, and they for it. */
async function openForBooking({ tx, scope, now }: WriteContext, id: string): Promise<DeliveryRecord> {
  const delivery = await lockDelivery(tx, scope, id, now, 'share');
  if (!delivery || !canSeeDelivery(scope, delivery)) throw new NotFound();
  if (delivery.state === 'planned' || delivery.state === 'called_off')
    refuse('step-not-now', { numbers: { state: delivery.state } });
  if (!mayTake('book', delivery.state))
    refuse('booking-closed', { numbers: { at: wallIn(scope.timeZone, delivery.closesAt).replace('T', ' ') } });
  return delivery;
}

/** What holdings need of a delivery, by the rules it was planned with. */
export async function needsForDelivery(
  { tx, scope, today }: Pick<WriteContext, 'scope' | 'today'> & { tx: Db },
  delivery: DeliveryRecord,
  holdings: readonly HoldingOnDay[],
): Promise<ReadonlyMap<string, HoldingNeed>> {
  const claims = holdings.map(({ id, plots }) => ({ id, plotIds: plots.map((plot) => plot.id) }));
  return needsByHolding(tx, scope, claims, {
    season: seasonServed(delivery.arrivesOn),
    day: today,
    dressing: delivery,
  });
}

/** Book loads for a holding, or change its booking, until booking closes. One claim for each holding. */
export const bookLoads = mutation({
  name: 'book-loads',
  allow: canEnter,
  input: bookInput,
  write: async (context, { deliveryId, holdingId, asked, beds }) => {
    const { tx, scope } = context;
    const delivery = await openForBooking(context, deliveryId);
    const holding = await openBookable(context, holdingId);
    checkAsked(delivery, asked);
    const need = (await needsForDelivery(context, delivery, [holding])).get(holdingId);
    if (!need) throw new NotFound();
    checkBeds(need, beds);
    const before = await bookingOfHolding(tx, scope, deliveryId, holdingId);
    const bookingId = await enterBooking(context, { deliveryId, holding, need, before, asked, beds });
    await tellOtherHolders(
      context,
      holding,
      `Your holding asks for ${countOf(asked, delivery.loadUnit)} of “${delivery.name}”.`,
    );
    return { bookingId, asked };
  },
});

/** Withdraw a booking until booking closes. */
export const withdrawBooking = mutation({
  name: 'withdraw-booking',
  allow: canEnter,
  input: withdrawInput,
  write: async (context, { deliveryId, holdingId }) => {
    const { tx, scope, now, note } = context;
    const delivery = await openForBooking(context, deliveryId);
    const holding = await openBookable(context, holdingId);
    const booking = await bookingOfHolding(tx, scope, deliveryId, holdingId);
    if (!booking || booking.withdrawn) throw new NotFound();
    await writeWithdrawn(tx, scope, booking.id, now);
    note({
      verb: 'withdrawn',
      thing: 'booking',
      thingId: booking.id,
      forHoldingId: holdingId,
      before: { asked: booking.asked },
    });
    await tellOtherHolders(context, holding, `The booking of your holding for “${delivery.name}” is withdrawn.`);
    return { holdingId };
  },
});

/** Type the paper bookings back in: all rows at once, or none with each fault beside its row. An empty row changes nothing. */
export const typeInBookings = mutation({
  name: 'type-in-bookings',
  allow: canRunSociety,
  input: typeInInput,
  write: async (context, { deliveryId, rows }) => {
    const { tx, scope, today } = context;
    const delivery = await openForBooking(context, deliveryId);
    const holdings = new Map((await holdingsOn(tx, scope, today)).map((holding) => [holding.id, holding]));
    const typed = rows.filter(({ asked }) => asked.trim() !== '');
    if (typed.some(({ holdingId }) => !holdings.has(holdingId))) throw new NotFound();
    const refusals = typed.flatMap(({ holdingId, asked }): Refusal[] => {
      const field = `asked:${holdingId}`;
      if (!/^\d{1,4}$/.test(asked.trim()) || Number(asked) < 1)
        return [{ code: 'input', field, words: 'Give whole loads, 1 to 9,999, or leave it empty.' }];
      if (typed.filter((row) => row.holdingId === holdingId).length > 1)
        return [{ code: 'input', field, words: 'This holding stands on the sheet twice. Give its loads once.' }];
      const cap = delivery.capLoads;
      return cap !== null && Number(asked) > cap ? [{ code: 'above-cap', field, numbers: { cap } }] : [];
    });
    if (refusals.length) throw new Refused(refusals);
    const named = typed.flatMap(({ holdingId }) => holdings.get(holdingId) ?? []);
    const needs = await needsForDelivery(context, delivery, named);
    for (const { holdingId, asked } of typed) {
      const [holding, need] = [holdings.get(holdingId), needs.get(holdingId)];
      if (!holding || !need) throw new NotFound();
      const before = await bookingOfHolding(tx, scope, deliveryId, holdingId);
      if (before && !before.withdrawn && before.asked === Number(asked)) continue;
      const beds = before?.bedIds ?? [];
      await enterBooking(context, { deliveryId, holding, need, before, asked: Number(asked), beds, onPaper: true });
    }
    return { count: typed.length };
  },
});

/** Offer to help unload, or withdraw the offer. */
export const offerToUnload = mutation({
  name: 'offer-to-unload',
  allow: canEnter,
  input: unloadInput,
  write: async (context, { deliveryId, offers }) => {
    const delivery = await lockDelivery(context.tx, context.scope, deliveryId, context.now, 'share');
    if (!delivery || delivery.state === 'planned') throw new NotFound();
    if (!mayTake('postpone', delivery.state)) await takeStep(context, deliveryId, 'postpone', 'share');
    await setUnloadOffer(context.tx, context.scope, deliveryId, offers);
    context.note({ verb: offers ? 'offered to unload' : 'offer withdrawn', thing: 'delivery', thingId: deliveryId });
    return { offers };
  },
});
