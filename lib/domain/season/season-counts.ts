import { wholeFrom } from '../quantity/checked';

/** What is added up for the annual meeting: loads, and money in pence. */
export type SeasonCounts = {
  /** What was asked when booking closed, and what the due ground needed [loads]. */
  readonly asked: number;
  readonly need: number;
  readonly share: number;
  readonly collected: number;
  /** Of what was collected, so much was taken beyond the share. */
  readonly beyond: number;
  readonly givenUp: number;
  readonly chargedMinor: number;
  readonly paidMinor: number;
  readonly outstandingMinor: number;
};

/** Nothing of anything. */
export const nothingCounted: SeasonCounts = {
  asked: 0,
  need: 0,
  share: 0,
  collected: 0,
  beyond: 0,
  givenUp: 0,
  chargedMinor: 0,
  paidMinor: 0,
  outstandingMinor: 0,
};

const keys = Object.keys(nothingCounted) as (keyof SeasonCounts)[];

/**
 * Two counts as one.
 *
 * @param all  what was added up so far
 * @param one  whole numbers ≥ 0; paid and outstanding make up what was charged
 * @returns    the sum, count by count
 * @throws RangeError on a count that is not whole or below nothing, and where paid and outstanding are not what was charged
 * @example    3 collected and 2 collected → 5 collected
 */
export function summed(all: SeasonCounts, one: SeasonCounts): SeasonCounts {
  if (one.paidMinor + one.outstandingMinor !== one.chargedMinor)
    throw new RangeError(`paid ${one.paidMinor} and outstanding ${one.outstandingMinor} are not ${one.chargedMinor}`);
  return Object.fromEntries(keys.map((key) => [key, all[key] + wholeFrom(0, one[key])])) as SeasonCounts;
}
