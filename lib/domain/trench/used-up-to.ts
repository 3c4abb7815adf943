import { type Amounts, type BarrowCount, type Layers, sumOfAmounts } from './layers';

/**
 * What the first trenches have used, for a page that remembers where one stopped.
 *
 * Method: the sum of their own parts, so that used and rest are always the whole.
 *
 * @param layers  from `layersOf`
 * @param done    trenches done, in order of work; whole number from 0 to all of them
 * @returns       amounts, the ground done, and the barrow one is on
 * @throws RangeError on any other number of trenches
 * @source        sums
 * @example       2 of 6 trenches of 9 L each → 18 L used, 67 L left in the first barrow
 */
export function usedUpTo(layers: Layers, done: number): Amounts & { readonly barrow: BarrowCount } {
  const trenches = layers.trenches.slice(0, checkedDone(layers, done));
  return {
    ...sumOfAmounts(trenches, layers.dressing),
    barrow: trenches.at(-1)?.barrow ?? { number: 0, leftMl: 0 },
  };
}

/**
 * What the other trenches still need.
 *
 * Method: the sum of their own parts; barrows to fetch are those of the whole bed less those already begun.
 *
 * @param layers  from `layersOf`
 * @param done    as for `usedUpTo`
 * @returns       amounts, what the begun barrow still holds [mL], and whole barrow-loads still to fetch
 * @throws RangeError as `usedUpTo`
 * @source        sums
 * @example       2 of 6 trenches of 9 L each, barrow of 85 L → 36 L, 67 L at hand, none to fetch
 */
export function restAfter(
  layers: Layers,
  done: number,
): Amounts & { readonly atHandMl: number; readonly loadsToFetch: number } {
  const { barrow } = usedUpTo(layers, done);
  return {
    ...sumOfAmounts(layers.trenches.slice(done), layers.dressing),
    atHandMl: barrow.leftMl,
    loadsToFetch: layers.total.wholeLoads - barrow.number,
  };
}

function checkedDone({ trenches }: Layers, done: number): number {
  if (!Number.isSafeInteger(done) || done < 0 || done > trenches.length)
    throw new RangeError(`trenches done are 0 to ${trenches.length}: ${done}`);
  return done;
}
