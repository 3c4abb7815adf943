import { randomUUID } from 'node:crypto';
import { wallIn } from '@/lib/platform/clock';
import { planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import type { Caller } from '@/lib/usecases/operation';
import { done } from './done';

/** Straw by the small bale, on the lorry of the stable load: for money and for help in the yard. */
export async function planStraw(secretary: Caller, withId: string): Promise<void> {
  const { delivery, timeZone } = await readGateList.run(secretary, { deliveryId: withId });
  const { arrivesOn, collectByOn, closesAt, supplier, dropPoint, keyHolderId, gateNote } = delivery;
  await done(
    planDelivery.run(secretary, {
      writeId: randomUUID(),
      withId,
      name: delivery.name.replace('Stable load', 'Straw'),
      materialKey: 'straw',
      amount: '40',
      amountUnit: 'bales',
      densityGPerL: '70',
      bale: 'small',
      capLoads: '4',
      ...{ arrivesOn, collectByOn },
      ...{
        supplier: supplier ?? '',
        dropPoint: dropPoint ?? '',
        gateNote: gateNote ?? '',
        keyHolderId: keyHolderId ?? '',
      },
      closesAt: wallIn(timeZone, closesAt),
      price: '120',
      thanks: 'two mornings’ mucking out in the yard',
    }),
  );
}
