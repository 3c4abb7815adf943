import { wholeFrom } from './checked';

/** How much was put on some ground, as growers say it. */
export type AmountPut =
  | { readonly by: 'loads'; readonly loads: number; readonly barrowLitres: number; readonly densityGPerL: number }
  | { readonly by: 'weight'; readonly massG: number }
  | { readonly by: 'rate'; readonly rateGPerM2: number; readonly areaCm2: number };

/**
 * The weight of what was put on some ground.
 *
 * @param amount      whole numbers ≥ 0 [loads, L, g/L; g; g/m², cm²]; a barrow, a density and an area ≥ 1
 * @returns           [g], rounded once, to the nearest
 * @throws RangeError on anything else
 * @source            arithmetic; densities are the catalogue's
 * @example           2 loads of 85 L at 400 g/L → 68,000 g; 5,000 g/m² on 120,000 cm² → 60,000 g
 */
export function massPutG(amount: AmountPut): number {
  if (amount.by === 'weight') return wholeFrom(0, amount.massG);
  if (amount.by === 'rate')
    return wholeFrom(0, Math.round((wholeFrom(0, amount.rateGPerM2) * wholeFrom(1, amount.areaCm2)) / 10_000));
  const { loads, barrowLitres, densityGPerL } = amount;
  return wholeFrom(0, wholeFrom(0, loads) * wholeFrom(1, barrowLitres) * wholeFrom(1, densityGPerL));
}
