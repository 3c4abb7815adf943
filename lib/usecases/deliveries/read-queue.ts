import 'server-only';
import { bookingsOf } from '@/lib/data/booking';
import { creditsOf } from '@/lib/data/credit';
import { type DeliveryRecord, shareOutRecordOf } from '@/lib/data/delivery';
import { measuredLoadsOf } from '@/lib/data/heap-measured';
import { canEnter } from '@/lib/domain/policy/standing';
import { canonicalBookings } from '@/lib/domain/sharing/lot';
import { orderOf } from '@/lib/domain/sharing/order';
import { roundsOf } from '@/lib/domain/sharing/rounds';
import { type ShareOut, shareOut } from '@/lib/domain/sharing/share-out';
import type { ShareOutInputs } from '@/lib/domain/sharing/work-again';
import { dayIn } from '@/lib/platform/clock';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { asRecord, frozenClaims } from './claims';
import { creditsOnSite } from './credits-on-site';
import { foundDelivery, oneDelivery, titled } from './found-delivery';
import { queueHoldings } from './queue-holdings';
import { queueLines } from './queue-lines';

/** The whole share-out, provisional or confirmed: the queue, the lot, every share and credit. Only once the lot is revealed. */
export const readQueue = query({
  name: 'read-queue',
  allow: canEnter,
  input: oneDelivery,
  read: async (context, { deliveryId }) => {
    const delivery = await foundDelivery(context, deliveryId);
    return {
      delivery: headOf(delivery),
      timeZone: context.scope.timeZone,
      society: context.scope.societyName,
      result: await resultOf(context, delivery),
    };
  },
});

/** What a share-out rests on and what is shown of it, as a file to work it out again with. */
export const readQueueFile = query({
  name: 'read-queue-file',
  allow: canEnter,
  input: oneDelivery,
  read: async (context, { deliveryId }) => {
    const delivery = await foundDelivery(context, deliveryId);
    const result = await resultOf(context, delivery);
    if (!result) throw new NotFound();
    const { inputs, lines, method, provisional } = result;
    const shown = lines.map(({ bookingId: id, plots, share, dueMillionths, creditAfterMillionths }) => ({
      ...{ id, plots, share, dueMillionths, creditAfterMillionths },
    }));
    const file = { delivery: delivery.name, loadUnit: delivery.loadUnit, method, provisional, inputs, shown };
    return { name: 'queue.json', text: `${JSON.stringify(file, null, 2)}\n` };
  },
});

// Who keeps the key and what the gate helper is told are no part of the queue.
function headOf(delivery: DeliveryRecord) {
  const { id, name, material, state, loadUnit, heapLoads, held, closesAt } = titled(delivery);
  return { id, name, material, state, loadUnit, heapLoads, held, closesAt };
}

async function resultOf(context: ReadContext, delivery: DeliveryRecord) {
  const { db, scope } = context;
  const { id: deliveryId, lot } = delivery;
  if (!lot?.bytesHex) return null;
  const bookings = await bookingsOf(db, scope, deliveryId);
  const record = asRecord(await shareOutRecordOf(db, scope, deliveryId));
  const { claims, frozen, seed } = await frozenClaims(db, scope, delivery, bookings, record);
  const loads = record?.loads ?? delivery.heapLoads ?? delivery.expectedLoads;
  const inputs: ShareOutInputs = {
    deliveryId,
    commitment: lot.commitment,
    bytesHex: lot.bytesHex,
    loads,
    frozen,
    claims,
  };
  const reckoned = shareOut({ loads, claims, lotSeed: seed });
  const holdingOf = await queueHoldings(context, dayIn(scope.timeZone, delivery.closesAt));
  const places = placesServed(reckoned);
  return {
    lines: queueLines({ bookings, inputs, reckoned, confirmed: record !== null, holdingOf }),
    inputs,
    seed,
    places,
    order: orderOf(claims, seed),
    rounds: roundsOf(claims, places, seed),
    ended: record?.ended ?? reckoned.ended,
    lotOrder: reckoned.lotOrder,
    method: record?.method ?? reckoned.method,
    provisional: record === null,
    canonical: canonicalBookings(deliveryId, frozen),
    measured: await measuredLoadsOf(db, scope, deliveryId),
    site: creditsOnSite(await creditsOf(db, scope, delivery.materialKey)),
  };
}

// Where loads were taken beyond a share, the heap holds fewer places of the queue than loads.
function placesServed({ shares }: ShareOut): number {
  return shares.reduce(
    (sum, { share, reason }) => sum + (reason.code === 'already-collected' ? reason.places : share),
    0,
  );
}
