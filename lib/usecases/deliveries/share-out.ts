import 'server-only';
import { type BookingRecord, bookingsOf, writeShares } from '@/lib/data/booking';
import {
  type DeliveryRecord,
  lockDelivery,
  moveDelivery,
  shareOutRecordOf,
  unsettledBefore,
} from '@/lib/data/delivery';
import { createLook } from '@/lib/data/heap-look';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { type ShareOut, shareOut } from '@/lib/domain/sharing/share-out';
import { dayIn } from '@/lib/platform/clock';
import { confirmInput, deliveryInput, measureInput } from '@/lib/schemas/deliveries/delivery';
import { mutation, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { asRecord, frozenClaims } from './claims';
import { countOf } from './count-of';
import { takeStep, tellBookers } from './open-delivery';

/** Measure the heap, in whole loads, before or while it is shared. Shares that were confirmed are worked out again on it. */
export const measureHeap = mutation({
  name: 'measure-heap',
  allow: canRunSociety,
  input: measureInput,
  write: async (context, { deliveryId, loads }) => {
    const { tx, scope, now, note } = context;
    const delivery = await takeStep(context, deliveryId, 'measure');
    if (loads < delivery.collectedLoads)
      refuse('measure-below-collected', { field: 'loads', numbers: { collected: delivery.collectedLoads } });
    const shared = delivery.state === 'shared' || delivery.state === 'collecting';
    // Shares must fall before the heap does: the database holds the one under the other.
    if (shared && loads < (delivery.heapLoads ?? 0)) await reshare(context, delivery, loads);
    await moveDelivery(tx, scope, deliveryId, { heapLoads: loads, ...(shared ? {} : { state: 'tipped' as const }) });
    if (shared && loads > (delivery.heapLoads ?? 0)) await reshare(context, delivery, loads);
    // What was measured stands above what somebody saw by eye before.
    const { collectedLoads } = delivery;
    if (shared) await createLook(tx, scope, deliveryId, { loads: loads - collectedLoads, collectedLoads, at: now });
    note({
      verb: 'measured',
      thing: 'delivery',
      thingId: deliveryId,
      before: { loads: delivery.heapLoads },
      after: { loads },
    });
    if (shared && loads !== delivery.heapLoads)
      await tellBookers(
        context,
        delivery,
        `${delivery.name} was measured again`,
        `The heap of “${delivery.name}” was measured again at ${countOf(loads, delivery.loadUnit)}, and the shares were worked out again on it. Sign in to see yours.`,
      );
    return { loads };
  },
});

/** Show the provisional share-out for the first time: the lot's bytes are published with it, and the book notes it. */
export const previewShareOut = mutation({
  name: 'preview-share-out',
  allow: canRunSociety,
  input: deliveryInput,
  write: async (context, { deliveryId }) => {
    const { tx, scope, now, note } = context;
    const delivery = await takeStep(context, deliveryId, 'preview');
    await refuseWhileUnsettled(context, delivery);
    if (delivery.lot?.bytesHex) return { deliveryId };
    // Whatever closing time says, booking is over once the bytes are out.
    await moveDelivery(tx, scope, deliveryId, {
      lotRevealedAt: now,
      ...(delivery.heapLoads === null ? { state: 'closed' as const } : {}),
    });
    note({
      verb: 'lot revealed',
      thing: 'delivery',
      thingId: deliveryId,
      after: { commitment: delivery.lot?.commitment ?? '' },
    });
    return { deliveryId };
  },
});

/** Confirm the share-out on the measured heap: exactly once, however often or by how many it is asked for. */
export const confirmShareOut = mutation({
  name: 'confirm-share-out',
  allow: canRunSociety,
  input: confirmInput,
  write: async (context, { deliveryId }) => {
    const { tx, scope, now, note } = context;
    const delivery = await lockForConfirming(context, deliveryId);
    refuseWhileHeld(context, delivery);
    await refuseWhileUnsettled(context, delivery);
    const bookings = await bookingsOf(tx, scope, deliveryId);
    if (bookings.length === 0) refuse('nothing-booked');
    const loads = delivery.heapLoads ?? 0;
    const { claims, frozen, seed } = await frozenClaims(tx, scope, delivery, bookings, null);
    const result = shareOut({ loads, claims, lotSeed: seed });
    await writeResult(
      context,
      bookings,
      result,
      new Map(claims.map(({ id, creditMillionths }) => [id, creditMillionths])),
    );
    const { ended, method } = result;
    await moveDelivery(tx, scope, deliveryId, {
      state: 'shared',
      confirmedAt: now,
      lotRevealedAt: now,
      shareOutRecord: { loads, frozen: [...frozen], lotSeed: seed, ended: { ...ended }, method: { ...method } },
    });
    note({
      verb: 'shared out',
      thing: 'delivery',
      thingId: deliveryId,
      after: { loads, claims: bookings.length, ended: { ...ended } },
    });
    await tellBookers(
      context,
      delivery,
      `${delivery.name} is shared out`,
      `“${delivery.name}” is shared out. Sign in to see your share and its reason; collect by ${delivery.collectByOn}.`,
    );
    return { shares: result.shares.length };
  },
});

async function lockForConfirming(context: WriteContext, deliveryId: string): Promise<DeliveryRecord> {
  const delivery = await lockDelivery(context.tx, context.scope, deliveryId, context.now, 'alone');
  if (delivery && ['shared', 'collecting', 'settled'].includes(delivery.state)) refuse('confirmed-already');
  return takeStep(context, deliveryId, 'confirm');
}

// Read under the lock that holding takes too, so that the two never cross; the database would refuse as well.
function refuseWhileHeld({ scope }: WriteContext, { held }: DeliveryRecord): void {
  if (held) refuse('delivery-held', { numbers: { since: dayIn(scope.timeZone, held.since), reason: held.reason } });
}

async function refuseWhileUnsettled({ tx, scope }: WriteContext, delivery: DeliveryRecord): Promise<void> {
  const name = await unsettledBefore(tx, scope, delivery);
  if (name) refuse('another-unsettled', { numbers: { name } });
}

/** A holding whose share is another since the queue was run again. */
export type Moved = { readonly holdingId: string; readonly from: number; readonly to: number };

/** Run the same queue again: on a heap measured anew, after a share was given up, or for who came late. */
export async function reshare(context: WriteContext, delivery: DeliveryRecord, loads: number): Promise<Moved[]> {
  const { tx, scope } = context;
  const bookings = await bookingsOf(tx, scope, delivery.id);
  const record = asRecord(await shareOutRecordOf(tx, scope, delivery.id));
  if (!record) throw new Error('a delivery that was shared out has its record');
  const { claims, seed } = await frozenClaims(tx, scope, delivery, bookings, record);
  const result = shareOut({ loads, claims, lotSeed: seed });
  await writeResult(
    context,
    bookings,
    result,
    new Map(claims.map(({ id, creditMillionths }) => [id, creditMillionths])),
  );
  await moveDelivery(tx, scope, delivery.id, {
    shareOutRecord: {
      ...record,
      frozen: [...record.frozen],
      method: { ...record.method },
      loads,
      ended: { ...result.ended },
    },
  });
  const shares = new Map(result.shares.map(({ id, share }) => [id, share]));
  return bookings
    .map(({ id, holdingId, share }) => ({ holdingId, from: share ?? 0, to: shares.get(id) ?? 0 }))
    .filter(({ from, to }) => to !== from);
}

async function writeResult(
  { tx, scope }: WriteContext,
  bookings: readonly BookingRecord[],
  { shares }: ShareOut,
  credits: ReadonlyMap<string, number>,
): Promise<void> {
  const before = new Map(bookings.map(({ id, share }) => [id, share ?? 0]));
  await writeShares(
    tx,
    scope,
    shares.map(({ id, share, dueMillionths, reason }) => ({
      id,
      share,
      dueMillionths,
      reason,
      creditBeforeMillionths: credits.get(id) ?? 0,
    })),
    before,
  );
}
