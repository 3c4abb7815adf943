import type { SourceKey } from './sources';

export type SoilKey = 'sandy' | 'silty' | 'loamy' | 'clayey' | 'peaty';

/** What a soil does under the spade: how far it swells when it is dug and what it weighs as it lies; null where nobody says. */
export type SoilFigures = {
  readonly swellLeastPercent: number | null;
  readonly swellMostPercent: number | null;
  readonly inPlaceLeastGPerL: number | null;
  readonly inPlaceMostGPerL: number | null;
};

export type Soil = SoilFigures & {
  readonly key: SoilKey;
  readonly name: string;
  /** Heavy ground before hard winter, light ground in spring. */
  readonly diggingSeason: 'autumn' | 'spring';
  /** The column that it stands in where the nitrogen of manure is reckoned. */
  readonly manureSoil: 'sandy-shallow' | 'medium-heavy';
  /** Where each value comes from; null with a value that is null. */
  readonly sources: {
    readonly [Value in keyof SoilFigures]: SourceKey | null;
  } & { readonly diggingSeason: SourceKey; readonly manureSoil: SourceKey };
};

// The heaviest that a soil lies is where roots no longer enter it. Loam, of which no table was read, is taken to swell no
// less than gravelly sand and no more than silt. A published swell that is one figure stands at both ends.
// biome-ignore format: one soil in few lines
export const soils: readonly Soil[] = [
  {
    key: 'sandy', name: 'Sandy', swellLeastPercent: 5, swellMostPercent: 15, inPlaceLeastGPerL: 1300, inPlaceMostGPerL: 1800, diggingSeason: 'spring', manureSoil: 'sandy-shallow',
    sources: { swellLeastPercent: 'alaska-swell', swellMostPercent: 'estimating-swell', inPlaceLeastGPerL: 'from-memory', inPlaceMostGPerL: 'usda-roots', diggingSeason: 'thrive', manureSoil: 'rb209-available' },
  },
  {
    key: 'silty', name: 'Silty', swellLeastPercent: 35, swellMostPercent: 35, inPlaceLeastGPerL: 1100, inPlaceMostGPerL: 1650, diggingSeason: 'autumn', manureSoil: 'medium-heavy',
    sources: { swellLeastPercent: 'alaska-swell', swellMostPercent: 'alaska-swell', inPlaceLeastGPerL: 'from-memory', inPlaceMostGPerL: 'usda-roots', diggingSeason: 'common-practice', manureSoil: 'common-practice' },
  },
  {
    key: 'loamy', name: 'Loamy', swellLeastPercent: 15, swellMostPercent: 35, inPlaceLeastGPerL: 1090, inPlaceMostGPerL: 1600, diggingSeason: 'autumn', manureSoil: 'medium-heavy',
    sources: { swellLeastPercent: 'common-practice', swellMostPercent: 'common-practice', inPlaceLeastGPerL: 'commercial-gardening', inPlaceMostGPerL: 'from-memory', diggingSeason: 'common-practice', manureSoil: 'rb209-available' },
  },
  {
    key: 'clayey', name: 'Clayey', swellLeastPercent: 30, swellMostPercent: 40, inPlaceLeastGPerL: 1000, inPlaceMostGPerL: 1470, diggingSeason: 'autumn', manureSoil: 'medium-heavy',
    sources: { swellLeastPercent: 'estimating-swell', swellMostPercent: 'alaska-swell', inPlaceLeastGPerL: 'from-memory', inPlaceMostGPerL: 'usda-roots', diggingSeason: 'thrive', manureSoil: 'rb209-available' },
  },
  {
    key: 'peaty', name: 'Peaty', swellLeastPercent: null, swellMostPercent: null, inPlaceLeastGPerL: null, inPlaceMostGPerL: null, diggingSeason: 'spring', manureSoil: 'medium-heavy',
    sources: { swellLeastPercent: null, swellMostPercent: null, inPlaceLeastGPerL: null, inPlaceMostGPerL: null, diggingSeason: 'common-practice', manureSoil: 'common-practice' },
  },
];

/** A soil by its key; undefined where there is none. */
export function soilOf(key: string): Soil | undefined {
  return soils.find((soil) => soil.key === key);
}
