import { lastYearsShare } from '../catalogue/nitrogen-limits';
import { wholeFrom } from '../quantity/checked';
import { type CropDemands, type Demand, demandOf } from './demand';
import type { Supply } from './supply';

export type Range = { readonly mgPerM2: number; readonly leastMgPerM2: number; readonly mostMgPerM2: number };

export type BalanceReason =
  /** The tables do not name the crop; or they give no harvested part of it. */
  | { readonly code: 'no-official-demand' | 'no-official-removal' }
  /** The demand counts what the soil itself gives to a depth, which nobody has measured here. */
  | { readonly code: 'demand-counts-the-soil' }
  | { readonly code: 'supply-not-known'; readonly nutrient: 'nitrogen' | 'phosphate' }
  | { readonly code: 'last-year-not-known' }
  /** The dressing alone, at the least, brings more than the whole demand, or than the ceiling. */
  | { readonly code: 'over-demand'; readonly name: string; readonly byMgPerM2: number }
  | { readonly code: 'over-ceiling'; readonly byMgPerM2: number }
  /** It brings less, at the most, or more, at the least, than the harvest takes away. */
  | {
      readonly code: 'less-than-removed' | 'more-than-removed';
      readonly nutrient: 'nitrogen' | 'phosphate';
      readonly name: string;
      readonly byMgPerM2: number;
    };

export type Balance = CropDemands & {
  /** Nitrogen for this crop: the dressings' first year and what is left of last year's; null where any is unknown. */
  readonly nitrogen: Range | null;
  /** Phosphate in all, as P2O5. */
  readonly phosphate: Range | null;
  readonly lastYearMgPerM2: number | null;
  readonly reasons: readonly BalanceReason[];
};

/**
 * What dressings supply a crop with in their first year, beside what it is officially said to demand and to remove.
 *
 * Method: first-year nitrogen of all dressings, and a tenth of last year's organic nitrogen, are summed; where a
 * dressing's is not known the sum is not either; last year's counts as nothing until it is known. Nothing is subtracted
 * from the demand: the soil's own part is unknown.
 *
 * @param cropKey                a crop of the catalogue
 * @param supplies               of this season's dressings, each by `supplyOf`; none brings nothing
 * @param lastYearTotalMgPerM2   total organic nitrogen of the year before; whole number ≥ 0, null where unknown [mg/m²]
 * @returns                      both sides, and codes for what is over, short or not known
 * @throws RangeError            on a total that is no whole number from 0
 * @source                       Germany, Düngeverordnung, Anlage 4 and § 4(1) no. 5
 * @example                      leeks after 5 kg/m² of horse manure → 2,500 (to 6,250) beside a demand of 25,000 mg/m²
 */
export function balanceOf(cropKey: string, supplies: readonly Supply[], lastYearTotalMgPerM2: number | null): Balance {
  const lastYearMgPerM2 =
    lastYearTotalMgPerM2 === null
      ? null
      : Math.round((wholeFrom(0, lastYearTotalMgPerM2) * lastYearsShare.percent) / 100);
  const carried = lastYearMgPerM2 ?? 0;
  const nitrogen = sumOf([
    ...supplies.map(({ firstYear }) => firstYear),
    { mgPerM2: carried, leastMgPerM2: carried, mostMgPerM2: carried },
  ]);
  const phosphate = sumOf(supplies.map((supply) => supply.phosphate));
  const official = demandOf(cropKey);
  return {
    ...official,
    nitrogen,
    phosphate,
    lastYearMgPerM2,
    reasons: [
      ...unknowns(official, nitrogen, phosphate, lastYearMgPerM2),
      ...(nitrogen ? nitrogenReasons(official, nitrogen) : []),
      ...(phosphate ? removalReasons(official, 'phosphate', phosphate) : []),
    ],
  };
}

function sumOf(parts: readonly (Range | null)[]): Range | null {
  return parts.reduce<Range | null>(
    (sum, part) =>
      sum && part
        ? {
            mgPerM2: sum.mgPerM2 + part.mgPerM2,
            leastMgPerM2: sum.leastMgPerM2 + part.leastMgPerM2,
            mostMgPerM2: sum.mostMgPerM2 + part.mostMgPerM2,
          }
        : null,
    { mgPerM2: 0, leastMgPerM2: 0, mostMgPerM2: 0 },
  );
}

function unknowns(
  { demands }: CropDemands,
  nitrogen: Range | null,
  phosphate: Range | null,
  lastYearMgPerM2: number | null,
): BalanceReason[] {
  const demanded = demands.some(({ totalNitrogenMgPerM2 }) => totalNitrogenMgPerM2 !== null);
  const removed = demands.some(({ removedNitrogenMgPerM2 }) => removedNitrogenMgPerM2 !== null);
  return [
    { code: demanded ? 'demand-counts-the-soil' : 'no-official-demand' },
    ...(removed ? [] : [{ code: 'no-official-removal' as const }]),
    ...(nitrogen ? [] : [{ code: 'supply-not-known' as const, nutrient: 'nitrogen' as const }]),
    ...(phosphate ? [] : [{ code: 'supply-not-known' as const, nutrient: 'phosphate' as const }]),
    ...(lastYearMgPerM2 === null ? [{ code: 'last-year-not-known' as const }] : []),
  ];
}

function nitrogenReasons(official: CropDemands, nitrogen: Range): BalanceReason[] {
  const overDemand = official.demands.flatMap(({ name, totalNitrogenMgPerM2 }) =>
    totalNitrogenMgPerM2 !== null && nitrogen.leastMgPerM2 > totalNitrogenMgPerM2
      ? [{ code: 'over-demand' as const, name, byMgPerM2: nitrogen.leastMgPerM2 - totalNitrogenMgPerM2 }]
      : [],
  );
  const over = official.ceiling ? nitrogen.leastMgPerM2 - official.ceiling.mgPerM2 : 0;
  return [
    ...overDemand,
    ...(over > 0 ? [{ code: 'over-ceiling' as const, byMgPerM2: over }] : []),
    ...removalReasons(official, 'nitrogen', nitrogen),
  ];
}

function removalReasons(
  { demands }: CropDemands,
  nutrient: 'nitrogen' | 'phosphate',
  supplied: Range,
): BalanceReason[] {
  return demands.flatMap((demand): BalanceReason[] => {
    const removed = removedOf(demand, nutrient);
    if (removed === null) return [];
    if (supplied.mostMgPerM2 < removed)
      return [{ code: 'less-than-removed', nutrient, name: demand.name, byMgPerM2: removed - supplied.mostMgPerM2 }];
    if (supplied.leastMgPerM2 > removed)
      return [{ code: 'more-than-removed', nutrient, name: demand.name, byMgPerM2: supplied.leastMgPerM2 - removed }];
    return [];
  });
}

function removedOf(demand: Demand, nutrient: 'nitrogen' | 'phosphate'): number | null {
  return nutrient === 'nitrogen' ? demand.removedNitrogenMgPerM2 : demand.removedPhosphateMgPerM2;
}
