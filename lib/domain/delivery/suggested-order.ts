import { wholeFrom } from '../quantity/checked';

/** What the ground asks for, and what of it is there or on its way; all [g]. */
export type Asked = {
  readonly needG: number;
  /** Left on old heaps, at least and at most. */
  readonly leftLeastG: number;
  readonly leftMostG: number;
  readonly onOrderG: number;
};

export type MassBetween = { readonly leastG: number; readonly mostG: number };

/**
 * What is still wanted of a material for a season, as a range: old heaps may have shrunk more or less.
 *
 * Method: need less what is left less what is on order, never below nothing; the most is wanted where the least is left.
 *
 * @param asked   whole numbers ≥ 0 [g]; leftLeastG ≤ leftMostG
 * @returns       0 ≤ leastG ≤ mostG ≤ needG
 * @throws RangeError on anything else
 * @source        arithmetic
 * @example       need 10 t, left 1 to 3 t, on order 4 t → 3 to 5 t
 */
export function stillWanted({ needG, leftLeastG, leftMostG, onOrderG }: Asked): MassBetween {
  for (const massG of [needG, leftLeastG, leftMostG, onOrderG]) wholeFrom(0, massG);
  if (leftLeastG > leftMostG) throw new RangeError('at least is no more than at most');
  const rest = (leftG: number) => Math.max(0, needG - leftG - onOrderG);
  return { leastG: rest(leftMostG), mostG: rest(leftLeastG) };
}

/** One of a supplier's units: what it weighs and costs, and what a barrow-load of the same weighs. */
export type SupplierUnit = {
  readonly unitG: number;
  /** [pence]; null where nothing was agreed. */
  readonly priceMinor: number | null;
  readonly barrowLoadG: number;
};

export type SuggestedOrder = {
  /** Whole units, at least and at most. */
  readonly leastUnits: number;
  readonly mostUnits: number;
  /** For the most that is wanted: what it weighs, what is then over, and its whole barrow-loads. */
  readonly massG: number;
  readonly overG: number;
  readonly loads: number;
  /** [pence]; null where nothing was agreed. A barrow-load's to the nearest. */
  readonly priceMinor: number | null;
  readonly loadMinor: number | null;
};

/**
 * How many of a supplier's whole units to order for what is still wanted.
 *
 * Method: mass ÷ mass of a unit, rounded up to whole units; barrow-loads rounded down once, as a heap is counted.
 *
 * @param wanted  whole numbers ≥ 0 [g]
 * @param unit    unitG, barrowLoadG ≥ 1 [g]; priceMinor ≥ 0 or null [pence]; whole numbers
 * @returns       leastUnits ≤ mostUnits; overG < unitG; loads × barrowLoadG ≤ massG
 * @throws RangeError on anything else, or on more than can be counted exactly
 * @source        arithmetic
 * @example       10 t to 11 t wanted in trailers of 2.4 t at £60, barrow-load 34 kg → 5 trailers, 1 t over, 352 loads, £300, 85 p a load
 */
export function suggestedOrder(wanted: MassBetween, unit: SupplierUnit): SuggestedOrder {
  wholeFrom(wholeFrom(0, wanted.leastG), wanted.mostG);
  const [unitG, barrowLoadG] = [wholeFrom(1, unit.unitG), wholeFrom(1, unit.barrowLoadG)];
  const leastUnits = Math.ceil(wanted.leastG / unitG);
  const mostUnits = Math.ceil(wanted.mostG / unitG);
  const massG = wholeFrom(0, mostUnits * unitG);
  const price = unit.priceMinor === null ? null : wholeFrom(0, unit.priceMinor);
  return {
    leastUnits,
    mostUnits,
    massG,
    overG: massG - wanted.mostG,
    loads: Math.floor(massG / barrowLoadG),
    priceMinor: price === null ? null : wholeFrom(0, mostUnits * price),
    loadMinor: price === null ? null : nearest(BigInt(price) * BigInt(barrowLoadG), BigInt(unitG)),
  };
}

function nearest(dividend: bigint, divisor: bigint): number {
  return Number((2n * dividend + divisor) / (2n * divisor));
}
