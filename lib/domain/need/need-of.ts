import { wholeFrom } from '../quantity/checked';
import { loadMassG, type LoadSize } from '../quantity/load-mass';

/** Ground that asks for manure: due in full, or without any record of manuring. */
export type NeedyGround = { readonly id: string; readonly dueCm2: number; readonly unloggedCm2: number };

/** What turns ground into loads. */
export type DressingRate = LoadSize & {
  /** Dressing [g/m²]. */
  readonly rateGPerM2: number;
  readonly intervalYears: number;
};

export type Need = {
  /** Whole barrow-loads for all the ground together, rounded up once. */
  readonly loads: number;
  readonly barrowLoadG: number;
  /** For each ground: the dressing it justifies [g, rounded to the nearest]. */
  readonly grounds: readonly { readonly id: string; readonly massG: number; readonly assumedG: number }[];
};

/**
 * What a holding's due ground justifies, in barrow-loads.
 *
 * Method: (due area + unlogged area ÷ interval) × rate ÷ the weight of a barrow-load, summed over the holding as a
 * fraction of whole numbers and rounded up once.
 *
 * @param grounds  areas as whole numbers ≥ 0 [cm²]
 * @param rate     whole numbers > 0 [g/m², L, g/L, years]
 * @returns        loads ≥ 0; 0 only where nothing is due
 * @throws RangeError on anything that is not a whole number in range
 * @source         common practice; the default rate is the catalogue's
 * @example        12 m² due at 5,000 g/m², barrow of 85 L at 400 g/L (34 kg) → 60 kg → 2 loads
 */
export function needOf(grounds: readonly NeedyGround[], rate: DressingRate): Need {
  const { rateGPerM2, intervalYears } = rate;
  for (const value of [rateGPerM2, intervalYears]) wholeFrom(1, value);
  for (const { dueCm2, unloggedCm2 } of grounds) [dueCm2, unloggedCm2].forEach((area) => wholeFrom(0, area));
  const barrowLoadG = loadMassG(rate);
  // In units of 1/interval cm², so that the assumed share stays a whole number until the end.
  const shares = grounds.reduce(
    (sum, { dueCm2, unloggedCm2 }) => sum + BigInt(dueCm2) * BigInt(intervalYears) + BigInt(unloggedCm2),
    0n,
  );
  const dressing = shares * BigInt(rateGPerM2);
  const load = BigInt(intervalYears) * 10_000n * BigInt(barrowLoadG);
  return {
    loads: Number((dressing + load - 1n) / load),
    barrowLoadG,
    grounds: grounds.map(({ id, dueCm2, unloggedCm2 }) => ({
      id,
      massG: Math.round(((dueCm2 + unloggedCm2 / intervalYears) * rateGPerM2) / 10_000),
      assumedG: Math.round((unloggedCm2 * rateGPerM2) / (intervalYears * 10_000)),
    })),
  };
}

/**
 * The cultivable ground of a plot that has no beds drawn: its area less paths, shed and edges.
 *
 * @param areaCm2       whole plot, whole number ≥ 0 [cm²]
 * @param sharePercent  what of it is usually dug, 1 to 100 [percent]
 * @returns             [cm²], rounded down
 * @throws RangeError   outside these bounds
 * @example             cultivableCm2(2_529_285, 75) → 1,896,963
 */
export function cultivableCm2(areaCm2: number, sharePercent: number): number {
  wholeFrom(0, areaCm2);
  wholeFrom(1, sharePercent);
  if (sharePercent > 100) throw new RangeError('a share is at most 100 percent');
  return Math.floor((areaCm2 * sharePercent) / 100);
}
