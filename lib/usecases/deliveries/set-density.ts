import 'server-only';
import { bookingsOf } from '@/lib/data/booking';
import { setDensityOf } from '@/lib/data/delivery';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { loadsIn } from '@/lib/domain/quantity/load';
import { setDensityInput } from '@/lib/schemas/measures/measure';
import { askBucket } from '../measures/ask-bucket';
import { mutation } from '../operation';
import { Refused, refuse } from '../refusal';
import { checkDensity } from './check-density';
import { takeStep } from './open-delivery';

/**
 * Set what a litre of a delivery weighs from a bucket test, worked out here from the weights themselves. Once loads are booked it
 * stays: every booking carries a need worked out with it.
 */
export const setDensity = mutation({
  name: 'set-density',
  allow: canRunSociety,
  input: setDensityInput,
  write: async (context, { writeId: _, deliveryId, ...typed }) => {
    const { tx, scope, note } = context;
    const before = await takeStep(context, deliveryId, 'change');
    if (before.loadUnit === 'bale') refuse('comes-in-bales', { field: 'deliveryId' });
    const asked = askBucket(typed, scope.units);
    if (!asked.ok) throw new Refused(asked.refusals);
    const { densityGPerL, leastGPerL, mostGPerL, fills } = asked.value.density;
    checkDensity(before.materialKey, densityGPerL, 'fill1');
    if ((await bookingsOf(tx, scope, deliveryId)).length) refuse('booked-already', { field: 'deliveryId' });
    const expectedLoads = loadsIn(before.amount, before.barrowLitres, densityGPerL);
    await setDensityOf(tx, scope, deliveryId, { densityGPerL, expectedLoads });
    note({
      verb: 'density set',
      thing: 'delivery',
      thingId: deliveryId,
      before: { densityGPerL: before.densityGPerL, expectedLoads: before.expectedLoads },
      after: { densityGPerL, expectedLoads, leastGPerL, mostGPerL, bucketfuls: fills },
    });
    return { deliveryId, densityGPerL, expectedLoads };
  },
});
