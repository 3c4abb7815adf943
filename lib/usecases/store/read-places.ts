import 'server-only';
import { z } from 'zod';
import { canEnter } from '@/lib/domain/policy/standing';
import { lotNow } from '@/lib/domain/store/go-over';
import { query } from '../operation';
import { shownHolding, storeOf } from './store-of';

/** Where the viewer's holdings keep what they stored, and how many lots stand there. */
export const readPlaces = query({
  name: 'read-store-places',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { holdings, places, lots } = await storeOf(context);
    const held = lots.filter((lot) => lotNow(lot).sound > 0);
    return {
      holdings: holdings.map(shownHolding),
      places: places.map((place) => ({ ...place, lots: held.filter(({ placeId }) => placeId === place.id).length })),
    };
  },
});
