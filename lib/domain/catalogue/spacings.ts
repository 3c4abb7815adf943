import type { SourceKey } from './sources';

/** How far apart a crop stands, as printed. */
export type Spacing = {
  readonly cropKeys: readonly string[];
  readonly rowsLeast: number;
  readonly rowsMost: number;
  readonly inRowLeast: number;
  readonly inRowMost: number;
  readonly printedIn: 'inches' | 'centimetres';
  readonly source: SourceKey;
};

/**
 * Distances. The first account of a crop sets out its beds; the others are shown beside it. Double rows of broad and runner beans are
 * told as their two lines evenly spread over the ground.
 */
// biome-ignore format: one account a line
export const spacings: readonly Spacing[] = [
  { cropKeys: ['onion'], rowsLeast: 25, rowsMost: 30, inRowLeast: 5, inRowMost: 10, printedIn: 'centimetres', source: 'rhs-onion' },
  { cropKeys: ['onion'], rowsLeast: 12, rowsMost: 18, inRowLeast: 1, inRowMost: 3, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['lettuce'], rowsLeast: 12, rowsMost: 12, inRowLeast: 9, inRowMost: 12, printedIn: 'inches', source: 'allotment-guide-distances' },
  { cropKeys: ['parsnip'], rowsLeast: 15, rowsMost: 15, inRowLeast: 6, inRowMost: 6, printedIn: 'inches', source: 'allotment-guide-distances' },
  { cropKeys: ['parsnip'], rowsLeast: 18, rowsMost: 24, inRowLeast: 2, inRowMost: 4, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['french-bean'], rowsLeast: 24, rowsMost: 30, inRowLeast: 9, inRowMost: 9, printedIn: 'inches', source: 'allotment-guide-distances' },
  { cropKeys: ['french-bean'], rowsLeast: 24, rowsMost: 24, inRowLeast: 2, inRowMost: 4, printedIn: 'inches', source: 'maine-planting' },
  // Two lines six inches apart, read as six inches in the line too, and thirty between the rows: a line to every eighteen inches.
  { cropKeys: ['broad-bean'], rowsLeast: 18, rowsMost: 18, inRowLeast: 6, inRowMost: 6, printedIn: 'inches', source: 'allotment-guide-distances' },
  { cropKeys: ['asparagus'], rowsLeast: 36, rowsMost: 48, inRowLeast: 18, inRowMost: 18, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['beetroot', 'carrot'], rowsLeast: 12, rowsMost: 18, inRowLeast: 2, inRowMost: 3, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['calabrese'], rowsLeast: 24, rowsMost: 36, inRowLeast: 24, inRowMost: 30, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['summer-cabbage', 'winter-cabbage', 'spring-cabbage'], rowsLeast: 24, rowsMost: 36, inRowLeast: 12, inRowMost: 18, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['sweetcorn'], rowsLeast: 24, rowsMost: 36, inRowLeast: 6, inRowMost: 8, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['cucumber'], rowsLeast: 48, rowsMost: 72, inRowLeast: 48, inRowMost: 48, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['aubergine'], rowsLeast: 24, rowsMost: 36, inRowLeast: 18, inRowMost: 18, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['pea', 'mangetout'], rowsLeast: 18, rowsMost: 36, inRowLeast: 1, inRowMost: 2, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['pepper'], rowsLeast: 18, rowsMost: 24, inRowLeast: 18, inRowMost: 18, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['early-potato', 'maincrop-potato'], rowsLeast: 30, rowsMost: 36, inRowLeast: 8, inRowMost: 12, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['winter-squash', 'butternut'], rowsLeast: 72, rowsMost: 96, inRowLeast: 72, inRowMost: 72, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['courgette'], rowsLeast: 36, rowsMost: 36, inRowLeast: 48, inRowMost: 48, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['spinach'], rowsLeast: 12, rowsMost: 18, inRowLeast: 3, inRowMost: 4, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['tomato'], rowsLeast: 24, rowsMost: 48, inRowLeast: 18, inRowMost: 36, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['turnip'], rowsLeast: 12, rowsMost: 18, inRowLeast: 1, inRowMost: 1, printedIn: 'inches', source: 'maine-planting' },
  { cropKeys: ['runner-bean'], rowsLeast: 60, rowsMost: 60, inRowLeast: 15, inRowMost: 20, printedIn: 'centimetres', source: 'common-practice' },
  { cropKeys: ['brussels-sprout', 'purple-sprouting'], rowsLeast: 60, rowsMost: 75, inRowLeast: 60, inRowMost: 60, printedIn: 'centimetres', source: 'common-practice' },
  { cropKeys: ['cauliflower', 'kale'], rowsLeast: 60, rowsMost: 60, inRowLeast: 45, inRowMost: 60, printedIn: 'centimetres', source: 'common-practice' },
  { cropKeys: ['kohlrabi', 'swede'], rowsLeast: 30, rowsMost: 40, inRowLeast: 20, inRowMost: 25, printedIn: 'centimetres', source: 'common-practice' },
  { cropKeys: ['leek', 'garlic', 'shallot', 'salsify', 'scorzonera'], rowsLeast: 30, rowsMost: 30, inRowLeast: 15, inRowMost: 15, printedIn: 'centimetres', source: 'common-practice' },
  { cropKeys: ['radish', 'spring-onion'], rowsLeast: 15, rowsMost: 15, inRowLeast: 2, inRowMost: 3, printedIn: 'centimetres', source: 'common-practice' },
  { cropKeys: ['chard', 'celeriac', 'celery', 'florence-fennel', 'endive', 'chicory', 'chinese-cabbage'], rowsLeast: 30, rowsMost: 40, inRowLeast: 25, inRowMost: 30, printedIn: 'centimetres', source: 'common-practice' },
];

/** The printed distances of a crop, the account that sets out its beds first; none where nobody gives any. */
export function spacingsOf(cropKey: string): readonly Spacing[] {
  return spacings.filter(({ cropKeys }) => cropKeys.includes(cropKey));
}

/** Crops that are planted as sets, cloves, tubers, roots or runners; onions may be either. */
export const plantedCrops = {
  cropKeys: [
    'early-potato',
    'maincrop-potato',
    'garlic',
    'shallot',
    'jerusalem-artichoke',
    'sweet-potato',
    'oca',
    'horseradish',
    'strawberry',
  ],
  source: 'common-practice',
} as const satisfies { readonly cropKeys: readonly string[]; readonly source: SourceKey };
