import { shrinkageOf, shrinkingDays } from '../catalogue/heap-shrinkage';
import type { Material } from '../catalogue/materials';
import { wholeFrom } from '../quantity/checked';

/** A heap as it was last known, and how long ago. */
export type LastKnown = {
  /** Barrow-loads that lay there then. */
  readonly loads: number;
  readonly days: number;
  readonly kind: Material['kind'];
  /** Of the material when it came, where somebody wrote it down [months]. */
  readonly ageMonths: number | null;
};

export type LoadsBetween = { readonly leastLoads: number; readonly mostLoads: number };

/**
 * What is left on a heap that nobody has taken from since it was last known: less, as it rots, by a range.
 *
 * Method: the published loss of volume, reached in even steps over the days after which heaps were found stable, and no
 * more after that. The even steps are ours; least rounded down, most rounded up, in whole loads.
 *
 * @param heap    loads ≥ 0 [barrow-loads], days ≥ 0, ageMonths ≥ 0 or null; whole numbers
 * @returns       0 ≤ least ≤ most ≤ loads; neither grows with the days
 * @throws RangeError on anything else
 * @source        catalogue, heap-shrinkage: loss of volume and days, each row's own
 * @example       leftOnHeap({ loads: 40, days: 200, kind: 'manure', ageMonths: null }) → 12 to 40
 */
export function leftOnHeap({ loads, days, kind, ageMonths }: LastKnown): LoadsBetween {
  wholeFrom(0, loads);
  const rotted = Math.min(wholeFrom(0, days), shrinkingDays.value);
  const row = shrinkageOf(kind, ageMonths === null ? null : wholeFrom(0, ageMonths));
  // In hundredths of a percent-day, so that no fraction arises before the end.
  const whole = BigInt(100 * shrinkingDays.value);
  const keptOf = (lossPercent: number) => BigInt(loads) * (whole - BigInt(lossPercent * rotted));
  return {
    leastLoads: Number(keptOf(row.mostLossPercent) / whole),
    mostLoads: Number((keptOf(row.leastLossPercent) + whole - 1n) / whole),
  };
}
