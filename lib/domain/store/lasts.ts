import { type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { lossModel } from '../catalogue/store-model';
import { wholeFrom } from '../quantity/checked';
import { dayOfShare, forecastDays } from './forecast-days';
import { lotNow } from './go-over';
import { householdUse, type HouseholdUse } from './household-use';
import { type LifeBelief, lifePosterior } from './life-posterior';
import { lifePrior } from './life-prior';
import type { StoreLot } from './lot';
import { amountPerPiece, lossesSeen } from './losses-seen';
import { runDown, type Stock } from './run-down';
import { scenariosOf } from './scenarios';

/** Saved with each forecast that is kept, so that it can be worked out again by the same rule. */
export const lastsMethod = { name: 'life by going over, Weibull losses', version: 1 } as const;

/** Between least and most it falls in eight cases of ten [days from today]; null: not within three years. */
export type DayRange = {
  readonly leastDays: number | null;
  readonly medianDays: number | null;
  readonly mostDays: number | null;
};

export type Lasts = {
  /** When nothing is left; null where nothing is known of the use. */
  readonly runsOut: DayRange | null;
  readonly use: HouseholdUse | null;
  /** For each of `forecastDays`, how likely anything is left. */
  readonly likelyLeft: readonly number[];
  readonly method: typeof lastsMethod;
};

/**
 * How long what is stored of one crop lasts a household.
 *
 * Method: each lot's life by `lifePosterior`, the use by `householdUse`, their mean over evenly spread scenarios. Losses go on from each
 * lot's own last going over, use from the latest of all. The interval is of the forecast itself, so that it holds what is not known of
 * the life and of the use, and the chance in both.
 *
 * @param lots               of one crop and one winter, in the order in which they are used; used-up ones count towards the use
 * @param saidPiecesPerWeek  what the household says it uses, > 0; null where nobody said
 * @param today              not before a lot was put in or gone over
 * @returns                  least ≤ median ≤ most, never a bare day; 0 where nothing is left
 * @throws RangeError on no lots, an unknown kind, a record after today
 * @source                   the model: docs/decisions/0011-how-long-a-lot-lasts.md
 * @example                  60 onions put in today, 5 a week → 55, 83 and 128 days (least, median, most)
 */
export function lastsOf(given: {
  readonly lots: readonly StoreLot[];
  readonly saidPiecesPerWeek: number | null;
  readonly today: CalendarDate;
}): Lasts {
  const { lots, today } = given;
  const use = householdUse(lots, given.saidPiecesPerWeek);
  const held = lots.filter((lot) => lotNow(lot).sound > 0);
  if (held.length === 0)
    return { runsOut: use && nothingLeft, use, likelyLeft: forecastDays.map(() => 0), method: lastsMethod };
  const scenarios = scenariosOf(held.map(believedLife), use);
  const stock = stockOf(held, { today, uncountedDays: uncountedOf(lots, today), mealPieces: use?.mealPieces ?? 1 });
  const likelyLeft = meanOf(scenarios.map((scenario) => runDown(stock, scenario, lossModel.shape.value)));
  return { runsOut: use && rangeOf(likelyLeft), use, likelyLeft, method: lastsMethod };
}

const nothingLeft: DayRange = { leastDays: 0, medianDays: 0, mostDays: 0 };

// What is not looked at any more has run out.
function meanOf(each: readonly (readonly number[])[]): readonly number[] {
  const sums = forecastDays.map(() => 0);
  for (const likely of each)
    for (let at = 0; at < likely.length; at++) sums[at] = (sums[at] ?? 0) + (likely[at] ?? 0) / each.length;
  return sums;
}

/** What is believed of a lot's life: its kind's, its condition's, its place's, and its own goings over. */
export function believedLife(lot: StoreLot): LifeBelief {
  return lifePosterior(lifePrior(lot.keepingKey, lot.condition, lot.placeTenthC), lossesSeen(lot));
}

function stockOf(
  lots: readonly StoreLot[],
  { today, ...use }: { readonly today: CalendarDate; readonly uncountedDays: number; readonly mealPieces: number },
): Stock {
  return {
    ...use,
    pieces: lots.map((lot) => lotNow(lot).sound / amountPerPiece(lot)),
    agePowers: lots.map(({ putInOn, goingsOver }) => {
      const age = daysBetween(putInOn, today);
      const since = wholeFrom(0, daysBetween(goingsOver.at(-1)?.on ?? putInOn, today));
      return [age - since, ...forecastDays.map((day) => age + day)].map((one) => one ** lossModel.shape.value);
    }),
    days: forecastDays,
  };
}

// A round goes over all lots: what was used is counted up to the latest, or not at all yet.
function uncountedOf(lots: readonly StoreLot[], today: CalendarDate): number {
  const goneOver = lots.flatMap(({ goingsOver }) => goingsOver.map(({ on }) => on)).sort();
  const from = goneOver.at(-1) ?? lots.map(({ putInOn }) => putInOn).sort()[0] ?? today;
  return wholeFrom(0, daysBetween(from, today));
}

function rangeOf(likely: readonly number[]): DayRange {
  const rounded = (share: number) => {
    const day = dayOfShare(likely, share);
    return day === null ? null : Math.round(day);
  };
  return { leastDays: rounded(0.9), medianDays: rounded(0.5), mostDays: rounded(0.1) };
}
