import 'server-only';
import { z } from 'zod';
import { deliveryById, type DeliveryRecord } from '@/lib/data/delivery';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import type { ReadContext } from '../operation';
import { NotFound } from '../refusal';

export const oneDelivery = z.object({ deliveryId: z.uuid() });

/** A delivery that the viewer may see; for everybody else it is not there. */
export async function foundDelivery({ db, scope, now }: ReadContext, deliveryId: string): Promise<DeliveryRecord> {
  const delivery = await deliveryById(db, scope, deliveryId, now);
  if (!delivery || !canSeeDelivery(scope, delivery)) throw new NotFound();
  return delivery;
}

/** The same with its material by name. */
export function titled(delivery: DeliveryRecord) {
  return { ...delivery, material: materialOf(delivery.materialKey)?.name ?? delivery.materialKey };
}
