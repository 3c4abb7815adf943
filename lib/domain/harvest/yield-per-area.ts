import type { Season } from '../calendar/season-of';
import { wholeFrom } from '../quantity/checked';

/** One harvest from a planting, as it was weighed or counted. */
export type HarvestRecord = {
  readonly plantingId: string;
  readonly measure: 'grams' | 'pieces';
  /** Whole grams or pieces. */
  readonly amount: number;
};

/** The planting that it came from; its ground counts once, however often it was picked. */
export type HarvestedPlanting = {
  readonly id: string;
  readonly bedId: string;
  readonly cropKey: string;
  readonly season: Season;
  readonly areaCm2: number;
};

/** What one crop yielded on one bed in one season. */
export type Yield = {
  readonly bedId: string;
  readonly cropKey: string;
  readonly season: Season;
  readonly measure: HarvestRecord['measure'];
  readonly amount: number;
  /** Ground of the plantings that were harvested in this measure [cm²]. */
  readonly areaCm2: number;
  /** Grams or pieces on a square metre, rounded to whole ones; the two above are exact. */
  readonly perM2: number;
  readonly harvests: number;
};

/**
 * What the ground yielded, by bed, crop and season.
 *
 * Method: amounts are summed, and so are the footprints of the plantings that anything was picked from; a planting that nothing was
 * recorded of has no yield, and makes none smaller. What was weighed and what was counted stand apart.
 *
 * @param plantings  unique ids; areas whole numbers ≥ 1 [cm²]
 * @param harvests   whole amounts ≥ 0, each of one of the plantings
 * @returns          by season, bed, crop and measure; amounts sum to all that was harvested
 * @throws RangeError on an unknown planting, one that stands twice, or amounts and areas that are none
 * @source           arithmetic
 * @example          1,200 g and 800 g off 1 m² of leeks → 2,000 g/m², 2 harvests
 */
export function yieldsPerArea(plantings: readonly HarvestedPlanting[], harvests: readonly HarvestRecord[]): Yield[] {
  const byId = new Map(plantings.map((planting) => [planting.id, planting]));
  if (byId.size < plantings.length) throw new RangeError('a planting stands twice');
  const groups = new Map<string, { readonly planting: HarvestedPlanting; readonly records: HarvestRecord[] }>();
  for (const record of harvests) {
    const planting = byId.get(record.plantingId);
    if (!planting) throw new RangeError(`no such planting: ${record.plantingId}`);
    const key = JSON.stringify([planting.season, planting.bedId, planting.cropKey, record.measure]);
    const group = groups.get(key) ?? { planting, records: [] };
    group.records.push(record);
    groups.set(key, group);
  }
  return [...groups]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([, { planting, records }]) => yieldOf(planting, records, byId));
}

function yieldOf(
  { bedId, cropKey, season }: HarvestedPlanting,
  records: readonly HarvestRecord[],
  byId: ReadonlyMap<string, HarvestedPlanting>,
): Yield {
  const picked = [...new Set(records.map(({ plantingId }) => plantingId))];
  const areaCm2 = picked.reduce((sum, id) => sum + wholeFrom(1, byId.get(id)?.areaCm2 ?? 0), 0);
  const amount = records.reduce((sum, record) => sum + wholeFrom(0, record.amount), 0);
  const measure = records[0]?.measure ?? 'grams';
  const perM2 = Math.round((amount * 10_000) / areaCm2);
  return { bedId, cropKey, season, measure, amount, areaCm2, perM2, harvests: records.length };
}
