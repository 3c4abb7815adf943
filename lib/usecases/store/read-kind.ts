import 'server-only';
import { z } from 'zod';
import { usesSaid } from '@/lib/data/household-use';
import { harvestsForLots } from '@/lib/data/lot-harvest';
import { keepingOf } from '@/lib/domain/catalogue/keepings';
import { canEnter } from '@/lib/domain/policy/standing';
import { daysToCover } from '@/lib/domain/store/of-one-winter';
import { pieceWeightG } from '@/lib/domain/store/piece-weight';
import { wantedArea } from '@/lib/domain/store/wanted-area';
import { yieldsOf } from '../harvest/yields-of';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { type Forecast, forecastOf } from './forecast';
import { storeOf } from './store-of';

/** One kind of one household: when it runs out, what of it is used first, and how much of it to grow next. */
export const readKind = query({
  name: 'read-kind',
  allow: canEnter,
  input: z.object({ holdingId: z.uuid().nullish(), keepingKey: z.string().max(60) }),
  read: async (context, { holdingId: asked, keepingKey }) => {
    const { db, scope, today } = context;
    const { holdings, lots } = await storeOf(context);
    const keeping = keepingOf(keepingKey);
    const ids = holdings.map(({ id }) => id).filter((id) => !asked || id === asked);
    // Where nobody says whose, it is that of the household that has some.
    const has = (id: string) => lots.some((lot) => lot.holdingId === id && lot.keepingKey === keepingKey);
    const holdingId = ids.find(has) ?? ids[0];
    if (!keeping || !holdingId) throw new NotFound();
    const uses = await usesSaid(db, scope, [holdingId]);
    const said = uses.find((one) => one.keepingKey === keepingKey);
    const forecast = forecastOf({ holdingId, keepingKey, lots, said, today });
    if (!forecast) return { today, units: scope.units, name: keeping.name, forecast: null, wanted: null };
    const { winter: _, ...shown } = forecast;
    return {
      ...{ today, units: scope.units, name: keeping.name, forecast: shown },
      wanted: await wantedOf(context, forecast),
    };
  },
});

/** How much to put in next time, and on how much ground; null while the use or the day of the new crop is not known. */
async function wantedOf(context: ReadContext, { holdingId, keepingKey, winter, lasts, said }: Forecast) {
  if (!lasts.use || !said?.newCropFrom) return null;
  const cropKey = await cropGrown(context, holdingId, keepingKey, winter);
  const yields = cropKey ? await yieldsOf(context, { holdingId, cropKey }) : [];
  // A season in which nothing came up says nothing of what a square metre bears.
  const yieldsGPerM2 = yields.filter((one) => one > 0);
  const days = daysToCover(winter, said.newCropFrom);
  const pieceG = pieceWeightG(keepingKey, winter);
  const placeTenthC = winter.at(-1)?.placeTenthC ?? null;
  const found = wantedArea({ keepingKey, use: lasts.use, days, pieceG, placeTenthC, yieldsGPerM2 });
  return { ...found, days, cropKey, pieceG, yields: yieldsGPerM2.length };
}

// The crop that was last harvested into it; where none is on record, the first that is kept so.
async function cropGrown(
  { db, scope }: ReadContext,
  holdingId: string,
  keepingKey: string,
  lots: Forecast['winter'],
): Promise<string | null> {
  const ids = lots.flatMap(({ harvestId }) => harvestId ?? []);
  const harvests = await harvestsForLots(db, scope, ids, [holdingId]);
  return harvests.at(-1)?.cropKey ?? keepingOf(keepingKey)?.cropKeys[0] ?? null;
}
