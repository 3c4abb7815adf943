import 'server-only';
import { harvestsOf, type LoggedHarvest } from '@/lib/data/harvest';
import type { PickedPlanting } from '@/lib/domain/harvest/season-yields';
import { yieldsToPlanBy } from '@/lib/domain/harvest/yields-to-plan-by';
import type { ReadContext } from '../operation';

/**
 * What a crop yielded on a holding's ground, one figure for each bed and season of the last ones, to plan by [g/m²]. Whoever calls has
 * looked that the viewer is one of its holders: nobody else learns yields.
 */
export async function yieldsOf(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  { holdingId, cropKey }: { readonly holdingId: string; readonly cropKey: string },
): Promise<number[]> {
  const harvests = standing(await harvestsOf(db, scope, [holdingId], cropKey));
  return yieldsToPlanBy(plantingsOf(harvests), harvests, today);
}

/** Harvests whose plantings are still on record. */
export function standing(harvests: readonly LoggedHarvest[]): LoggedHarvest[] {
  return harvests.filter(({ planting }) => !planting.isTakenBack);
}

/** The plantings that harvests came from, each once. */
export function plantingsOf(harvests: readonly LoggedHarvest[]): PickedPlanting[] {
  return [...new Map(harvests.map(({ planting }) => [planting.id, planting])).values()];
}
