import { type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { storeAnswers } from '../catalogue/store-model';
import { forecastDays, likelyOn } from './forecast-days';
import type { Lasts } from './lasts';

export type EnoughTill = {
  readonly answer: 'yes' | 'no' | 'cannot-tell';
  /** That anything is left on that day; null where nothing is known of the use. */
  readonly likelyPermille: number | null;
  readonly reason: 'likely-enough' | 'likely-too-little' | 'between' | 'use-unknown';
};

/**
 * Whether what is stored lasts till the new crop.
 *
 * Method: yes where it is four times likelier than not that something is left on that day, no where it is four times likelier that
 * nothing is, else it can't be told.
 *
 * @param lasts      of `lastsOf`, on the same today
 * @param today      the day it was worked out for
 * @param newCropOn  from today to three years on
 * @returns          the answer and what it rests on, in thousandths
 * @throws RangeError on a day before today or beyond the forecast
 * @source           thresholds: common practice
 * @example          0.86 likely that onions are left on 20 July → yes
 */
export function enoughTill(lasts: Lasts, today: CalendarDate, newCropOn: CalendarDate): EnoughTill {
  const day = daysBetween(today, newCropOn);
  if (day < 0 || day > (forecastDays.at(-1) ?? 0)) throw new RangeError(`not a day of the forecast: ${newCropOn}`);
  if (lasts.use === null) return { answer: 'cannot-tell', likelyPermille: null, reason: 'use-unknown' };
  const likely = likelyOn(lasts.likelyLeft, day);
  const likelyPermille = Math.round(likely * 1000);
  if (likely * 100 >= storeAnswers.enoughFromPercent.value)
    return { answer: 'yes', likelyPermille, reason: 'likely-enough' };
  if (likely * 100 <= storeAnswers.tooLittleToPercent.value)
    return { answer: 'no', likelyPermille, reason: 'likely-too-little' };
  return { answer: 'cannot-tell', likelyPermille, reason: 'between' };
}
