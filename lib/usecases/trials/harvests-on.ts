import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { harvestsOf } from '@/lib/data/harvest';
import { plantingsIn } from '@/lib/data/planting';
import type { TrialRecord } from '@/lib/data/trial';
import type { BlockRecord, GroundRecord } from '@/lib/data/trial-block';
import { harvestSeason } from '@/lib/domain/harvest/standing-crop';
import { type FromHarvests, fromHarvests } from '@/lib/domain/trial/from-harvests';
import type { ReadContext } from '../operation';

/** What the harvests of a block's holding say of a piece of its ground. Whoever calls has looked that the viewer is one of its holders. */
export async function harvestsOn(
  { db, scope }: Pick<ReadContext, 'db' | 'scope'>,
  { cropKey, season, measure }: TrialRecord,
  { holdingId }: BlockRecord,
  { frameId, footprint }: GroundRecord,
): Promise<FromHarvests> {
  const crops = await cropsOf(db, scope);
  const plantings = await plantingsIn(db, scope, crops, { from: season, to: season }, [frameId]);
  const harvests = await harvestsOf(db, scope, [holdingId], cropKey);
  const counted = harvests.filter(
    (one) => one.measure === measure && harvestSeason(one.planting, one.on) === season && !one.planting.isTakenBack,
  );
  return fromHarvests(
    footprint,
    plantings
      .filter((planting) => planting.cropKey === cropKey)
      .map((planting) => ({
        footprint: planting.footprint,
        amounts: counted.filter(({ plantingId }) => plantingId === planting.id).map(({ amount }) => amount),
      })),
  );
}
