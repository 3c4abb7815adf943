import type { CalendarDate } from '../calendar/calendar-date';
import { type Growing, harvestSeason, isPickedOut } from './standing-crop';
import { type HarvestRecord, type Yield, yieldsPerArea } from './yield-per-area';

/** A planting that something was picked from. */
export type PickedPlanting = Growing & { readonly id: string; readonly bedId: string; readonly areaCm2: number };

/** One harvest, with its day. */
export type Picking = HarvestRecord & { readonly on: CalendarDate };

export type SeasonYield = Yield & {
  /** Something of it still stands, so that more may come. */
  readonly isSoFar: boolean;
};

/**
 * What the ground yielded in each season, by bed and crop: a planting that stood for years counts in each of them by itself.
 *
 * @param plantings  unique ids; areas whole numbers ≥ 1 [cm²]
 * @param pickings   whole amounts ≥ 0, each of one of the plantings
 * @param today      the day it is asked
 * @returns          as `yieldsPerArea`; amounts sum to all that was picked
 * @throws RangeError as `yieldsPerArea`
 * @source           arithmetic
 * @example          rhubarb of 2021 on 1 m²: 3 kg in 2025, 4 kg in 2026 → 3,000 and 4,000 g/m²
 */
export function seasonYields(
  plantings: readonly PickedPlanting[],
  pickings: readonly Picking[],
  today: CalendarDate,
): SeasonYield[] {
  const byId = new Map(plantings.map((planting) => [planting.id, planting]));
  if (byId.size < plantings.length) throw new RangeError('a planting stands twice');
  const grown = new Map<string, PickedPlanting & { readonly season: number }>();
  const records = pickings.map(({ plantingId, on, measure, amount }) => {
    const planting = byId.get(plantingId);
    if (!planting) throw new RangeError(`no such planting: ${plantingId}`);
    const season = harvestSeason(planting, on);
    const id = `${plantingId} ${season}`;
    grown.set(id, { ...planting, id, season });
    return { plantingId: id, measure, amount };
  });
  const parts = [...grown.values()];
  return yieldsPerArea(parts, records).map((one) => ({
    ...one,
    isSoFar: parts.some((part) => isSameGround(part, one) && !isPickedOut(part, one.season, today)),
  }));
}

function isSameGround(part: PickedPlanting & { readonly season: number }, one: Yield): boolean {
  return part.bedId === one.bedId && part.cropKey === one.cropKey && part.season === one.season;
}
