import { materialOf } from '../catalogue/materials';
import { mealOf } from '../catalogue/meals';
import {
  type Content,
  type Contents,
  type Nutrient,
  nutrientContentsOf,
  nutrients,
} from '../catalogue/nutrient-contents';
import { type SourceKey, standingOf } from '../catalogue/sources';
import { nutrientMgPerM2 } from './dressing';
import { type Application, type AvailableShare, availableShares } from './first-year';

export type Dressing = Application & { readonly materialKey: string; readonly rateGPerM2: number };

/** What a dressing brings [mg/m²], by the figure that is used and by the least and most that any source gives. */
export type Amount = {
  readonly mgPerM2: number;
  readonly leastMgPerM2: number;
  readonly mostMgPerM2: number;
  readonly source: SourceKey;
};

/** Nitrogen for the next crop: what may be counted on by the first account, and the range of all of them. */
export type FirstYear = {
  readonly mgPerM2: number;
  readonly leastMgPerM2: number;
  readonly mostMgPerM2: number;
  readonly shares: readonly AvailableShare[];
};

export type SupplyReason =
  | { readonly code: 'content-not-known' | 'from-memory'; readonly nutrient: Nutrient }
  | {
      readonly code: 'sources-differ';
      readonly nutrient: Nutrient;
      readonly leastMgPerM2: number;
      readonly mostMgPerM2: number;
    }
  | { readonly code: 'availability-not-known' | 'summer-is-for-grass' | 'summer-not-in-table' | 'rain-assumed' };

export type Supply = Readonly<Record<Nutrient, Amount | null>> & {
  readonly firstYear: FirstYear | null;
  readonly reasons: readonly SupplyReason[];
};

const noContents: Contents = { nitrogen: null, phosphate: null, potash: null, magnesia: null };

/**
 * What a dressing of manure, compost or meal supplies: in all, and of its nitrogen in the first year.
 *
 * Method: rate × content; first-year nitrogen: the same times the share that is available, each rounded once.
 *
 * @param dressing  a material or meal of the catalogue; rate whole number ≥ 0 [g/m²]
 * @returns         least ≤ figure ≤ most for every nutrient; null where it is not known, with the reason
 * @throws RangeError on an unknown material, or a rate that is no whole number from 0
 * @source          contents and availability: the catalogue's
 * @example         5 kg/m² of old horse manure dug in in winter → 25,000 mg/m² N in all, 2,500 for the next crop (6,250
 *                  by German law)
 */
export function supplyOf(dressing: Dressing): Supply {
  const contents = contentsOf(dressing.materialKey);
  const amounts = Object.fromEntries(
    nutrients.map((nutrient) => [nutrient, amountOf(dressing.rateGPerM2, contents[nutrient])]),
  ) as Record<Nutrient, Amount | null>;
  const firstYear = firstYearOf(dressing, contents.nitrogen);
  return {
    ...amounts,
    firstYear,
    reasons: [
      ...nutrients.flatMap((nutrient) => reasonsFor(nutrient, contents[nutrient], amounts[nutrient])),
      ...tableReasons(dressing, firstYear),
    ],
  };
}

/** What a material or meal holds. @throws RangeError where the catalogue has neither. */
export function contentsOf(materialKey: string): Contents {
  const known = mealOf(materialKey) ?? nutrientContentsOf(materialKey);
  if (!known && !materialOf(materialKey)) throw new RangeError(`no such material: ${materialKey}`);
  return known ?? noContents;
}

function amountOf(rateGPerM2: number, content: Content | null): Amount | null {
  const mgPerM2 = nutrientMgPerM2(rateGPerM2, content?.gPerT ?? 0);
  if (!content) return null;
  const all = [content, ...content.otherwise].map(({ gPerT }) => nutrientMgPerM2(rateGPerM2, gPerT));
  return { mgPerM2, leastMgPerM2: Math.min(...all), mostMgPerM2: Math.max(...all), source: content.source };
}

function firstYearOf(dressing: Dressing, nitrogen: Content | null): FirstYear | null {
  if (!nitrogen) return null;
  const shares = availableShares(dressing.materialKey, dressing);
  // Of nothing, nothing comes free, whatever the share.
  if (nitrogen.gPerT === 0) return { mgPerM2: 0, leastMgPerM2: 0, mostMgPerM2: 0, shares };
  const [first] = shares;
  if (!first) return null;
  const freed = (percent: number) => nutrientMgPerM2(dressing.rateGPerM2, nitrogen.gPerT, percent);
  return {
    mgPerM2: freed(first.leastPercent),
    leastMgPerM2: freed(Math.min(...shares.map(({ leastPercent }) => leastPercent))),
    mostMgPerM2: freed(Math.max(...shares.map(({ mostPercent }) => mostPercent))),
    shares,
  };
}

function reasonsFor(nutrient: Nutrient, content: Content | null, amount: Amount | null): SupplyReason[] {
  if (!content || !amount) return [{ code: 'content-not-known', nutrient }];
  const { leastMgPerM2, mostMgPerM2 } = amount;
  return [
    ...(standingOf(content.source) === 'from memory' ? [{ code: 'from-memory' as const, nutrient }] : []),
    ...(leastMgPerM2 < mostMgPerM2 ? [{ code: 'sources-differ' as const, nutrient, leastMgPerM2, mostMgPerM2 }] : []),
  ];
}

function tableReasons(dressing: Dressing, firstYear: FirstYear | null): SupplyReason[] {
  if (!firstYear) return [{ code: 'availability-not-known' }];
  if (!nutrientContentsOf(dressing.materialKey)?.farmyard) return [];
  if (dressing.applied === 'summer')
    return [{ code: dressing.incorporated ? 'summer-not-in-table' : 'summer-is-for-grass' }];
  return dressing.applied === 'spring' ? [] : [{ code: 'rain-assumed' }];
}
