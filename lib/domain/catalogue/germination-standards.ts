import type { SourceKey } from './sources';

/** The least of pure seed, or of clusters, that must germinate for seed to be sold [percent]. */
export type GerminationStandard = {
  readonly cropKeys: readonly string[];
  readonly leastPercent: number;
  readonly source: SourceKey;
};

const brassicas = [
  'kohlrabi',
  'kale',
  'calabrese',
  'purple-sprouting',
  'summer-cabbage',
  'winter-cabbage',
  'spring-cabbage',
  'brussels-sprout',
  'chinese-cabbage',
];

/** European standards first: they are what a seed is reckoned by. Of those with grades, the first is given. */
// biome-ignore format: one standard a line
export const germinationStandards: readonly GerminationStandard[] = [
  { cropKeys: ['onion', 'shallot', 'spring-onion'], leastPercent: 70, source: 'eu-germination' },
  { cropKeys: ['welsh-onion', 'leek', 'garlic', 'chives'], leastPercent: 65, source: 'eu-germination' },
  { cropKeys: ['celery', 'celeriac', 'asparagus', 'chard', 'beetroot'], leastPercent: 70, source: 'eu-germination' },
  { cropKeys: brassicas, leastPercent: 75, source: 'eu-germination' },
  { cropKeys: ['cauliflower'], leastPercent: 70, source: 'eu-germination' },
  { cropKeys: ['turnip'], leastPercent: 80, source: 'eu-germination' },
  { cropKeys: ['pepper', 'endive', 'chicory', 'globe-artichoke', 'carrot', 'parsley', 'aubergine', 'lambs-lettuce'], leastPercent: 65, source: 'eu-germination' },
  { cropKeys: ['melon', 'courgette', 'lettuce', 'tomato', 'french-bean', 'spinach'], leastPercent: 75, source: 'eu-germination' },
  { cropKeys: ['cucumber', 'winter-squash', 'runner-bean', 'pea', 'mangetout', 'broad-bean'], leastPercent: 80, source: 'eu-germination' },
  { cropKeys: ['florence-fennel', 'radish', 'rhubarb', 'scorzonera'], leastPercent: 70, source: 'eu-germination' },
  { cropKeys: ['sweetcorn'], leastPercent: 85, source: 'eu-germination' },
  { cropKeys: ['beetroot', 'chard', 'pea', 'mangetout', 'asparagus', 'globe-artichoke', 'onion', 'salsify', 'tomato', 'lambs-lettuce'], leastPercent: 75, source: 'canada-germination' },
  { cropKeys: ['cucumber', 'melon', 'courgette', 'winter-squash', 'butternut', 'french-bean', 'runner-bean', ...brassicas, 'cauliflower', 'radish', 'turnip', 'swede'], leastPercent: 80, source: 'canada-germination' },
  { cropKeys: ['sweetcorn'], leastPercent: 85, source: 'canada-germination' },
  { cropKeys: ['carrot', 'celeriac', 'parsnip'], leastPercent: 60, source: 'canada-germination' },
  { cropKeys: ['celery', 'parsley'], leastPercent: 55, source: 'canada-germination' },
  { cropKeys: ['chicory', 'chives', 'aubergine', 'endive', 'leek', 'pepper', 'rhubarb', 'spinach'], leastPercent: 65, source: 'canada-germination' },
  { cropKeys: ['dill', 'new-zealand-spinach'], leastPercent: 50, source: 'canada-germination' },
  { cropKeys: ['lettuce'], leastPercent: 70, source: 'canada-germination' },
  { cropKeys: ['carrot', 'celery', 'celeriac', 'pepper'], leastPercent: 55, source: 'us-germination' },
  { cropKeys: ['leek', 'aubergine', 'parsley', 'parsnip', 'spinach', 'dill', 'rhubarb', 'globe-artichoke'], leastPercent: 60, source: 'us-germination' },
  { cropKeys: ['beetroot', 'chard', 'chicory'], leastPercent: 65, source: 'us-germination' },
  { cropKeys: ['asparagus', 'french-bean', 'onion', 'welsh-onion', 'endive', 'brussels-sprout', 'lambs-lettuce'], leastPercent: 70, source: 'us-germination' },
  { cropKeys: ['broad-bean', 'runner-bean', 'calabrese', 'summer-cabbage', 'winter-cabbage', 'cauliflower', 'chinese-cabbage', 'kale', 'kohlrabi', 'melon', 'mustard-greens', 'pak-choi', 'winter-squash', 'radish', 'swede', 'salsify', 'sweetcorn', 'courgette', 'tomato'], leastPercent: 75, source: 'us-germination' },
  { cropKeys: ['cucumber', 'lettuce', 'pea', 'turnip'], leastPercent: 80, source: 'us-germination' },
  { cropKeys: ['chives', 'tomatillo'], leastPercent: 50, source: 'us-germination' },
  { cropKeys: ['new-zealand-spinach'], leastPercent: 40, source: 'us-germination' },
];

/** The standards that a crop's seed is sold by, the one that seed is reckoned by first; none where no law names it. */
export function germinationStandardsOf(cropKey: string): readonly GerminationStandard[] {
  return germinationStandards.filter(({ cropKeys }) => cropKeys.includes(cropKey));
}

/** What the reckoning of seed adds where nobody says otherwise. */
// biome-ignore format: one value a line
export const sowing = {
  // For slugs, birds, gaps and thinning.
  marginPercent: { value: 25, unit: '%', source: 'common-practice' },
  // Where no law names a crop.
  germinationPercent: { value: 50, unit: '%', source: 'common-practice' },
} as const satisfies Record<string, { readonly value: number; readonly unit: string; readonly source: SourceKey }>;
