import 'server-only';
import { yieldRecords } from '@/lib/data/lot-harvest';
import { yieldsPerArea } from '@/lib/domain/harvest/yield-per-area';
import type { ReadContext } from '../operation';

/** What the ground of a holding yielded of a crop, one figure for each bed and season on record; crop failures too [g/m²]. */
export async function yieldsOf(
  { db, scope }: Pick<ReadContext, 'db' | 'scope'>,
  { holdingId, cropKey }: { readonly holdingId: string; readonly cropKey: string },
): Promise<number[]> {
  const { plantings, harvests } = await yieldRecords(db, scope, holdingId, cropKey);
  return yieldsPerArea(plantings, harvests).flatMap(({ measure, perM2 }) => (measure === 'grams' ? [perM2] : []));
}
