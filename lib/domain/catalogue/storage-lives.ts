import { wholeFrom } from '../quantity/checked';
import type { SourceKey } from './sources';

/** One published account of how long a kind keeps, and in what. */
export type StorageLife = {
  readonly keepingKey: string;
  /** As printed; both alike where one figure is given, no most where it is "at least" or "over". Null: conditions alone. */
  readonly least: number | null;
  readonly most: number | null;
  readonly printedIn: 'weeks' | 'months';
  /** Conditions that it holds in; null where the account is silent [tenths of °C; percent of relative humidity]. */
  readonly fromTenthC: number | null;
  readonly toTenthC: number | null;
  readonly fromRh: number | null;
  readonly toRh: number | null;
  /** Whether a forecast sets out from it: one account for each kind. The others are shown beside it. */
  readonly starts: boolean;
  readonly source: SourceKey;
};

/**
 * Published lives. Most are of cold stores: a shed is none, which the forecast allows for. For kinds without an account of their
 * own a life is from memory, and marked so.
 */
// biome-ignore format: one account a line
export const storageLives: readonly StorageLife[] = [
  { keepingKey: 'potato', least: 24, most: 26, printedIn: 'weeks', fromTenthC: 33, toTenthC: 44, fromRh: 85, toRh: 90, starts: true, source: 'hb66-1954' },
  { keepingKey: 'potato', least: null, most: null, printedIn: 'months', fromTenthC: 44, toTenthC: 44, fromRh: 90, toRh: 95, starts: false, source: 'iowa-potato' },
  { keepingKey: 'potato', least: 2, most: 3, printedIn: 'months', fromTenthC: 100, toTenthC: null, fromRh: null, toRh: null, starts: false, source: 'iowa-potato' },
  { keepingKey: 'onion', least: 6, most: 9, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 65, toRh: 70, starts: true, source: 'ucd-onion' },
  { keepingKey: 'onion', least: 1, most: 8, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 65, toRh: 70, starts: false, source: 'cantwell-2001' },
  { keepingKey: 'onion', least: 1, most: 8, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 65, toRh: 70, starts: false, source: 'new-england-16' },
  { keepingKey: 'onion-mild', least: 0.5, most: 1, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 65, toRh: 70, starts: true, source: 'ucd-onion' },
  { keepingKey: 'shallot', least: 6, most: 9, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 65, toRh: 70, starts: true, source: 'from-memory' },
  { keepingKey: 'garlic', least: 3, most: 4, printedIn: 'months', fromTenthC: null, toTenthC: null, fromRh: null, toRh: null, starts: true, source: 'hb66-garlic' },
  { keepingKey: 'garlic', least: 9, most: null, printedIn: 'months', fromTenthC: -10, toTenthC: 0, fromRh: 60, toRh: 70, starts: false, source: 'ucd-garlic' },
  { keepingKey: 'garlic', least: 1, most: 2, printedIn: 'months', fromTenthC: 200, toTenthC: 300, fromRh: null, toRh: 75, starts: false, source: 'ucd-garlic' },
  { keepingKey: 'garlic', least: 6, most: 7, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 60, toRh: 70, starts: false, source: 'wflo-2018' },
  { keepingKey: 'squash', least: 2, most: 6, printedIn: 'months', fromTenthC: 125, toTenthC: 150, fromRh: 50, toRh: 70, starts: true, source: 'ucd-pumpkin' },
  { keepingKey: 'butternut', least: 2, most: 3, printedIn: 'months', fromTenthC: 100, toTenthC: 130, fromRh: 50, toRh: 70, starts: true, source: 'osu-mansour' },
  { keepingKey: 'butternut', least: 2, most: 3, printedIn: 'months', fromTenthC: null, toTenthC: null, fromRh: null, toRh: null, starts: false, source: 'iowa-squash' },
  { keepingKey: 'acorn-squash', least: 1, most: 2, printedIn: 'months', fromTenthC: 100, toTenthC: 130, fromRh: 50, toRh: 70, starts: true, source: 'osu-mansour' },
  { keepingKey: 'hubbard-squash', least: 3, most: 6, printedIn: 'months', fromTenthC: 100, toTenthC: 130, fromRh: 50, toRh: 70, starts: true, source: 'osu-mansour' },
  { keepingKey: 'pumpkin', least: 2, most: 3, printedIn: 'months', fromTenthC: 100, toTenthC: 130, fromRh: 50, toRh: 70, starts: true, source: 'osu-mansour' },
  // To January or February from a cut in September or October, which is how the printed months are read.
  { keepingKey: 'marrow', least: 3, most: 5, printedIn: 'months', fromTenthC: 100, toTenthC: 183, fromRh: null, toRh: null, starts: true, source: 'allotment-guide-store' },
  { keepingKey: 'carrot', least: 5, most: 9, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 98, toRh: 100, starts: true, source: 'umass-storage' },
  { keepingKey: 'parsnip', least: 2, most: 6, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 90, toRh: 95, starts: true, source: 'umass-storage' },
  { keepingKey: 'parsnip', least: 2, most: 6, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 90, toRh: 95, starts: false, source: 'new-england-16' },
  { keepingKey: 'beetroot', least: 4, most: 6, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 95, toRh: 95, starts: true, source: 'umass-storage' },
  { keepingKey: 'beetroot', least: 4, most: 4, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 98, toRh: 100, starts: false, source: 'ashrae-copy' },
  { keepingKey: 'cabbage', least: 4, most: 6, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 98, toRh: 100, starts: true, source: 'umass-storage' },
  { keepingKey: 'swede', least: 4, most: 5, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 95, toRh: 95, starts: true, source: 'umass-storage' },
  { keepingKey: 'swede', least: 8, most: 16, printedIn: 'weeks', fromTenthC: 0, toTenthC: 0, fromRh: 90, toRh: 95, starts: false, source: 'hb66-1954' },
  { keepingKey: 'turnip', least: 4, most: 5, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 95, toRh: 95, starts: true, source: 'umass-storage' },
  { keepingKey: 'celeriac', least: 6, most: 8, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 97, toRh: 99, starts: true, source: 'from-memory' },
  { keepingKey: 'leek', least: 1, most: 3, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 95, toRh: 100, starts: true, source: 'new-england-16' },
  { keepingKey: 'leek', least: 2, most: 2, printedIn: 'months', fromTenthC: 0, toTenthC: 0, fromRh: 95, toRh: 100, starts: false, source: 'cantwell-2001' },
  { keepingKey: 'jerusalem-artichoke', least: 4, most: 4, printedIn: 'months', fromTenthC: -5, toTenthC: 0, fromRh: 90, toRh: 95, starts: true, source: 'cantwell-2001' },
  { keepingKey: 'sweet-potato', least: 4, most: 6, printedIn: 'months', fromTenthC: 130, toTenthC: 160, fromRh: 85, toRh: 90, starts: true, source: 'iowa-sweet-potato' },
  { keepingKey: 'dry-bean', least: 12, most: null, printedIn: 'months', fromTenthC: 40, toTenthC: 100, fromRh: 40, toRh: 40, starts: true, source: 'dry-bean-sheet' },
  { keepingKey: 'dry-bean', least: null, most: null, printedIn: 'months', fromTenthC: 0, toTenthC: 100, fromRh: 60, toRh: 70, starts: false, source: 'k-state-cellar' },
  { keepingKey: 'fresh-chilli', least: 2, most: 3, printedIn: 'weeks', fromTenthC: 70, toTenthC: 100, fromRh: 90, toRh: 95, starts: true, source: 'nmsu-h235' },
  { keepingKey: 'dry-chilli', least: 6, most: 9, printedIn: 'months', fromTenthC: 0, toTenthC: 100, fromRh: 60, toRh: 70, starts: true, source: 'from-memory' },
  { keepingKey: 'dry-chilli', least: null, most: null, printedIn: 'months', fromTenthC: 100, toTenthC: 160, fromRh: 60, toRh: 70, starts: false, source: 'storage-handbook' },
  { keepingKey: 'apple', least: 3, most: 6, printedIn: 'months', fromTenthC: -10, toTenthC: 0, fromRh: 90, toRh: 95, starts: true, source: 'iowa-apple' },
  { keepingKey: 'apple', least: 3, most: 6, printedIn: 'months', fromTenthC: -11, toTenthC: -11, fromRh: 90, toRh: 95, starts: false, source: 'cantwell-2001' },
  { keepingKey: 'apple', least: 1, most: 2, printedIn: 'months', fromTenthC: 40, toTenthC: 40, fromRh: 90, toRh: 95, starts: false, source: 'cantwell-2001' },
  { keepingKey: 'pear', least: 1, most: 3, printedIn: 'months', fromTenthC: -10, toTenthC: 0, fromRh: 90, toRh: 95, starts: true, source: 'from-memory' },
];

/** The published accounts of a kind, the one that forecasts set out from first. */
export function storageLivesOf(keepingKey: string): readonly StorageLife[] {
  const accounts = storageLives.filter((life) => life.keepingKey === keepingKey);
  return [...accounts.filter(({ starts }) => starts), ...accounts.filter(({ starts }) => !starts)];
}

/**
 * A printed length of life in days.
 *
 * @param count  half months or whole weeks and months as printed; > 0
 * @returns      whole days ≥ 1, a month being a twelfth of 365 days
 * @throws RangeError on anything else
 * @source       arithmetic
 * @example      lifeDays(9, 'months') → 274
 */
export function lifeDays(count: number, printedIn: StorageLife['printedIn']): number {
  wholeFrom(1, count * 2);
  return printedIn === 'weeks' ? Math.round(count * 7) : Math.round((count * 365) / 12);
}
