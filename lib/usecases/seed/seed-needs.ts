import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { HoldingOnDay } from '@/lib/data/holding';
import { type PlantingRecord, plantingsIn } from '@/lib/data/planting';
import { ownSowings } from '@/lib/data/seed-sowing';
import { type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import { overlap } from '@/lib/domain/ground/footprint';
import type { OwnSowing } from '@/lib/domain/seed/own-sowing';
import { type PlantingNeed, seedNeed } from '@/lib/domain/seed/seed-need';
import type { ReadContext } from '../operation';

/** A planting of a season, and the seed it needs; no need where nobody gives its distances. */
export type PlantingLine = {
  readonly id: string;
  readonly cropKey: string;
  readonly cropName: string;
  readonly variety: string | null;
  readonly plotNumber: string;
  readonly bedNames: readonly string[];
  readonly footprint: PlantingRecord['footprint'];
  /** Sown or planted already, or grown: it needs no seed any more. */
  readonly isInGround: boolean;
  readonly own: OwnSowing | null;
  readonly need: PlantingNeed | null;
};

/** What is begun on a holding's ground in a season, and what each planting needs to be sown, by plot and bed. */
export async function seedNeeds(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  { id: holdingId, plots }: HoldingOnDay,
  season: number,
): Promise<PlantingLine[]> {
  const plotIds = plots.map(({ id }) => id);
  const beds = plotIds.length ? await bedsStanding(db, scope, today, today, plotIds) : [];
  const frames = [...new Set(beds.map(({ frameId }) => frameId))];
  const [crops, owns] = await Promise.all([cropsOf(db, scope), ownSowings(db, scope)]);
  const plantings = await plantingsIn(db, scope, crops, { from: season, to: season }, frames);
  const numbers = new Map(plots.map(({ id, number }) => [id, number]));
  return plantings
    .filter((one) => one.firstSeason === season && one.cropKey !== 'bare')
    .filter((one) => one.holdingId === holdingId || one.holdingId === null)
    .flatMap((one) => {
      const here = beds.filter((bed) => bed.frameId === one.frameId && overlap(bed.footprint, one.footprint));
      return here[0] ? [{ one, here, plotNumber: numbers.get(here[0].plotId) ?? '' }] : [];
    })
    .map(({ one, here, plotNumber }): PlantingLine => {
      const { id, cropKey, cropName, footprint } = one;
      const own = owns.get(cropKey) ?? null;
      const variety = one.holdingId === holdingId ? one.variety : null;
      const isInGround = inGround(one, today);
      const bedNames = here.map(({ name }) => name);
      const along = footprint.lengthCm >= footprint.widthCm ? 'length' : 'width';
      const need = seedNeed({ cropKey, footprint, along, ...own });
      return { id, cropKey, cropName, variety, plotNumber, bedNames, footprint, isInGround, own, need };
    });
}

// What is recorded without a day, of this season or one gone by, was grown; what is planned waits for its day.
function inGround({ planned, sownOn, plantedOn, firstSeason }: PlantingRecord, today: CalendarDate): boolean {
  const year = yearOf(today);
  const isBegun = [sownOn, plantedOn].some((day) => day !== null && day <= today);
  return isBegun || firstSeason < year || (!planned && firstSeason === year);
}
