import 'server-only';
import { z } from 'zod';
import { harvestsForLots } from '@/lib/data/lot-harvest';
import { keepingsOfCrop } from '@/lib/domain/catalogue/keepings';
import { canEnter } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';
import { shownHolding, storeOf } from './store-of';

/** What the form for a new lot needs: the places, and the harvest that is put in, where it comes from one. */
export const readLotForm = query({
  name: 'read-lot-form',
  allow: canEnter,
  input: z.object({ harvestId: z.uuid().nullish() }),
  read: async (context, { harvestId }) => {
    const { db, scope, today } = context;
    const { holdings, places } = await storeOf(context);
    const ids = holdings.map(({ id }) => id);
    const [harvest] = harvestId ? await harvestsForLots(db, scope, [harvestId], ids) : [];
    if (harvestId && !harvest) throw new NotFound();
    return {
      today,
      units: scope.units,
      holdings: holdings.map(shownHolding),
      // What was harvested by one holding is kept by it.
      places: places.filter(({ holdingId }) => !harvest || holdingId === harvest.holdingId),
      harvest: harvest ? { ...harvest, keepings: keepingsOfCrop(harvest.cropKey).map(({ key }) => key) } : null,
    };
  },
});
