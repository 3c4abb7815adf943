import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { harvestsOf } from '@/lib/data/harvest';
import { sharingHoldings } from '@/lib/data/result-sharing';
import { yieldsSaidOf } from '@/lib/domain/harvest/published-yield';
import { seasonYields } from '@/lib/domain/harvest/season-yields';
import { cropYields } from '@/lib/domain/review/crop-yields';
import type { ReadContext } from '../operation';
import { plantingsOf, standing } from '../harvest/yields-of';

/** What crops yielded in a season on the ground of those who let it be compared, from three holdings on, beside what is printed. */
export async function seasonHarvest({ db, scope, today }: ReadContext, season: number) {
  const sharing = await sharingHoldings(db, scope, today);
  const crops = await cropsOf(db, scope);
  const nameOf = (key: string) => crops.get(key)?.name ?? key;
  const harvests = standing(await harvestsOf(db, scope, [...sharing]));
  const weighed = [...sharing].flatMap((holdingId) => {
    const own = harvests.filter((one) => one.holdingId === holdingId);
    return seasonYields(plantingsOf(own), own, today)
      .filter((one) => one.season === season && one.measure === 'grams' && !one.isSoFar)
      .map(({ cropKey, amount: massG, areaCm2 }) => ({ holdingId, cropKey, massG, areaCm2 }));
  });
  const { told, withheld } = cropYields(weighed);
  return {
    agreed: sharing.size,
    told: told.map(({ cropKey, ...one }) => ({
      ...one,
      cropKey,
      name: nameOf(cropKey),
      said: yieldsSaidOf(cropKey)[0] ?? null,
    })),
    withheld: withheld.map(nameOf),
  };
}
