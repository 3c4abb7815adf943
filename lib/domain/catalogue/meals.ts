import { type Contents, content } from './nutrient-contents';
import type { SourceKey } from './sources';

/**
 * A concentrated manure that is strewn by the handful: what it holds, what of it comes free, and how it is measured
 * out.
 */
export type Meal = Contents & {
  readonly key: string;
  readonly name: string;
  /** Of its total nitrogen, what comes free in so many days; null where no figure was found. */
  readonly release: {
    readonly days: number | null;
    readonly leastPercent: number;
    readonly mostPercent: number;
    readonly source: SourceKey;
  } | null;
  readonly usualRate: { readonly leastGPerM2: number; readonly mostGPerM2: number; readonly source: SourceKey };
  /** For a jar; null: weigh one. A proxy is another meal whose figure stands in. */
  readonly density: {
    readonly leastGPerL: number;
    readonly mostGPerL: number;
    readonly proxy: string | null;
    readonly source: SourceKey;
  } | null;
  /** It raises the pH as lime does, so it keeps lime's distance from manure. */
  readonly limes: boolean;
};

/**
 * The meals of the trade. Contents differ from bag to bag: the label on the bag goes before these. Blood and bone lies
 * between its parts, bone at 2 and blood at 10 % nitrogen. Poultry pellets: as dry poultry manure; German law counts 60
 * % of its nitrogen at the least.
 */
// biome-ignore format: one meal a row
export const meals: readonly Meal[] = [
  { key: 'hoof-and-horn', name: 'Hoof and horn', limes: false,
    nitrogen: content('earth-kind', 140_000, ['owen-1953', 129_800], ['owen-1953', 151_000]), phosphate: content('earth-kind', 0), potash: content('earth-kind', 0), magnesia: null,
    release: { days: 70, leastPercent: 62, mostPercent: 76, source: 'owen-1953' },
    usualRate: { leastGPerM2: 70, mostGPerM2: 140, source: 'from-memory' },
    density: { leastGPerL: 590, mostGPerL: 640, proxy: 'meat meal', source: 'fao-feeds' } },
  { key: 'bone-meal', name: 'Bone meal', limes: false,
    nitrogen: content('earth-kind', 40_000, ['earth-kind', 20_000]), phosphate: content('earth-kind', 220_000, ['earth-kind', 270_000]), potash: content('earth-kind', 0), magnesia: null,
    release: null,
    usualRate: { leastGPerM2: 70, mostGPerM2: 140, source: 'from-memory' },
    density: { leastGPerL: 800, mostGPerL: 960, proxy: null, source: 'fao-feeds' } },
  { key: 'dried-blood', name: 'Dried blood', limes: false,
    nitrogen: content('earth-kind', 100_000), phosphate: content('earth-kind', 15_000), potash: content('earth-kind', 0), magnesia: null,
    release: null,
    usualRate: { leastGPerM2: 35, mostGPerM2: 70, source: 'from-memory' },
    density: { leastGPerL: 610, mostGPerL: 610, proxy: null, source: 'fao-feeds' } },
  { key: 'blood-bone', name: 'Blood and bone', limes: false,
    nitrogen: content('from-memory', 50_000, ['earth-kind', 20_000], ['earth-kind', 100_000]), phosphate: content('from-memory', 50_000, ['earth-kind', 15_000], ['earth-kind', 270_000]), potash: null, magnesia: null,
    release: null,
    usualRate: { leastGPerM2: 70, mostGPerM2: 140, source: 'from-memory' },
    density: { leastGPerL: 640, mostGPerL: 640, proxy: 'meat and bone meal', source: 'fao-feeds' } },
  { key: 'poultry-pellets', name: 'Poultry manure pellets', limes: false,
    nitrogen: content('from-memory', 37_000), phosphate: content('from-memory', 21_000), potash: content('from-memory', 27_000), magnesia: content('from-memory', 7500),
    release: { days: null, leastPercent: 60, mostPercent: 60, source: 'duev-efficiency' },
    usualRate: { leastGPerM2: 100, mostGPerM2: 200, source: 'from-memory' },
    density: null },
  { key: 'wood-ash', name: 'Wood ash', limes: true,
    nitrogen: content('earth-kind', 0), phosphate: content('earth-kind', 20_000), potash: content('earth-kind', 60_000), magnesia: null,
    release: null,
    usualRate: { leastGPerM2: 50, mostGPerM2: 220, source: 'from-memory' },
    density: null },
];

/** A meal by its key; undefined where there is none. */
export function mealOf(key: string): Meal | undefined {
  return meals.find((meal) => meal.key === key);
}
