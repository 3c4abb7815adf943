import 'server-only';
import { z } from 'zod';
import { bookingsOf } from '@/lib/data/booking';
import { deliveryById } from '@/lib/data/delivery';
import { holdingsOfMember, holdingsOn } from '@/lib/data/holding';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canEnter, canTickOffForOthers } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';

/** The shares that the viewer may tick off: their own, or everybody's for the gate helper and the secretary; theirs first. */
export const readCollecting = query({
  name: 'read-collecting',
  allow: canEnter,
  input: z.object({ deliveryId: z.uuid() }),
  read: async ({ db, scope, now, today }, { deliveryId }) => {
    const delivery = await deliveryById(db, scope, deliveryId, now);
    if (!delivery || !canSeeDelivery(scope, delivery)) throw new NotFound();
    const mine = new Set((await holdingsOfMember(db, scope, scope.memberId, today)).map(({ id }) => id));
    const holdings = await holdingsOn(db, scope, today);
    const bookings = new Map((await bookingsOf(db, scope, deliveryId)).map((booking) => [booking.holdingId, booking]));
    const seen = holdings.filter(({ id }) => mine.has(id) || canTickOffForOthers(scope));
    const rows = seen.flatMap(({ id, plots, members }) => {
      const booking = bookings.get(id);
      if (!booking || booking.share === null || (booking.share === 0 && booking.collectedLoads === 0)) return [];
      const { id: bookingId, share, collectedLoads: collected } = booking;
      const isMine = mine.has(id);
      return [
        {
          bookingId,
          share,
          collected,
          isMine,
          plots: plots.map(({ number }) => number).join(', '),
          names: members.map(({ name }) => name).join(' and '),
        },
      ];
    });
    return rows.sort(
      (a, b) => Number(b.isMine) - Number(a.isMine) || Number(a.collected >= a.share) - Number(b.collected >= b.share),
    );
  },
});
