import { sowing } from '../catalogue/germination-standards';
import type { SourceKey } from '../catalogue/sources';
import { plantedCrops, spacingsOf } from '../catalogue/spacings';
import type { Footprint } from '../ground/footprint';
import { type Apart, apartOf, type PlantsOn, plantsOn } from './plants-on';
import { massOfSeeds, type SeedMass } from './seed-mass';
import { germinationOf, seedsWanted } from './seeds-wanted';

/** What a planting needs to be sown or planted. */
export type PlantingNeed = PlantsOn & {
  readonly apart: Apart;
  readonly apartSource: SourceKey | 'own';
} & (
    | {
        readonly from: 'seed';
        readonly seeds: number;
        readonly germinationPercent: number;
        readonly germinationSource: SourceKey | 'own';
        readonly marginPercent: number;
        /** Null where nobody weighed the crop's seed. */
        readonly mass: SeedMass | null;
      }
    /** Sets, cloves, tubers: one for each plant. */
    | { readonly from: 'sets'; readonly sets: number }
  );

/**
 * The seed, or the sets, that a planting needs.
 *
 * Method: plants by the distances (`plantsOn`), seeds by germination and margin (`seedsWanted`), grams by the weight of seed
 * (`massOfSeeds`). What the grower says goes before what is printed.
 *
 * @param cropKey             of the catalogue
 * @param footprint           whole centimetres
 * @param along               which way the rows run
 * @param apart               the grower's own distances [cm]; null: as printed
 * @param from                seed or sets; null: as the crop usually is
 * @param germinationPercent  as on the packet or tested; null: the least that may be sold
 * @param marginPercent       null: the usual one
 * @returns                   null where nobody gives distances, neither the grower nor the catalogue
 * @throws RangeError on distances and shares that are none
 * @source                    each value's own, in the result
 * @example                   parsnips on 120 × 360 cm → 3 rows of 24, 72 plants, 150 seeds
 */
export function seedNeed(given: {
  readonly cropKey: string;
  readonly footprint: Footprint;
  readonly along: 'length' | 'width';
  readonly apart?: Apart | null;
  readonly from?: 'seed' | 'sets' | null;
  readonly germinationPercent?: number | null;
  readonly marginPercent?: number | null;
}): PlantingNeed | null {
  const { cropKey } = given;
  const [printed] = spacingsOf(cropKey);
  const apart = given.apart ?? (printed && apartOf(printed));
  if (!apart) return null;
  const stand = {
    ...plantsOn(given.footprint, apart, given.along),
    apart,
    apartSource: given.apart || !printed ? ('own' as const) : printed.source,
  };
  const isPlanted = plantedCrops.cropKeys.some((key) => key === cropKey);
  if ((given.from ?? (isPlanted ? 'sets' : 'seed')) === 'sets') return { ...stand, from: 'sets', sets: stand.plants };
  const usual = germinationOf(cropKey);
  const germinationPercent = given.germinationPercent ?? usual.percent;
  const marginPercent = given.marginPercent ?? sowing.marginPercent.value;
  const seeds = seedsWanted(stand.plants, germinationPercent, marginPercent);
  return {
    ...stand,
    from: 'seed',
    seeds,
    germinationPercent,
    germinationSource: given.germinationPercent == null ? usual.source : 'own',
    marginPercent,
    mass: massOfSeeds(cropKey, seeds),
  };
}
