import 'server-only';
import { type DeliveryRecord, tipDeliveryAt } from '@/lib/data/delivery';
import { dropPointName, type DropPointRecord, lockDropPoint } from '@/lib/data/drop-point';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { tipAtInput } from '@/lib/schemas/deliveries/delivery';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { takeStep, tellBookers } from './open-delivery';

/** A drop point in use, of one site or of any; it cannot be retired before this is written. */
export async function dropPointFor(
  { tx, scope }: Pick<WriteContext, 'tx' | 'scope'>,
  dropPointId: string,
  siteId: string | null,
): Promise<DropPointRecord> {
  const found = await lockDropPoint(tx, scope, dropPointId, 'share');
  if (found && (siteId === null || found.siteId === siteId)) return found;
  if (found) refuse('drop-point-elsewhere', { field: 'dropPointId' });
  if (await dropPointName(tx, scope, dropPointId)) refuse('drop-point-gone', { field: 'dropPointId' });
  throw new NotFound();
}

/** Tip a delivery, locked already, at a drop point; whoever booked learns where it will lie. */
export async function sendTo(
  context: WriteContext,
  delivery: DeliveryRecord,
  to: Pick<DropPointRecord, 'id' | 'name'>,
): Promise<void> {
  if (delivery.dropPointId === to.id) return;
  await tipDeliveryAt(context.tx, context.scope, delivery.id, to.id);
  context.note({
    verb: 'to be tipped at',
    thing: 'delivery',
    thingId: delivery.id,
    before: { dropPointId: delivery.dropPointId },
    after: { dropPointId: to.id },
  });
  if (delivery.state === 'planned') return;
  const body = `“${delivery.name}” is to be tipped at: ${to.name}. Your booking stands.`;
  await tellBookers(context, delivery, `${delivery.name} has changed`, body);
}

/** Say at which drop point a delivery is tipped, until it lies there. */
export const tipAt = mutation({
  name: 'tip-at',
  allow: canRunSociety,
  input: tipAtInput,
  write: async (context, { deliveryId, dropPointId }) => {
    const delivery = await takeStep(context, deliveryId, 'tip-at');
    await sendTo(context, delivery, await dropPointFor(context, dropPointId, delivery.siteId));
    return { deliveryId };
  },
});
