import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { harvestsOf } from '@/lib/data/harvest';
import { seasonYields } from '@/lib/domain/harvest/season-yields';
import { cropYields } from '@/lib/domain/review/crop-yields';
import { resultHoldings } from '../notes/bed-results';
import type { ReadContext } from '../operation';
import { plantingsOf, standing } from '../harvest/yields-of';

/** What crops yielded in a season on the ground of those who let it be compared, from three neighbours on. */
export async function seasonHarvest(context: ReadContext, season: number) {
  const { db, scope, today } = context;
  const { shared, own } = await resultHoldings(context);
  const crops = await cropsOf(db, scope);
  const harvests = standing(await harvestsOf(db, scope, [...shared]));
  const weighed = [...shared].flatMap((holdingId) => {
    const its = harvests.filter((one) => one.holdingId === holdingId);
    return seasonYields(plantingsOf(its), its, today)
      .filter((one) => one.season === season && one.measure === 'grams' && !one.isSoFar)
      .map(({ cropKey, amount: massG, areaCm2 }) => ({
        holdingId,
        isOwn: own.has(holdingId),
        cropKey,
        massG,
        areaCm2,
      }));
  });
  const { told, withheld } = cropYields(weighed);
  return {
    agreed: shared.size,
    told: told.map((one) => ({ ...one, name: crops.get(one.cropKey)?.name ?? one.cropKey })),
    /** Which crops they are is not said: that somebody weighs one is theirs to tell. */
    someWithheld: withheld.length > 0,
  };
}
