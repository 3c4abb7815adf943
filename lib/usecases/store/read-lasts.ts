import 'server-only';
import { z } from 'zod';
import { usesSaid } from '@/lib/data/household-use';
import { canEnter } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { type Forecast, forecastOf } from './forecast';
import { shownHolding, storeOf } from './store-of';

/** Will it last? Every kind that the viewer's holdings put in this winter: when it runs out, and whether that is soon enough. */
export const readLasts = query({
  name: 'read-lasts',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { db, scope, today } = context;
    const { holdings, lots } = await storeOf(context);
    const said = await usesSaid(
      db,
      scope,
      holdings.map(({ id }) => id),
    );
    const kinds = holdings.flatMap(({ id: holdingId }) =>
      [...new Set(lots.filter((lot) => lot.holdingId === holdingId).map(({ keepingKey }) => keepingKey))].flatMap(
        (keepingKey) => {
          const own = said.find((one) => one.holdingId === holdingId && one.keepingKey === keepingKey);
          const forecast = forecastOf({ holdingId, keepingKey, lots, said: own, today });
          return forecast ? [headOf(forecast)] : [];
        },
      ),
    );
    return { today, units: scope.units, holdings: holdings.map(shownHolding), kinds };
  },
});

function headOf({ holdingId, keepingKey, name, said, runsOut, enough, newCropOn, lots, piecesPerWeek }: Forecast) {
  return { holdingId, keepingKey, name, said, runsOut, enough, newCropOn, lots: lots.length, piecesPerWeek };
}
