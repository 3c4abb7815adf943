import 'server-only';
import { lockSeedOrder } from '@/lib/data/seed-order';
import { createPackets, type PacketFacts, wantsInTin } from '@/lib/data/seed-packet';
import { seedWantsOf, setHandedOut } from '@/lib/data/seed-want';
import { yearOf } from '@/lib/domain/calendar/calendar-date';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { canEnter } from '@/lib/domain/policy/standing';
import { mayTakeStep } from '@/lib/domain/seed/order-steps';
import { seedsInMass } from '@/lib/domain/seed/seed-mass';
import { dayIn } from '@/lib/platform/clock';
import { handOutInput, keepInTinInput } from '@/lib/schemas/seed/order';
import { mutation } from '../operation';
import { NotFound, refuse } from '../refusal';
import { canSeeSeedOrder, takeSeedStep } from './open-order';
import { openTin } from './open-tin';

/** Tick off what a holding is given as handed out, or take the tick back. */
export const handOutSeed = mutation({
  name: 'hand-out-seed',
  allow: canKeepMoney,
  input: handOutInput,
  write: async (context, { orderId, holdingId, out }) => {
    const { tx, scope, now, note } = context;
    await takeSeedStep(context, orderId, 'hand-out');
    const wants = (await seedWantsOf(tx, scope, [orderId], [holdingId])).filter(({ given }) => (given ?? 0) > 0);
    if (wants.length === 0) refuse('nothing-to-hand-out', { field: 'holdingId' });
    const ids = wants.map(({ id }) => id);
    await setHandedOut(tx, scope, ids, out ? now : null);
    note({
      verb: out ? 'handed out' : 'hand-out taken back',
      thing: 'seed wants',
      thingId: orderId,
      forHoldingId: holdingId,
      after: { items: ids.length },
    });
    return { items: ids.length };
  },
});

/** Put what the society ordered for one's holding into the tin, once: seed alone, since sets are planted. */
export const keepOrderedSeed = mutation({
  name: 'keep-ordered-seed',
  allow: canEnter,
  input: keepInTinInput,
  write: async (context, { orderId, holdingId }) => {
    const { tx, scope, now, today, note } = context;
    await openTin({ db: tx, scope, today }, holdingId);
    const order = await lockSeedOrder(tx, scope, orderId, now, 'alone');
    if (!order || !canSeeSeedOrder(scope, order)) throw new NotFound();
    if (!mayTakeStep('hand-out', order.state)) refuse('order-not-now', { numbers: { state: order.state } });
    const wants = await seedWantsOf(tx, scope, [orderId], [holdingId]);
    const kept = await wantsInTin(
      tx,
      scope,
      wants.map(({ id }) => id),
    );
    const packedYear = yearOf(dayIn(scope.timeZone, order.arrivedAt ?? now));
    const packets = wants.flatMap(({ id: wantId, itemId, given }): PacketFacts[] => {
      const item = order.items.find(({ id }) => id === itemId);
      if (!item || !given || kept.has(wantId) || item.unit === 'sets') return [];
      const { cropKey, variety, unit } = item;
      const seeds = unit === 'seeds' ? given : seedsInMass(cropKey, given)?.seeds;
      return seeds ? [{ cropKey, variety, seeds, packedYear, germinationPercent: null, wantId }] : [];
    });
    if (packets.length === 0) refuse('nothing-for-the-tin');
    for (const thingId of await createPackets(tx, scope, holdingId, packets))
      note({ verb: 'put into the tin', thing: 'seed packet', thingId, forHoldingId: holdingId });
    return { packets: packets.length };
  },
});
