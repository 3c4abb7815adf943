import type { SourceKey } from './sources';

/** What a crop is said to yield, as printed: of so much row, of a plant at its distances, or of an area. */
export type PublishedYield = {
  readonly cropKeys: readonly string[];
  readonly source: SourceKey;
  readonly least: number;
  readonly most: number;
} & (
  | { readonly of: 'row'; readonly rowsLeastIn: number; readonly rowsMostIn: number }
  | {
      readonly of: 'plant';
      readonly rowsLeastIn: number;
      readonly rowsMostIn: number;
      readonly inRowLeastIn: number;
      readonly inRowMostIn: number;
    }
  | { readonly of: 'hectare' }
);

/**
 * Of a row: pounds from ten feet of it; of a plant: pounds; distances are those of the same chart [inches]. Of a hectare: tonnes. Potatoes are
 * ten pounds for each of the two pounds of seed that ten feet take, onions thirty to forty for each of sets, a tenth of a pound to ten
 * feet. Beans are in the pod, the second account of them climbing. Field growers' yields of other crops stand with what they demand (crop-demands).
 */
// biome-ignore format: one account a line
export const publishedYields: readonly PublishedYield[] = [
  { cropKeys: ['french-bean'], of: 'row', least: 8, most: 8, rowsLeastIn: 24, rowsMostIn: 24, source: 'maine-planting' },
  { cropKeys: ['french-bean'], of: 'row', least: 12, most: 12, rowsLeastIn: 36, rowsMostIn: 36, source: 'maine-planting' },
  { cropKeys: ['beetroot', 'carrot'], of: 'row', least: 10, most: 10, rowsLeastIn: 12, rowsMostIn: 18, source: 'maine-planting' },
  { cropKeys: ['calabrese'], of: 'plant', least: 1.75, most: 1.75, rowsLeastIn: 24, rowsMostIn: 36, inRowLeastIn: 24, inRowMostIn: 30, source: 'maine-planting' },
  { cropKeys: ['summer-cabbage', 'winter-cabbage', 'spring-cabbage'], of: 'plant', least: 0.75, most: 3, rowsLeastIn: 24, rowsMostIn: 36, inRowLeastIn: 12, inRowMostIn: 18, source: 'maine-planting' },
  { cropKeys: ['aubergine'], of: 'plant', least: 4, most: 5, rowsLeastIn: 24, rowsMostIn: 36, inRowLeastIn: 18, inRowMostIn: 18, source: 'maine-planting' },
  { cropKeys: ['onion'], of: 'row', least: 3, most: 4, rowsLeastIn: 12, rowsMostIn: 18, source: 'maine-planting' },
  { cropKeys: ['parsnip'], of: 'row', least: 15, most: 15, rowsLeastIn: 18, rowsMostIn: 24, source: 'maine-planting' },
  { cropKeys: ['parsnip'], of: 'hectare', least: 26, most: 40, source: 'ecocrop-parsnip' },
  { cropKeys: ['pea'], of: 'row', least: 10, most: 10, rowsLeastIn: 18, rowsMostIn: 36, source: 'maine-planting' },
  { cropKeys: ['early-potato', 'maincrop-potato'], of: 'row', least: 20, most: 20, rowsLeastIn: 30, rowsMostIn: 36, source: 'maine-planting' },
  { cropKeys: ['spinach'], of: 'row', least: 4, most: 5, rowsLeastIn: 12, rowsMostIn: 18, source: 'maine-planting' },
  { cropKeys: ['courgette'], of: 'row', least: 15, most: 15, rowsLeastIn: 36, rowsMostIn: 36, source: 'maine-planting' },
  { cropKeys: ['winter-squash', 'butternut'], of: 'row', least: 10, most: 10, rowsLeastIn: 72, rowsMostIn: 96, source: 'maine-planting' },
  { cropKeys: ['tomato'], of: 'plant', least: 8, most: 8, rowsLeastIn: 24, rowsMostIn: 48, inRowLeastIn: 18, inRowMostIn: 36, source: 'maine-planting' },
  { cropKeys: ['turnip'], of: 'row', least: 25, most: 25, rowsLeastIn: 12, rowsMostIn: 18, source: 'maine-planting' },
];

/** What ground is said to yield with all crops taken together [g/m²]. */
// biome-ignore format: one account a line
export const mixedYields: readonly { readonly name: string; readonly gPerM2: number; readonly source: SourceKey }[] = [
  { name: 'small growers, mixed crops', gPerM2: 2_440, source: 'rutgers-mixed' },
  { name: 'the best of a city’s allotments, in a study', gPerM2: 1_000, source: 'sussex-growers' },
  { name: 'a model plot for a family of four', gPerM2: 2_600, source: 'harlow-carr' },
];
