import 'server-only';
import { type DeliveryRecord, lockDelivery } from '@/lib/data/delivery';
import { bookingsOf } from '@/lib/data/booking';
import { holdingsOn } from '@/lib/data/holding';
import { type DeliveryStep, mayTake } from '@/lib/domain/delivery/steps';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import type { WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';

type At = Pick<WriteContext, 'tx' | 'scope' | 'now'>;

/** A delivery, locked, on which a step may be taken now; refused where it may not. */
export async function takeStep(
  { tx, scope, now }: At,
  id: string,
  step: DeliveryStep,
  how: 'share' | 'alone' = 'alone',
): Promise<DeliveryRecord> {
  const delivery = await lockDelivery(tx, scope, id, now, how);
  if (!delivery || !canSeeDelivery(scope, delivery)) throw new NotFound();
  if (!mayTake(step, delivery.state)) refuse('step-not-now', { numbers: { state: delivery.state } });
  return delivery;
}

/** Tell the holders who booked, where they can be mailed. Gate notes and codes never go into mail. */
export async function tellBookers(
  context: At & Pick<WriteContext, 'today'>,
  delivery: Pick<DeliveryRecord, 'id' | 'name'>,
  subject: string,
  body: string,
): Promise<void> {
  const { tx, scope, today } = context;
  const booked = new Set((await bookingsOf(tx, scope, delivery.id)).map(({ holdingId }) => holdingId));
  const holdings = (await holdingsOn(tx, scope, today)).filter(({ id }) => booked.has(id));
  await tell(
    context,
    holdings.flatMap(({ memberIds }) => memberIds),
    subject,
    body,
  );
}
