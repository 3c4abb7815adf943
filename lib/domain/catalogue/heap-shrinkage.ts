import type { Material } from './materials';
import type { SourceKey } from './sources';

/**
 * How much of its volume a heap loses where it lies, by kind of material and age when it came. Published figures are for
 * composting what was fresh; of what had rotted before it came, nobody who was read prints any.
 */
export type Shrinkage = {
  readonly key: string;
  readonly kinds: readonly Material['kind'][];
  /** Months old when it came: from, and below; null where there is no upper end. */
  readonly fromMonths: number;
  readonly belowMonths: number | null;
  /** Whether a heap whose age nobody wrote down is reckoned so. */
  readonly ageUnknown: boolean;
  /** Of the volume as measured [percent]. */
  readonly leastLossPercent: number;
  readonly mostLossPercent: number;
  readonly sources: { readonly leastLossPercent: SourceKey; readonly mostLossPercent: SourceKey };
};

// biome-ignore format: one row a line
export const shrinkages: readonly Shrinkage[] = [
  { key: 'fresh-manure', kinds: ['manure'], fromMonths: 0, belowMonths: 3, ageUnknown: false, leastLossPercent: 30, mostLossPercent: 70, sources: { leastLossPercent: 'chen-dairy', mostLossPercent: 'composting-solid' } },
  { key: 'part-rotted-manure', kinds: ['manure'], fromMonths: 3, belowMonths: 12, ageUnknown: true, leastLossPercent: 0, mostLossPercent: 70, sources: { leastLossPercent: 'common-practice', mostLossPercent: 'composting-solid' } },
  { key: 'rotted-manure', kinds: ['manure'], fromMonths: 12, belowMonths: null, ageUnknown: false, leastLossPercent: 0, mostLossPercent: 30, sources: { leastLossPercent: 'common-practice', mostLossPercent: 'common-practice' } },
  { key: 'compost', kinds: ['compost'], fromMonths: 0, belowMonths: null, ageUnknown: true, leastLossPercent: 0, mostLossPercent: 30, sources: { leastLossPercent: 'common-practice', mostLossPercent: 'common-practice' } },
  { key: 'bedding', kinds: ['bedding'], fromMonths: 0, belowMonths: null, ageUnknown: true, leastLossPercent: 0, mostLossPercent: 100, sources: { leastLossPercent: 'common-practice', mostLossPercent: 'common-practice' } },
];

/** After so many days a heap was found to be stable: what it loses, it has lost by then. */
export const shrinkingDays = { value: 100, unit: 'days', source: 'michel-2004' } as const satisfies {
  value: number;
  unit: string;
  source: SourceKey;
};

/** The row for a material of some age in months, or of an age that nobody wrote down. */
export function shrinkageOf(kind: Material['kind'], ageMonths: number | null): Shrinkage {
  const fits = ({ kinds, fromMonths, belowMonths, ageUnknown }: Shrinkage) =>
    kinds.includes(kind) &&
    (ageMonths === null ? ageUnknown : ageMonths >= fromMonths && (belowMonths === null || ageMonths < belowMonths));
  const row = shrinkages.find(fits);
  if (!row) throw new RangeError(`no row for ${kind} of ${ageMonths} months`);
  return row;
}
