import 'server-only';
import { deliveryComingTo } from '@/lib/data/delivery';
import {
  changeDropPoint as writeChange,
  createDropPoint,
  dropPointsOf,
  lockDropPoint,
  retireDropPoint as writeRetired,
} from '@/lib/data/drop-point';
import { lockSite } from '@/lib/data/plot-store';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { addDropPointInput, changeDropPointInput, retireDropPointInput } from '@/lib/schemas/site/path';
import { takeStep } from '../deliveries/open-delivery';
import { sendTo } from '../deliveries/tip-at';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { readPlace } from './typed-path';

type At = Pick<WriteContext, 'tx' | 'scope'>;

// The site's lock keeps two from taking one name at once.
async function refuseNameTaken({ tx, scope }: At, siteId: string, name: string, own: string | null): Promise<void> {
  const others = (await dropPointsOf(tx, scope, siteId)).filter(({ id }) => id !== own);
  if (others.some((one) => one.name.toLowerCase() === name.toLowerCase()))
    refuse('drop-point-name-taken', { field: 'name', numbers: { name } });
}

/** Make a drop point on a site; a delivery named with it is tipped there from now on. */
export const addDropPoint = mutation({
  name: 'add-drop-point',
  allow: canRunSociety,
  input: addDropPointInput,
  write: async (context, { siteId, name, deliveryId, ...typed }) => {
    const { tx, scope, note } = context;
    const delivery = deliveryId ? await takeStep(context, deliveryId, 'tip-at') : null;
    if (!(await lockSite(tx, scope, siteId))) throw new NotFound();
    if (delivery && delivery.siteId !== siteId) refuse('drop-point-elsewhere', { field: 'deliveryId' });
    const at = readPlace(typed, scope.units);
    await refuseNameTaken(context, siteId, name, null);
    const dropPointId = await createDropPoint(tx, scope, siteId, { name, at });
    note({ verb: 'added', thing: 'drop point', thingId: dropPointId, after: { name, ...at } });
    if (delivery) await sendTo(context, delivery, { id: dropPointId, name });
    return { dropPointId };
  },
});

/** Name a drop point anew, or place it where it really is. */
export const changeDropPoint = mutation({
  name: 'change-drop-point',
  allow: canRunSociety,
  input: changeDropPointInput,
  write: async (context, { dropPointId, name, ...typed }) => {
    const { tx, scope, note } = context;
    const before = await lockDropPoint(tx, scope, dropPointId, 'alone');
    if (!before) throw new NotFound();
    const at = readPlace(typed, scope.units);
    await lockSite(tx, scope, before.siteId);
    await refuseNameTaken(context, before.siteId, name, dropPointId);
    await writeChange(tx, scope, dropPointId, { name, at });
    note({
      verb: 'changed',
      thing: 'drop point',
      thingId: dropPointId,
      before: { name: before.name, ...before.at },
      after: { name, ...at },
    });
    return { dropPointId };
  },
});

/** Take a drop point out of use, unless a load is still to come there. What was tipped there stays on record. */
export const retireDropPoint = mutation({
  name: 'retire-drop-point',
  allow: canRunSociety,
  input: retireDropPointInput,
  write: async ({ tx, scope, now, note }, { dropPointId }) => {
    const before = await lockDropPoint(tx, scope, dropPointId, 'alone');
    if (!before) throw new NotFound();
    const delivery = await deliveryComingTo(tx, scope, dropPointId);
    if (delivery) refuse('drop-point-awaited', { field: 'sure', numbers: { delivery } });
    await writeRetired(tx, scope, dropPointId, now);
    note({ verb: 'retired', thing: 'drop point', thingId: dropPointId, before: { name: before.name, ...before.at } });
    return { siteId: before.siteId };
  },
});
