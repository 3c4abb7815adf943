import 'server-only';
import type { WorkRecord } from '@/lib/data/ground-work';
import type { PlantingRecord } from '@/lib/data/planting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { mealOf } from '@/lib/domain/catalogue/meals';
import { type HarvestWait, harvestWaits } from '@/lib/domain/food-safety/harvest-waits';
import { type LimeClash, limeClashes } from '@/lib/domain/lime/lime-clashes';
import { bareKey } from '@/lib/domain/rotation/recorded-planting';

/** A crop whose harvest has to wait, as the screens tell it. */
export type ToldWait = HarvestWait & {
  readonly cropName: string;
  readonly season: number;
  readonly planned: boolean;
  readonly footprint: PlantingRecord['footprint'];
};

type Grown = Pick<
  PlantingRecord,
  | 'id'
  | 'cropKey'
  | 'cropName'
  | 'footprint'
  | 'firstSeason'
  | 'lastSeason'
  | 'planned'
  | 'sownOn'
  | 'plantedOn'
  | 'clearedOn'
>;

/** The plantings of one frame whose harvest has to wait yet for the manure of their ground. */
export function waitsOf(plantings: readonly Grown[], works: readonly WorkRecord[], today: CalendarDate): ToldWait[] {
  const crops = plantings.filter(({ cropKey }) => cropKey !== bareKey);
  const byId = new Map(crops.map((crop) => [crop.id, crop]));
  const manurings = works.filter(({ kind }) => kind === 'manured');
  return harvestWaits(
    crops.map(({ sownOn, plantedOn, ...crop }) => ({ ...crop, begunOn: earlier(sownOn, plantedOn) })),
    manurings,
    today,
  ).flatMap((wait) => {
    const crop = byId.get(wait.plantingId);
    if (!crop) return [];
    const { cropName, firstSeason: season, planned, footprint } = crop;
    return [{ ...wait, cropName, season, planned, footprint }];
  });
}

function earlier(sownOn: CalendarDate | null, plantedOn: CalendarDate | null): CalendarDate | null {
  return sownOn && plantedOn ? (sownOn < plantedOn ? sownOn : plantedOn) : (sownOn ?? plantedOn);
}

/** Whether work limed the ground: with lime, or with a meal that raises the pH as lime does. */
export function isLiming({ kind, materialKey }: WorkRecord): boolean {
  return kind === 'limed' || (kind === 'fed' && mealOf(materialKey ?? '')?.limes === true);
}

/** Where lime and manure of last year's season or later came too close on the ground of one frame. */
export function limeClashesOf(works: readonly WorkRecord[], year: number): LimeClash[] {
  const lately = works.filter(({ season }) => season >= year - 1);
  return limeClashes(
    lately.filter(isLiming),
    lately.filter(({ kind }) => kind === 'manured'),
  );
}
