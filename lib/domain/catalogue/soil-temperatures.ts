import type { SourceKey } from './sources';

/** The soil in which seed comes up, as printed [°F]. */
export type SoilTemperature = {
  readonly cropKeys: readonly string[];
  readonly leastF: number;
  readonly bestFromF: number;
  readonly bestToF: number;
  readonly mostF: number;
  readonly source: SourceKey;
};

// biome-ignore format: one row of the table a line
export const soilTemperatures: readonly SoilTemperature[] = [
  { cropKeys: ['lettuce'], leastF: 35, bestFromF: 40, bestToF: 80, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['onion'], leastF: 35, bestFromF: 50, bestToF: 95, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['parsnip'], leastF: 35, bestFromF: 50, bestToF: 70, mostF: 85, source: 'osu-germination' },
  { cropKeys: ['spinach'], leastF: 35, bestFromF: 45, bestToF: 75, mostF: 85, source: 'osu-germination' },
  { cropKeys: ['beetroot', 'chard'], leastF: 40, bestFromF: 50, bestToF: 85, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['summer-cabbage', 'winter-cabbage', 'spring-cabbage'], leastF: 40, bestFromF: 45, bestToF: 95, mostF: 100, source: 'osu-germination' },
  { cropKeys: ['carrot'], leastF: 40, bestFromF: 45, bestToF: 85, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['cauliflower'], leastF: 40, bestFromF: 45, bestToF: 85, mostF: 100, source: 'osu-germination' },
  { cropKeys: ['parsley'], leastF: 40, bestFromF: 50, bestToF: 85, mostF: 90, source: 'osu-germination' },
  { cropKeys: ['pea', 'mangetout'], leastF: 40, bestFromF: 40, bestToF: 75, mostF: 85, source: 'osu-germination' },
  { cropKeys: ['radish'], leastF: 40, bestFromF: 45, bestToF: 90, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['turnip'], leastF: 40, bestFromF: 60, bestToF: 105, mostF: 105, source: 'osu-germination' },
  { cropKeys: ['asparagus', 'tomato'], leastF: 50, bestFromF: 60, bestToF: 85, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['sweetcorn'], leastF: 50, bestFromF: 60, bestToF: 95, mostF: 105, source: 'osu-germination' },
  { cropKeys: ['french-bean'], leastF: 60, bestFromF: 60, bestToF: 85, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['cucumber'], leastF: 60, bestFromF: 60, bestToF: 95, mostF: 105, source: 'osu-germination' },
  { cropKeys: ['aubergine'], leastF: 60, bestFromF: 75, bestToF: 90, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['pepper'], leastF: 60, bestFromF: 65, bestToF: 95, mostF: 95, source: 'osu-germination' },
  { cropKeys: ['winter-squash', 'butternut', 'courgette'], leastF: 60, bestFromF: 70, bestToF: 95, mostF: 100, source: 'osu-germination' },
];

/** Days from sowing to emerging in soil of 0 to 25 °C; none: it does not come up; null: not printed. */
export type EmergenceDays = {
  readonly cropKeys: readonly string[];
  readonly at0C: number | 'none' | null;
  readonly at5C: number | 'none';
  readonly at10C: number | 'none';
  readonly at15C: number;
  readonly at20C: number;
  readonly at25C: number;
  readonly source: SourceKey;
};

// biome-ignore format: one row of the table a line
export const emergenceDays: readonly EmergenceDays[] = [
  { cropKeys: ['onion'], at0C: 136, at5C: 31, at10C: 13, at15C: 7, at20C: 5, at25C: 4, source: 'harrington-minges' },
  { cropKeys: ['parsnip'], at0C: 172, at5C: 57, at10C: 27, at15C: 19, at20C: 14, at25C: 15, source: 'harrington-minges' },
  { cropKeys: ['lettuce'], at0C: 49, at5C: 15, at10C: 7, at15C: 4, at20C: 3, at25C: 2, source: 'harrington-minges' },
  { cropKeys: ['spinach'], at0C: 63, at5C: 23, at10C: 12, at15C: 7, at20C: 6, at25C: 5, source: 'harrington-minges' },
  { cropKeys: ['carrot'], at0C: null, at5C: 51, at10C: 17, at15C: 10, at20C: 7, at25C: 6, source: 'harrington-minges' },
  { cropKeys: ['pea', 'mangetout'], at0C: null, at5C: 36, at10C: 14, at15C: 9, at20C: 8, at25C: 6, source: 'harrington-minges' },
  { cropKeys: ['french-bean'], at0C: 'none', at5C: 'none', at10C: 'none', at15C: 16, at20C: 11, at25C: 8, source: 'harrington-minges' },
  { cropKeys: ['sweetcorn'], at0C: 'none', at5C: 'none', at10C: 22, at15C: 12, at20C: 7, at25C: 4, source: 'harrington-minges' },
  { cropKeys: ['cucumber'], at0C: 'none', at5C: 'none', at10C: 'none', at15C: 13, at20C: 6, at25C: 4, source: 'harrington-minges' },
];

/** The soil that a crop wants; undefined where nobody prints it. */
export function soilTemperatureOf(cropKey: string): SoilTemperature | undefined {
  return soilTemperatures.find(({ cropKeys }) => cropKeys.includes(cropKey));
}

/** How long a crop takes to emerge; undefined where nobody prints it. */
export function emergenceDaysOf(cropKey: string): EmergenceDays | undefined {
  return emergenceDays.find(({ cropKeys }) => cropKeys.includes(cropKey));
}
