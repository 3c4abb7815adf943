import { storeAnswers } from '../catalogue/store-model';
import { positive, wholeFrom } from '../quantity/checked';
import { evenSpread } from '../statistics/even-spread';
import { normalQuantile } from '../statistics/normal-quantile';
import { sortedQuantile } from '../statistics/sorted-quantile';
import { type HouseholdUse, piecesPerDayAt } from './household-use';
import { lifeDaysAt, lifePosterior } from './life-posterior';
import { lifePrior } from './life-prior';
import { soundShare } from './sound-share';

/** In eight cases of ten it is from least to most; whole. */
export type Wanted = { readonly least: number; readonly median: number; readonly most: number };

export type WantedArea =
  | {
      readonly code: 'wanted';
      /** To be put in [g]. */
      readonly massG: Wanted;
      /** Ground that yields it [cm²]; null where no yield is on record. */
      readonly areaCm2: Wanted | null;
    }
  /** By the end of that time less than a tenth of a middling lot is sound: more ground would not help. */
  | { readonly code: 'does-not-keep-so-long'; readonly soundPermille: number };

const scenarios = 200;

/**
 * How much of a crop to put in next time, and on how much ground to grow it, so that it lasts.
 *
 * Method: what is used on a day has to be put in with what goes bad till then, so the sum of use ÷ sound share over the days; averaged
 * over the use, the life of a lot of its kind, and the yield of a season, log-normal about the mean of the logarithms on record.
 * A lot's own misfortune of this year is not carried on to the next.
 *
 * @param keepingKey    a kind of keeping
 * @param use           of `householdUse`
 * @param days          that the store has to cover; whole number, 1 to 1,096 [days]
 * @param pieceG        what a piece weighs; > 0 [g]
 * @param placeTenthC   where it will be kept [tenths of °C]; null where nobody knows
 * @param yieldsGPerM2  what the ground yielded, one for each season or bed, > 0 [g/m²]; none: no area
 * @returns             least ≤ median ≤ most
 * @throws RangeError on an unknown kind, days or measures that are none
 * @source              the model: docs/decisions/0011-how-long-a-lot-lasts.md
 * @example             garlic, one of 50 g a week for 150 days, place unknown → 907, 1,391 and 2,018 g
 */
export function wantedArea(given: {
  readonly keepingKey: string;
  readonly use: HouseholdUse;
  readonly days: number;
  readonly pieceG: number;
  readonly placeTenthC: number | null;
  readonly yieldsGPerM2: readonly number[];
}): WantedArea {
  const { use, days, yieldsGPerM2 } = given;
  const prior = lifePrior(given.keepingKey, 'sound', given.placeTenthC);
  const left = soundShare(checkedDays(days), Math.exp(prior.logMean));
  if (left < 0.1) return { code: 'does-not-keep-so-long', soundPermille: Math.round(left * 1000) };
  const belief = lifePosterior(prior, []);
  const each = evenSpread(scenarios, 3).map(([used = 0.5, lived = 0.5, yielded = 0.5]) => {
    const pieces = piecesPerDayAt(use, used) * daysToPutIn(days, lifeDaysAt(belief, lived));
    const massG = pieces * positive(given.pieceG, 'the weight of a piece');
    return { massG, areaCm2: yieldsGPerM2.length ? (massG / yieldAt(yieldsGPerM2, yielded)) * 10_000 : 0 };
  });
  return {
    code: 'wanted',
    massG: wantedOf(each.map(({ massG }) => massG)),
    areaCm2: yieldsGPerM2.length ? wantedOf(each.map(({ areaCm2 }) => areaCm2)) : null,
  };
}

function checkedDays(days: number): number {
  if (wholeFrom(1, days) > 1096) throw new RangeError(`at most three years: ${days}`);
  return days;
}

// So many days' use must be put in for these days. A lot in tatters is not stocked up for: no more than tenfold.
function daysToPutIn(days: number, lifeDays: number): number {
  let sum = 0;
  for (let day = 0; day < days; day++) sum += 1 / Math.max(0.1, soundShare(day + 0.5, lifeDays));
  return sum;
}

// The next season's: the spread on record, or the usual one where that is less, and that the mean is of so many only.
function yieldAt(yieldsGPerM2: readonly number[], share: number): number {
  const logs = yieldsGPerM2.map((one) => Math.log(positive(one, 'a yield')));
  const mean = logs.reduce((sum, one) => sum + one, 0) / logs.length;
  const squares = logs.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const spread = Math.max(storeAnswers.yieldSpread.value, Math.sqrt(squares / Math.max(1, logs.length - 1)));
  return Math.exp(mean + spread * Math.sqrt(1 + 1 / logs.length) * normalQuantile(share));
}

function wantedOf(values: readonly number[]): Wanted {
  const sorted = [...values].sort((one, other) => one - other);
  const at = (share: number) => Math.round(sortedQuantile(sorted, share));
  return { least: at(0.1), median: at(0.5), most: at(0.9) };
}
