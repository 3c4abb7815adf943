import { type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { keepingOf } from '../catalogue/keepings';
import { lossModel } from '../catalogue/store-model';
import { positive } from '../quantity/checked';
import { gammaQuantile } from '../statistics/gamma-quantile';
import type { StoreLot } from './lot';
import { amountPerPiece } from './losses-seen';

/** What is held of a household's use of one crop: its meals a day are gamma-distributed. */
export type HouseholdUse = {
  readonly mealsShape: number;
  /** Days in which as many meals as the shape come in the mean. */
  readonly mealsDays: number;
  readonly meanPiecesPerDay: number;
  /** Pieces that go at once. */
  readonly mealPieces: number;
};

type Lots = readonly StoreLot[];

/**
 * How fast a household uses a crop: what it said as prior, what its goings over show as data.
 *
 * Method: meals come at random at a rate (Poisson), each of so many pieces; the rate is gamma-distributed, which stays so when meals
 * are counted. What is said is taken to be off by three tenths. Use is counted over all lots of the crop together, from the day the
 * first was put in to the last going over of any, so that lots used one after another add up to one use.
 *
 * @param lots               of one crop and one winter, those used up included; at least one
 * @param saidPiecesPerWeek  > 0; null where nobody said
 * @returns                  null where nobody said and nothing has been gone over
 * @throws RangeError on an unknown kind, no lots, or a use that is none
 * @source                   the model: docs/decisions/0011-how-long-a-lot-lasts.md; meals: common practice
 * @example                  14 onions a week said, nothing gone over → 2 a day in the mean, 1.3 to 2.8 in eight cases of ten
 */
export function householdUse(lots: Lots, saidPiecesPerWeek: number | null): HouseholdUse | null {
  const mealPieces = mealOf(lots);
  const { days, pieces } = seenUse(lots);
  const said = saidPiecesPerWeek === null ? null : positive(saidPiecesPerWeek, 'what is used a week') / 7 / mealPieces;
  if (said === null && days === 0) return null;
  const saidShape = 1 / lossModel.saidUseSpread.value ** 2;
  const mealsShape = pieces / mealPieces + (said === null ? 0.5 : saidShape);
  const mealsDays = days + (said === null ? 0 : saidShape / said);
  return { mealsShape, mealsDays, meanPiecesPerDay: (mealsShape / mealsDays) * mealPieces, mealPieces };
}

/**
 * The use below which a given share of belief lies.
 *
 * @param share  above 0, below 1
 * @returns      pieces a day, ≥ 0, rising with the share
 * @throws RangeError on a share that is none
 * @example      two a day as said: 0.1 → 1.28, 0.9 → 2.80
 */
export function piecesPerDayAt({ mealsShape, mealsDays, mealPieces }: HouseholdUse, share: number): number {
  return gammaQuantile(share, mealsShape, mealsDays) * mealPieces;
}

function mealOf(lots: Lots): number {
  const keeping = keepingOf(lots[0]?.keepingKey ?? '');
  if (!keeping) throw new RangeError(`no kind of keeping: ${lots[0]?.keepingKey}`);
  return keeping.mealPieces;
}

function seenUse(lots: Lots): { readonly days: number; readonly pieces: number } {
  const goneOver = lots.flatMap((lot) => lot.goingsOver.map(({ on }) => on)).sort();
  const last = goneOver.at(-1);
  if (last === undefined) return { days: 0, pieces: 0 };
  const first = lots.map(({ putInOn }) => putInOn).reduce(earlier);
  const pieces = lots.flatMap((lot) => lot.goingsOver.map(({ used }) => used / amountPerPiece(lot)));
  return { days: Math.max(0.5, daysBetween(first, last)), pieces: pieces.reduce((sum, count) => sum + count, 0) };
}

function earlier(one: CalendarDate, other: CalendarDate): CalendarDate {
  return one < other ? one : other;
}
