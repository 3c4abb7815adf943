import 'server-only';
import { bookedBeds, type BookingRecord, bookingsOf } from '@/lib/data/booking';
import { writeCredits } from '@/lib/data/credit';
import { type DeliveryRecord, moveDelivery, shareOutRecordOf } from '@/lib/data/delivery';
import { createWorks } from '@/lib/data/ground-work';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { bedsCovered } from '@/lib/domain/need/beds-covered';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { loadMassG } from '@/lib/domain/quantity/load-mass';
import { settle } from '@/lib/domain/sharing/settle';
import { deliveryInput } from '@/lib/schemas/deliveries/delivery';
import { seasonServed } from '../ground/holding-need';
import { postPrice, tellCharged } from '../money/post-price';
import { mutation, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { asRecord, frozenClaims } from './claims';
import { takeStep } from './open-delivery';

/**
 * Settle a delivery: every share is collected or given up; credits are written once, what was due minus what was
 * received; the beds that loads were booked for are manured; and its price is charged to those who took loads.
 */
export const settleDelivery = mutation({
  name: 'settle-delivery',
  allow: canRunSociety,
  input: deliveryInput,
  write: async (context, { deliveryId }) => {
    const { tx, scope, now, note } = context;
    const delivery = await takeStep(context, deliveryId, 'settle');
    const bookings = await bookingsOf(tx, scope, deliveryId);
    const outstanding = bookings.filter(({ share, collectedLoads }) => (share ?? 0) > collectedLoads);
    if (outstanding.length) refuse('shares-outstanding', { numbers: { count: outstanding.length } });
    const record = asRecord(await shareOutRecordOf(tx, scope, deliveryId));
    const { claims, seed } = await frozenClaims(tx, scope, delivery, bookings, record);
    const collected = claims.map((claim) => ({ ...claim, collected: claim.collected ?? 0 }));
    const { changes, lapsedMillionths } = settle({ loads: delivery.heapLoads ?? 0, claims: collected, lotSeed: seed });
    const holdingOf = new Map(bookings.map(({ id, holdingId }) => [id, holdingId]));
    const entries = changes.map(({ id, changeMillionths }) => ({
      holdingId: holdingOf.get(id) ?? null,
      changeMillionths,
    }));
    await writeCredits(tx, scope, {
      materialKey: delivery.materialKey,
      deliveryId,
      code: 'settled',
      at: now,
      entries: [...entries, { holdingId: null, changeMillionths: lapsedMillionths }],
    });
    for (const booking of bookings) await manureBeds(context, delivery, booking);
    await moveDelivery(tx, scope, deliveryId, { state: 'settled', settledAt: now });
    await tellCharged(context, delivery, await postPrice(context, delivery, delivery.priceMinor));
    note({
      verb: 'settled',
      thing: 'delivery',
      thingId: deliveryId,
      after: { collected: delivery.collectedLoads, heap: delivery.heapLoads ?? 0, lapsedMillionths },
    });
    return { lapsedMillionths };
  },
});

// Loads collected for named beds reset their turn, bed by bed in the holder's order.
async function manureBeds(
  { tx, scope }: WriteContext,
  delivery: DeliveryRecord,
  booking: BookingRecord,
): Promise<void> {
  if (!materialOf(delivery.materialKey)?.feedsTurns || booking.collectedLoads === 0) return;
  const beds = await bookedBeds(tx, scope, booking.id);
  const wanted = beds.map(({ dueCm2, ...bed }) => ({
    ...bed,
    wantedG: Math.round((dueCm2 * delivery.rateGPerM2) / 10_000),
  }));
  const covered = bedsCovered(booking.collectedLoads, loadMassG(delivery), wanted);
  const frames = new Map(beds.map(({ bedId, frameId }) => [bedId, frameId]));
  const work = {
    kind: 'manured' as const,
    holdingId: booking.holdingId,
    season: seasonServed(delivery.arrivesOn),
    doneOn: null,
    materialKey: delivery.materialKey,
    ageMonths: delivery.ageMonths,
    deliveryId: delivery.id,
  };
  await createWorks(
    tx,
    scope,
    covered.map(({ bedId, footprint, massG }) => ({ ...work, footprint, massG, frameId: frames.get(bedId) ?? '' })),
  );
}
