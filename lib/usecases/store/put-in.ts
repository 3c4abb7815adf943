import 'server-only';
import { harvestsForLots } from '@/lib/data/lot-harvest';
import { createLot } from '@/lib/data/store-lot';
import { canEnter } from '@/lib/domain/policy/standing';
import { putInInput } from '@/lib/schemas/store/lot';
import { mutation } from '../operation';
import { NotFound } from '../refusal';
import { placeKept } from './open-store';
import { readLotFacts } from './typed-lot';

/** Put a lot in store, at a place of one's own; from a harvest on record, or from anywhere. */
export const putIn = mutation({
  name: 'put-in-lot',
  allow: canEnter,
  input: putInInput,
  write: async (context, { placeId, harvestId, ...typed }) => {
    const { tx, scope, now, note } = context;
    const { holdingId } = await placeKept(context, placeId);
    if (harvestId && !(await harvestsForLots(tx, scope, [harvestId], [holdingId])).length) throw new NotFound();
    const facts = readLotFacts(typed, context);
    const lotId = await createLot(tx, scope, { holdingId, placeId, harvestId }, facts, now);
    note({ verb: 'put in', thing: 'store lot', thingId: lotId, forHoldingId: holdingId });
    return { lotId };
  },
});
