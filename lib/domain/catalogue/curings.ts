import type { SourceKey } from './sources';

/** One published account of how a kind is cured before it is put to store. */
export type Curing = {
  readonly keepingKey: string;
  /** 0 to 0: it is not cured. */
  readonly leastDays: number;
  readonly mostDays: number;
  /** Warmth and humidity it wants; null where the account is silent [tenths of °C; percent]. */
  readonly fromTenthC: number | null;
  readonly toTenthC: number | null;
  readonly fromRh: number | null;
  readonly toRh: number | null;
  readonly source: SourceKey;
};

/** The first account of a kind sets its clock. What hangs till it is dry has no days, and so no clock. */
// biome-ignore format: one account a line
export const curings: readonly Curing[] = [
  { keepingKey: 'potato', leastDays: 7, mostDays: 21, fromTenthC: 100, toTenthC: 156, fromRh: 90, toRh: 95, source: 'nebraska-potato' },
  { keepingKey: 'potato', leastDays: 7, mostDays: 10, fromTenthC: 130, toTenthC: 180, fromRh: null, toRh: null, source: 'msu-1997' },
  { keepingKey: 'onion', leastDays: 14, mostDays: 20, fromTenthC: 240, toTenthC: null, fromRh: 75, toRh: 80, source: 'osu-onion' },
  { keepingKey: 'onion-mild', leastDays: 14, mostDays: 20, fromTenthC: 240, toTenthC: null, fromRh: 75, toRh: 80, source: 'osu-onion' },
  { keepingKey: 'shallot', leastDays: 14, mostDays: 20, fromTenthC: null, toTenthC: null, fromRh: null, toRh: null, source: 'common-practice' },
  { keepingKey: 'garlic', leastDays: 14, mostDays: 28, fromTenthC: null, toTenthC: null, fromRh: null, toRh: null, source: 'common-practice' },
  { keepingKey: 'squash', leastDays: 10, mostDays: 10, fromTenthC: 270, toTenthC: 290, fromRh: 75, toRh: 80, source: 'delaware-squash' },
  { keepingKey: 'butternut', leastDays: 10, mostDays: 10, fromTenthC: 270, toTenthC: 290, fromRh: 75, toRh: 80, source: 'delaware-squash' },
  { keepingKey: 'hubbard-squash', leastDays: 10, mostDays: 10, fromTenthC: 270, toTenthC: 290, fromRh: 75, toRh: 80, source: 'delaware-squash' },
  { keepingKey: 'pumpkin', leastDays: 10, mostDays: 10, fromTenthC: 270, toTenthC: 290, fromRh: 75, toRh: 80, source: 'delaware-squash' },
  { keepingKey: 'acorn-squash', leastDays: 0, mostDays: 0, fromTenthC: null, toTenthC: null, fromRh: null, toRh: null, source: 'iowa-squash' },
  { keepingKey: 'sweet-potato', leastDays: 5, mostDays: 7, fromTenthC: 290, toTenthC: 290, fromRh: 85, toRh: 90, source: 'delaware-squash' },
  { keepingKey: 'sweet-potato', leastDays: 7, mostDays: 7, fromTenthC: 270, toTenthC: 290, fromRh: 90, toRh: 95, source: 'iowa-sweet-potato-curing' },
];

/** How a kind is cured, the account that sets its clock first; none for what is put away as it is lifted. */
export function curingsOf(keepingKey: string): readonly Curing[] {
  return curings.filter((curing) => curing.keepingKey === keepingKey);
}
