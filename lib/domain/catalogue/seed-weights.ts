import type { SourceKey } from './sources';

/** One account of how heavy seed is: by count of an ounce, or by weight of a thousand. */
export type SeedWeight = {
  readonly cropKeys: readonly string[];
  readonly source: SourceKey;
} & ({ readonly perOunce: number } | { readonly thousandG: number });

/**
 * No account is beyond doubt: a trade chart in a reprint, and a collection of wild and mixed seed in a copy, to be taken as within a
 * half either way. Of tomato the collection's value is left out, since it is well below what is sown. Beet and chard are clusters.
 */
// biome-ignore format: one account a line
export const seedWeights: readonly SeedWeight[] = [
  { cropKeys: ['french-bean'], perOunce: 100, source: 'olds-chart' },
  { cropKeys: ['beetroot', 'chard'], perOunce: 1_500, source: 'olds-chart' },
  { cropKeys: ['calabrese', 'purple-sprouting', 'brussels-sprout'], perOunce: 9_000, source: 'olds-chart' },
  { cropKeys: ['summer-cabbage', 'winter-cabbage', 'spring-cabbage'], perOunce: 8_500, source: 'olds-chart' },
  { cropKeys: ['carrot', 'lettuce'], perOunce: 25_000, source: 'olds-chart' },
  { cropKeys: ['cauliflower'], perOunce: 10_000, source: 'olds-chart' },
  { cropKeys: ['cucumber'], perOunce: 1_000, source: 'olds-chart' },
  { cropKeys: ['endive'], perOunce: 22_000, source: 'olds-chart' },
  { cropKeys: ['kale', 'kohlrabi'], perOunce: 8_700, source: 'olds-chart' },
  { cropKeys: ['leek', 'tomato'], perOunce: 11_000, source: 'olds-chart' },
  { cropKeys: ['swede', 'parsnip'], perOunce: 12_000, source: 'olds-chart' },
  { cropKeys: ['onion'], perOunce: 8_000, source: 'olds-chart' },
  { cropKeys: ['parsley', 'turnip'], perOunce: 15_000, source: 'olds-chart' },
  { cropKeys: ['pea'], perOunce: 120, source: 'olds-chart' },
  { cropKeys: ['pepper'], perOunce: 4_500, source: 'olds-chart' },
  { cropKeys: ['radish'], perOunce: 2_500, source: 'olds-chart' },
  { cropKeys: ['spinach'], perOunce: 2_800, source: 'olds-chart' },
  { cropKeys: ['courgette'], perOunce: 220, source: 'olds-chart' },
  { cropKeys: ['winter-squash', 'butternut'], perOunce: 250, source: 'olds-chart' },
  { cropKeys: ['sweetcorn'], perOunce: 175, source: 'olds-chart' },
  { cropKeys: ['onion', 'spring-onion', 'shallot'], thousandG: 3.32, source: 'kew-seed-weights' },
  { cropKeys: ['leek'], thousandG: 3.6, source: 'kew-seed-weights' },
  { cropKeys: ['chives'], thousandG: 0.99, source: 'kew-seed-weights' },
  { cropKeys: ['celery', 'celeriac'], thousandG: 0.3, source: 'kew-seed-weights' },
  { cropKeys: ['asparagus'], thousandG: 24.1, source: 'kew-seed-weights' },
  { cropKeys: ['beetroot'], thousandG: 17.96, source: 'kew-seed-weights' },
  { cropKeys: ['chard'], thousandG: 14.85, source: 'kew-seed-weights' },
  { cropKeys: ['turnip', 'chinese-cabbage', 'pak-choi', 'mizuna'], thousandG: 2.1, source: 'kew-seed-weights' },
  { cropKeys: ['swede'], thousandG: 3.3, source: 'kew-seed-weights' },
  { cropKeys: ['mustard-greens'], thousandG: 2.9, source: 'kew-seed-weights' },
  { cropKeys: ['mustard'], thousandG: 5.2, source: 'kew-seed-weights' },
  { cropKeys: ['radish'], thousandG: 12, source: 'kew-seed-weights' },
  { cropKeys: ['rocket'], thousandG: 1, source: 'kew-seed-weights' },
  { cropKeys: ['pepper'], thousandG: 6, source: 'kew-seed-weights' },
  { cropKeys: ['endive'], thousandG: 1.35, source: 'kew-seed-weights' },
  { cropKeys: ['chicory'], thousandG: 1.2, source: 'kew-seed-weights' },
  { cropKeys: ['cucumber'], thousandG: 16.3, source: 'kew-seed-weights' },
  { cropKeys: ['melon'], thousandG: 28.82, source: 'kew-seed-weights' },
  { cropKeys: ['winter-squash'], thousandG: 240.9, source: 'kew-seed-weights' },
  { cropKeys: ['courgette'], thousandG: 144.8, source: 'kew-seed-weights' },
  { cropKeys: ['butternut'], thousandG: 88, source: 'kew-seed-weights' },
  { cropKeys: ['globe-artichoke'], thousandG: 41.8, source: 'kew-seed-weights' },
  { cropKeys: ['carrot', 'lettuce'], thousandG: 1, source: 'kew-seed-weights' },
  { cropKeys: ['florence-fennel'], thousandG: 3, source: 'kew-seed-weights' },
  { cropKeys: ['parsley'], thousandG: 1.6, source: 'kew-seed-weights' },
  { cropKeys: ['parsnip'], thousandG: 4, source: 'kew-seed-weights' },
  { cropKeys: ['runner-bean'], thousandG: 925.2, source: 'kew-seed-weights' },
  { cropKeys: ['french-bean'], thousandG: 307, source: 'kew-seed-weights' },
  { cropKeys: ['pea', 'mangetout'], thousandG: 139.9, source: 'kew-seed-weights' },
  { cropKeys: ['scorzonera'], thousandG: 9.3, source: 'kew-seed-weights' },
  { cropKeys: ['salsify'], thousandG: 13.3, source: 'kew-seed-weights' },
  { cropKeys: ['aubergine'], thousandG: 3.3, source: 'kew-seed-weights' },
  // Two values are given, low and high.
  { cropKeys: ['spinach'], thousandG: 6.8, source: 'kew-seed-weights' },
  { cropKeys: ['spinach'], thousandG: 11.3, source: 'kew-seed-weights' },
  { cropKeys: ['lambs-lettuce'], thousandG: 2, source: 'kew-seed-weights' },
  { cropKeys: ['broad-bean'], thousandG: 921, source: 'kew-seed-weights' },
  { cropKeys: ['field-bean'], thousandG: 393.5, source: 'kew-seed-weights' },
  { cropKeys: ['sweetcorn'], thousandG: 245.4, source: 'kew-seed-weights' },
  { cropKeys: ['coriander'], thousandG: 10.3, source: 'kew-seed-weights' },
  { cropKeys: ['dill'], thousandG: 1.8, source: 'kew-seed-weights' },
  { cropKeys: ['new-zealand-spinach'], thousandG: 31.8, source: 'kew-seed-weights' },
  { cropKeys: ['phacelia'], thousandG: 1.7, source: 'kew-seed-weights' },
  { cropKeys: ['buckwheat'], thousandG: 28.3, source: 'kew-seed-weights' },
  { cropKeys: ['grazing-rye'], thousandG: 17.1, source: 'kew-seed-weights' },
  { cropKeys: ['tomatillo'], thousandG: 1.529, source: 'kew-seed-weights' },
];

/** The accounts of a crop's seed, the one that grams are reckoned by first; none where nobody weighed it. */
export function seedWeightsOf(cropKey: string): readonly SeedWeight[] {
  return seedWeights.filter(({ cropKeys }) => cropKeys.includes(cropKey));
}
