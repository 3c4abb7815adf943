import 'server-only';
import { setHeld } from '@/lib/data/delivery';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { holdInput } from '@/lib/schemas/deliveries/delivery';
import { mutation } from '../operation';
import { refuse } from '../refusal';
import { takeStep, tellBookers } from './open-delivery';

/** Hold a delivery from being shared out, because there is cause to doubt it. Bookings stand; those who booked are told. */
export const holdDelivery = mutation({
  name: 'hold-delivery',
  allow: canRunSociety,
  input: holdInput,
  write: async (context, { deliveryId, reason }) => {
    const { tx, scope, now, note } = context;
    const delivery = await takeStep(context, deliveryId, 'hold');
    if (delivery.held) refuse('held-already');
    await setHeld(tx, scope, deliveryId, { since: now, reason });
    note({ verb: 'held', thing: 'delivery', thingId: deliveryId, after: { reason } });
    await tellBookers(
      context,
      delivery,
      `${delivery.name} is held`,
      `“${delivery.name}” is held and is not shared out for now. The reason: “${reason}”. Take none of it. Bookings stand; you are told when the secretary has decided.`,
    );
    return { deliveryId };
  },
});

/** Release a delivery that was held: it can be shared out again. Calling it off is the other way to decide. */
export const releaseDelivery = mutation({
  name: 'release-delivery',
  allow: canRunSociety,
  input: holdInput,
  write: async (context, { deliveryId, reason }) => {
    const { tx, scope, note } = context;
    const delivery = await takeStep(context, deliveryId, 'hold');
    if (!delivery.held) refuse('not-held');
    await setHeld(tx, scope, deliveryId, null);
    const { since, reason: heldReason } = delivery.held;
    const before = { reason: heldReason, since: since.toISOString() };
    note({ verb: 'released', thing: 'delivery', thingId: deliveryId, before, after: { reason } });
    await tellBookers(
      context,
      delivery,
      `${delivery.name} is released`,
      `“${delivery.name}” is held no longer. The reason: “${reason}”. Bookings stand, and it can be shared out.`,
    );
    return { deliveryId };
  },
});
