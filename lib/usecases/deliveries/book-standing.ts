import 'server-only';
import { bookingsOf } from '@/lib/data/booking';
import type { Db } from '@/lib/data/db';
import type { DeliveryRecord } from '@/lib/data/delivery';
import { type HoldingOnDay, holdingsOn } from '@/lib/data/holding';
import { standingBookings } from '@/lib/data/standing-booking';
import { standingAsks, standsFor } from '@/lib/domain/delivery/standing';
import type { HoldingNeed } from '../ground/holding-need';
import type { ReadContext, WriteContext } from '../operation';
import { tell } from '../tell';
import { needsForDelivery } from './book-loads';
import { enterBooking } from './enter-booking';

type Asking = { readonly holding: HoldingOnDay; readonly need: HoldingNeed; readonly asked: number };

/** What the standing bookings ask of a delivery: of holdings with ground today that needs any, a need up to both limits. */
export async function standingAsking(
  context: Pick<ReadContext, 'scope' | 'today'> & { readonly db: Db },
  delivery: DeliveryRecord,
): Promise<Asking[]> {
  const { db, scope, today } = context;
  const standing = (await standingBookings(db, scope)).filter((one) => standsFor(one, delivery));
  if (standing.length === 0) return [];
  const limits = new Map(standing.map(({ holdingId, mostLoads }) => [holdingId, mostLoads]));
  const holdings = (await holdingsOn(db, scope, today)).filter(({ id }) => limits.has(id));
  const needs = await needsForDelivery({ tx: db, scope, today }, delivery, holdings);
  return holdings.flatMap((holding) => {
    const need = needs.get(holding.id);
    const asked = need ? standingAsks(need.loads, limits.get(holding.id) ?? null, delivery.capLoads) : 0;
    return need && asked > 0 ? [{ holding, need, asked }] : [];
  });
}

/** Book what the standing bookings ask, when a delivery opens; the holders are told, and can change it until it closes. */
export async function bookStanding(context: WriteContext, delivery: DeliveryRecord): Promise<number> {
  const { tx, scope, today } = context;
  const booked = new Set((await bookingsOf(tx, scope, delivery.id)).map(({ holdingId }) => holdingId));
  const asking = (await standingAsking({ db: tx, scope, today }, delivery)).filter(
    ({ holding }) => !booked.has(holding.id),
  );
  for (const { holding, need, asked } of asking) {
    const beds = need.lines.flatMap(({ id, kind, massG }) => (kind === 'bed' && massG > 0 ? [id] : []));
    await enterBooking(context, {
      deliveryId: delivery.id,
      holding,
      need,
      before: null,
      asked,
      beds,
      fromStanding: true,
    });
    await tell(
      context,
      holding.memberIds,
      `booked for you: ${delivery.name}`,
      `Your standing booking asks for ${asked} of “${delivery.name}”; your ground needs ${need.loads}. You can change or withdraw it until booking closes.`,
    );
  }
  return asking.length;
}
