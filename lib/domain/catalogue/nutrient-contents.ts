import type { SourceKey } from './sources';

export const nutrients = ['nitrogen', 'phosphate', 'potash', 'magnesia'] as const;
/** Total N, P2O5, K2O and MgO, as farm tables give them. */
export type Nutrient = (typeof nutrients)[number];

export type Figure = {
  readonly gPerT: number;
  readonly source: SourceKey;
  /** The dry matter that the figure goes with, where it is one of several [percent]. */
  readonly dryMatterPercent?: number;
};
/** How much of a nutrient a material holds as it lies [g/t], and what else is said of it. */
export type Content = Figure & { readonly otherwise: readonly Figure[] };
export type Contents = { readonly [N in Nutrient]: Content | null };

/** Of a tonne as it lies; null where no figure was found. */
export type NutrientContents = Contents & {
  readonly materialKey: string;
  /** Farmyard manure: what the availability table speaks of. */
  readonly farmyard: boolean;
  /** Of the total nitrogen, what German law counts at the least in the year of application [percent]. */
  readonly leastEfficiencyPercent: number;
};

/**
 * A content in grams a tonne, with what other sources say: each a source, grams a tonne and, for poultry, the dry
 * matter.
 */
export function content(
  source: SourceKey,
  gPerT: number,
  ...otherwise: readonly (readonly [SourceKey, number, number?])[]
): Content {
  return {
    gPerT,
    source,
    otherwise: otherwise.map(([from, figure, dryMatterPercent]) => ({
      source: from,
      gPerT: figure,
      ...(dryMatterPercent === undefined ? {} : { dryMatterPercent }),
    })),
  };
}

/**
 * Total nutrients of the heaped materials. A published figure comes before a remembered one, and the one nearer home
 * before others. Mixed manure lies between its parts, horse and pig or sheep. Poultry
 * manure follows its dry matter, which is usually about 35 % moist and 60 % as litter.
 */
// biome-ignore format: one material a row
export const nutrientContents: readonly NutrientContents[] = [
  { materialKey: 'horse-manure', farmyard: true, leastEfficiencyPercent: 25,
    nitrogen: content('rb209-manure', 5000, ['rb209-manure-2010', 7000], ['hoduflu', 4400], ['lpelc-horse', 6000], ['earth-kind', 6000]), phosphate: content('hoduflu', 2500, ['lpelc-horse', 2500], ['earth-kind', 3000], ['from-memory', 5000]),
    potash: content('earth-kind', 6000, ['lpelc-horse', 4500], ['from-memory', 6000]), magnesia: content('from-memory', 1500) },
  { materialKey: 'cattle-manure', farmyard: true, leastEfficiencyPercent: 25,
    nitrogen: content('rb209-manure', 6000, ['hoduflu', 4500]), phosphate: content('hoduflu', 3000, ['from-memory', 3200]),
    potash: content('from-memory', 9400), magnesia: content('from-memory', 1800) },
  { materialKey: 'mixed-manure', farmyard: true, leastEfficiencyPercent: 25,
    nitrogen: content('common-practice', 6000, ['rb209-manure', 5000], ['rb209-manure', 7000]), phosphate: null, potash: null, magnesia: null },
  { materialKey: 'pig-manure', farmyard: true, leastEfficiencyPercent: 30,
    nitrogen: content('rb209-manure', 7000, ['hoduflu', 8800], ['earth-kind', 6000]), phosphate: content('hoduflu', 6600, ['earth-kind', 5000], ['from-memory', 6000]),
    potash: content('earth-kind', 4000, ['from-memory', 8000]), magnesia: content('from-memory', 1800) },
  { materialKey: 'sheep-manure', farmyard: true, leastEfficiencyPercent: 25,
    nitrogen: content('rb209-manure', 7000, ['hoduflu', 8200], ['earth-kind', 9000]), phosphate: content('hoduflu', 3700, ['earth-kind', 5000], ['from-memory', 3200]),
    potash: content('earth-kind', 8000, ['from-memory', 8000]), magnesia: content('from-memory', 2800) },
  { materialKey: 'goat-manure', farmyard: true, leastEfficiencyPercent: 25,
    nitrogen: content('rb209-manure', 9500, ['hoduflu', 8200]), phosphate: content('hoduflu', 3700, ['from-memory', 4500]),
    potash: content('from-memory', 12_000), magnesia: content('from-memory', 1900) },
  { materialKey: 'duck-manure', farmyard: true, leastEfficiencyPercent: 30,
    nitrogen: content('rb209-manure', 6500), phosphate: content('from-memory', 5500), potash: content('from-memory', 7500), magnesia: content('from-memory', 2400) },
  { materialKey: 'rabbit-manure', farmyard: false, leastEfficiencyPercent: 30,
    nitrogen: content('hoduflu', 8900), phosphate: content('hoduflu', 6900), potash: null, magnesia: null },
  { materialKey: 'hen-manure', farmyard: false, leastEfficiencyPercent: 30,
    nitrogen: content('hoduflu', 21_000, ['from-memory', 9400, 20], ['from-memory', 19_000, 40]), phosphate: content('hoduflu', 17_000, ['from-memory', 8000, 20], ['from-memory', 12_000, 40]),
    potash: content('from-memory', 15_000, ['from-memory', 8500, 20]), magnesia: content('from-memory', 4300, ['from-memory', 2700, 20]) },
  { materialKey: 'hen-litter', farmyard: false, leastEfficiencyPercent: 30,
    nitrogen: content('hoduflu', 27_000, ['from-memory', 28_000, 60], ['from-memory', 37_000, 80]), phosphate: content('hoduflu', 30_000, ['from-memory', 17_000, 60], ['from-memory', 21_000, 80]),
    potash: content('from-memory', 21_000, ['from-memory', 27_000, 80]), magnesia: content('from-memory', 5900, ['from-memory', 7500, 80]) },
  { materialKey: 'broiler-litter', farmyard: false, leastEfficiencyPercent: 30,
    nitrogen: content('hoduflu', 32_000, ['from-memory', 28_000, 60], ['from-memory', 37_000, 80]), phosphate: content('hoduflu', 17_000, ['from-memory', 17_000, 60], ['from-memory', 21_000, 80]),
    potash: content('from-memory', 21_000, ['from-memory', 27_000, 80]), magnesia: content('from-memory', 5900, ['from-memory', 7500, 80]) },
  { materialKey: 'green-compost', farmyard: false, leastEfficiencyPercent: 3,
    nitrogen: content('wrap-compost', 8300, ['from-memory', 7500]), phosphate: content('from-memory', 3000), potash: content('from-memory', 6800), magnesia: content('from-memory', 3400) },
  { materialKey: 'food-compost', farmyard: false, leastEfficiencyPercent: 5,
    nitrogen: content('wrap-compost', 12_500, ['from-memory', 11_000]), phosphate: content('from-memory', 4900), potash: content('from-memory', 8000), magnesia: content('from-memory', 3400) },
  { materialKey: 'mushroom-compost', farmyard: false, leastEfficiencyPercent: 10,
    nitrogen: content('from-memory', 6000), phosphate: content('from-memory', 5000), potash: content('from-memory', 9000), magnesia: null },
];

/** What a heaped material holds; undefined where nothing was found, as for straw and wood chip. */
export function nutrientContentsOf(materialKey: string): NutrientContents | undefined {
  return nutrientContents.find((row) => row.materialKey === materialKey);
}
