import { type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { lossModel } from '../catalogue/store-model';
import { wholeFrom } from '../quantity/checked';
import { believedLife } from './lasts';
import { sortedQuantile } from '../statistics/sorted-quantile';
import type { StoreLot } from './lot';
import { scenariosOf } from './scenarios';

/** Days from today; between least and most it falls in eight cases of ten. */
export type UseBy = { readonly leastDays: number; readonly medianDays: number; readonly mostDays: number };

/**
 * By when a lot must be used: the end of its life, by which three pieces of ten have gone bad.
 *
 * Method: scenarios as for `lastsOf`; from the last going over on, losses come as fast as the scenario has it. A life that is over is 0.
 *
 * @param lot    its goings over in order
 * @param today  not before the last of them
 * @returns      whole days ≥ 0, least ≤ median ≤ most
 * @throws RangeError on an unknown kind, or a record after today
 * @source       the model: docs/decisions/0011-how-long-a-lot-lasts.md
 * @example      butternuts put in today at 11 °C → 58, 74 and 96 days
 */
export function mustUseBy(lot: StoreLot, today: CalendarDate): UseBy {
  const age = wholeFrom(0, daysBetween(lot.putInOn, today));
  const lastAge = age - wholeFrom(0, daysBetween(lot.goingsOver.at(-1)?.on ?? lot.putInOn, today));
  const { value: shape } = lossModel.shape;
  const days = scenariosOf([believedLife(lot)], null)
    .map(({ livesDays: [life = 0], ahead }) => {
      const yetToCome = (life ** shape - lastAge ** shape) / ahead;
      return yetToCome <= 0 ? 0 : Math.max(0, (lastAge ** shape + yetToCome) ** (1 / shape) - age);
    })
    .sort((one, other) => one - other);
  const at = (share: number) => Math.round(sortedQuantile(days, share));
  return { leastDays: at(0.1), medianDays: at(0.5), mostDays: at(0.9) };
}
