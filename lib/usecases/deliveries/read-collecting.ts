import 'server-only';
import { z } from 'zod';
import { type BookingRecord, bookingsOf, lastTicks } from '@/lib/data/booking';
import { deliveryById, type DeliveryRecord } from '@/lib/data/delivery';
import { type HoldingOnDay, holdingsOfMember, holdingsOn } from '@/lib/data/holding';
import { canLookAtHeap, canSeeDelivery, canUndoTick, undoMinutes } from '@/lib/domain/policy/delivery';
import { canEnter, canRunSociety, canTickOffForOthers } from '@/lib/domain/policy/standing';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { estimateOf, newestLook } from './look-at-heap';

/**
 * The heap as it is collected: what is left of it, and the shares that the viewer may tick off: their own, or everybody's for
 * the gate helper and the secretary; theirs first.
 */
export const readCollecting = query({
  name: 'read-collecting',
  allow: canEnter,
  input: z.object({ deliveryId: z.uuid() }),
  read: async (context, { deliveryId }) => {
    const { db, scope, now, today } = context;
    const delivery = await deliveryById(db, scope, deliveryId, now);
    if (!delivery || !canSeeDelivery(scope, delivery)) throw new NotFound();
    const [own, holdings, bookings, ticked, look] = await Promise.all([
      holdingsOfMember(db, scope, scope.memberId, today),
      holdingsOn(db, scope, today),
      bookingsOf(db, scope, deliveryId),
      lastTicks(db, scope, deliveryId),
      newestLook(db, scope, deliveryId),
    ]);
    const mine = new Set(own.map(({ id }) => id));
    const booked = new Map(bookings.map((booking) => [booking.holdingId, booking]));
    const rows = holdings
      .filter(({ id }) => mine.has(id) || canTickOffForOthers(scope))
      .flatMap((holding) => shareRow(context, holding, booked.get(holding.id), ticked))
      .map((row) => ({ ...row, isMine: mine.has(row.holdingId) }));
    const holdsShare = rows.some(({ isMine }) => isMine);
    return {
      delivery: heapOf(delivery),
      estimate: estimateOf(delivery, look),
      look: look && { at: look.at },
      timeZone: scope.timeZone,
      runs: canRunSociety(scope),
      ticks: canTickOffForOthers(scope),
      mayLook: canLookAtHeap(scope, { state: delivery.state, holdsShare }),
      rows: rows.sort(
        (a, b) =>
          Number(b.isMine) - Number(a.isMine) || Number(a.collected >= a.share) - Number(b.collected >= b.share),
      ),
    };
  },
});

function heapOf({
  id,
  name,
  state,
  heapLoads,
  collectedLoads,
  collectByOn,
  barrowLitres,
  densityGPerL,
  loadUnit,
  baleMassG,
}: DeliveryRecord) {
  const size = { barrowLitres, densityGPerL, loadUnit, baleMassG };
  return { id, name, state, heapLoads, collectedLoads, collectByOn, ...size };
}

type Ticked = Awaited<ReturnType<typeof lastTicks>>;

function shareRow(
  { scope, now }: ReadContext,
  { id: holdingId, plots, members }: HoldingOnDay,
  booking: BookingRecord | undefined,
  ticked: Ticked,
) {
  if (!booking || booking.share === null || (booking.share === 0 && booking.collectedLoads === 0)) return [];
  const tick = ticked.get(booking.id);
  const mayUndo = tick && canUndoTick(scope, { beyond: tick.beyond, atMs: tick.at.getTime() }, now.getTime());
  return [
    {
      holdingId,
      bookingId: booking.id,
      share: booking.share,
      collected: booking.collectedLoads,
      plots: plots.map(({ number }) => number),
      names: members.map(({ name }) => name).join(' and '),
      /** The last tick, and until when whoever ticked may undo it. */
      last: tick ? { loads: tick.loads, until: undoneUntil(tick.at), mayUndo: mayUndo ?? false } : null,
    },
  ];
}

function undoneUntil(at: Date): Date {
  return new Date(at.getTime() + undoMinutes * 60_000);
}
