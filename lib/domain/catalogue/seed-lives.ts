import type { SourceKey } from './sources';

/** How many years seed lives in favourable storage. */
export type SeedLife = { readonly cropKeys: readonly string[]; readonly years: number; readonly source: SourceKey };

// The table names bean and onion: broad beans and the onion's other crops are read as such.
// biome-ignore format: one length of life a row
export const seedLives: readonly SeedLife[] = [
  { cropKeys: ['onion', 'parsley', 'parsnip', 'salsify'], years: 1, source: 'knott-seed-life' },
  { cropKeys: ['spring-onion', 'shallot', 'welsh-onion', 'chives', 'scorzonera'], years: 1, source: 'common-practice' },
  { cropKeys: ['leek', 'pepper', 'sweetcorn'], years: 2, source: 'knott-seed-life' },
  { cropKeys: ['asparagus', 'french-bean', 'runner-bean', 'calabrese', 'purple-sprouting', 'carrot', 'celeriac', 'celery', 'chinese-cabbage', 'kohlrabi', 'new-zealand-spinach', 'pea', 'mangetout', 'spinach'], years: 3, source: 'knott-seed-life' },
  { cropKeys: ['broad-bean', 'pak-choi', 'mizuna', 'rocket', 'coriander', 'dill', 'lambs-lettuce'], years: 3, source: 'common-practice' },
  { cropKeys: ['beetroot', 'brussels-sprout', 'summer-cabbage', 'winter-cabbage', 'spring-cabbage', 'cauliflower', 'chard', 'chicory', 'aubergine', 'florence-fennel', 'kale', 'mustard-greens', 'winter-squash', 'butternut', 'courgette', 'swede', 'tomato', 'turnip'], years: 4, source: 'knott-seed-life' },
  { cropKeys: ['cucumber', 'endive', 'melon', 'radish'], years: 5, source: 'knott-seed-life' },
  { cropKeys: ['lettuce'], years: 6, source: 'knott-seed-life' },
];

/** How long a crop's seed lives; undefined where nobody says. */
export function seedLifeOf(cropKey: string): SeedLife | undefined {
  return seedLives.find(({ cropKeys }) => cropKeys.includes(cropKey));
}
