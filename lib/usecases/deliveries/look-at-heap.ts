import 'server-only';
import { bookingsOf } from '@/lib/data/booking';
import type { Db } from '@/lib/data/db';
import type { DeliveryRecord } from '@/lib/data/delivery';
import { createLook, type HeapLookRecord, newestLooks } from '@/lib/data/heap-look';
import { holdingsOfMember } from '@/lib/data/holding';
import { membersOn } from '@/lib/data/member';
import type { Scope } from '@/lib/data/scope';
import { type HeapEstimate, heapEstimate } from '@/lib/domain/delivery/heap-estimate';
import { canLookAtHeap } from '@/lib/domain/policy/delivery';
import { canEnter, canTickOffForOthers } from '@/lib/domain/policy/standing';
import { recordLookInput } from '@/lib/schemas/deliveries/heap-look';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';
import { takeStep } from './open-delivery';

/** What is left of a delivery's heap by the count and by eye; null before it is measured. */
export function estimateOf(delivery: DeliveryRecord, look: HeapLookRecord | null): HeapEstimate | null {
  const { heapLoads, sharedLoads, collectedLoads } = delivery;
  return heapLoads === null ? null : heapEstimate({ heapLoads, sharedLoads, collectedLoads, look });
}

/** The newest look at one heap, or null. */
export async function newestLook(db: Db, scope: Scope, deliveryId: string): Promise<HeapLookRecord | null> {
  return (await newestLooks(db, scope, [deliveryId])).get(deliveryId) ?? null;
}

/** Say how much is left on a heap, by eye. Where it may run short from now on, the secretary and the gate helpers are told. */
export const recordLook = mutation({
  name: 'record-heap-look',
  allow: canEnter,
  input: recordLookInput,
  write: async (context, { deliveryId, loads }) => {
    const { tx, scope, now, note } = context;
    const delivery = await takeStep(context, deliveryId, 'look');
    const { state, collectedLoads } = delivery;
    const holdsShare = await holdsShareOf(context, deliveryId);
    if (!canLookAtHeap(scope, { state, holdsShare })) throw new NotFound();
    const heap = delivery.heapLoads ?? 0;
    if (loads > heap) refuse('look-above-heap', { field: 'loads', numbers: { heap } });
    const before = estimateOf(delivery, await newestLook(tx, scope, deliveryId));
    const look = { loads, collectedLoads, at: now };
    await createLook(tx, scope, deliveryId, look);
    note({ verb: 'looked at', thing: 'heap', thingId: deliveryId, after: { loads, collected: collectedLoads } });
    const after = estimateOf(delivery, look);
    if (after?.mayRunShort && !before?.mayRunShort && state !== 'settled')
      await tellItMayRunShort(context, delivery, after);
    return { loads };
  },
});

async function holdsShareOf({ tx, scope, today }: WriteContext, deliveryId: string): Promise<boolean> {
  const mine = new Set((await holdingsOfMember(tx, scope, scope.memberId, today)).map(({ id }) => id));
  return (await bookingsOf(tx, scope, deliveryId)).some(({ holdingId, share }) => share && mine.has(holdingId));
}

async function tellItMayRunShort(context: WriteContext, { name }: DeliveryRecord, after: HeapEstimate): Promise<void> {
  const { tx, scope, today } = context;
  const { memberId } = scope;
  const members = (await membersOn(tx, scope, today)).filter(
    ({ id, isHere, roles }) => isHere && id !== memberId && canTickOffForOthers({ memberId: id, roles }),
  );
  await tell(
    context,
    members.map(({ id }) => id),
    `${name} may run short`,
    `Somebody at the heap of “${name}” sees about ${after.byEye} loads left, and ${after.toCome} are still to be fetched. If that is so, the secretary measures the heap again: sign in, and under Office, Deliveries, “${name}”, press “Measure again”. The shares are then worked out anew by the same queue.`,
  );
}
