import 'server-only';
import type { Tx } from '@/lib/data/db';
import { type DeliveryRecord, lockDelivery } from '@/lib/data/delivery';
import { bookingsOf } from '@/lib/data/booking';
import { holdingsOn } from '@/lib/data/holding';
import { queueMail } from '@/lib/data/mail';
import { mailAddresses } from '@/lib/data/member-mail';
import type { Scope } from '@/lib/data/scope';
import { type DeliveryStep, mayTake } from '@/lib/domain/delivery/steps';
import type { WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';

type At = Pick<WriteContext, 'tx' | 'scope' | 'now'>;

/** A delivery, locked, on which a step may be taken now; refused where it may not. */
export async function takeStep(
  { tx, scope, now }: At,
  id: string,
  step: DeliveryStep,
  how: 'share' | 'alone' = 'alone',
): Promise<DeliveryRecord> {
  const delivery = await lockDelivery(tx, scope, id, now, how);
  if (!delivery) throw new NotFound();
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
    tx,
    scope,
    holdings.flatMap(({ memberIds }) => memberIds),
    subject,
    body,
  );
}

/** Queue one mail for each member who has an address. */
export async function tell(
  tx: Tx,
  scope: Scope,
  memberIds: readonly string[],
  subject: string,
  body: string,
): Promise<void> {
  const addresses = await mailAddresses(tx, scope, memberIds);
  await queueMail(
    tx,
    addresses.map((to) => ({ to, subject: `${scope.societyName}: ${subject}`, body, societyId: scope.societyId })),
  );
}
