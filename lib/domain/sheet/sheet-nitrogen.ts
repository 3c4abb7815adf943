import { type CalendarDate, withinYears } from '../calendar/calendar-date';
import { hectareLimit } from '../catalogue/nitrogen-limits';
import type { Footprint } from '../ground/footprint';
import { nutrientMgPerM2 } from '../nutrients/dressing';
import { type NitrogenDressing, nitrogenOver } from '../nutrients/nitrogen-over';
import { type RateWithin, rateWithin } from '../nutrients/rate-within';
import { contentsOf } from '../nutrients/supply';
import { diggingOf, type SheetOrder } from './sheet-order';
import { thumbRuleRateGPerM2, type ThumbRate } from '../trench/thumb-rule';

export type SheetNitrogen = {
  /** What the sheet's own manure and meal bring [mg/m²]; null where a content is not known. */
  readonly broughtMgPerM2: number | null;
  readonly limitMgPerM2: number;
  /** The heaviest twelve months of the worst ground, the sheet's dressing and all others, as a multiple of the guidance. */
  readonly timesYear: number;
  /** The same of the mean of a year over the manuring interval. */
  readonly timesMean: number;
  readonly intervalYears: number;
  /** Some dressing's content or amount is not known, so these are the least it can be. */
  readonly isLeast: boolean;
  /** What the ground had within twelve months of the sheet's day, and the sheet's meal [mg/m²]. */
  readonly besideMgPerM2: number;
  /** The most manure that keeps the guidance beside that: for the year, and as the one dressing of the interval. */
  readonly keepsYear: RateWithin | null;
  readonly keepsMean: RateWithin | null;
  /** What half a load a trench comes to, as a multiple of the guidance; null where no trench is opened or manured. */
  readonly thumb: (ThumbRate & { readonly timesBottom: number; readonly timesMost: number }) | null;
};

/**
 * How a sheet's dressing stands to the guidance on nitrogen, with what its ground had before, and the rate that keeps it.
 *
 * Method: `nitrogenOver` with the sheet's manure and meal as one more dressing of its day. The rates that keep it are what
 * `rateWithin` leaves beside the other dressings of the twelve months before and after, and beside the meal. The thumb
 * rule is only held against the guidance: it sets nothing.
 *
 * @param on             the day that the sheet's dressing is reckoned from
 * @param others         dressings of the frame but the sheet's own, nitrogen whole number ≥ 0 or null [mg/m²]
 * @param intervalYears  the manuring interval; whole number ≥ 1
 * @throws RangeError    on an unknown material, and as `nitrogenOver`
 * @source               Nitrate Pollution Prevention Regulations 2015, SI 2015/668, regulation 8(1); thumb rule: common practice
 * @example              5,000 g/m² of horse manure on bare ground, interval 3 → once the guidance, a third of it on the mean
 */
export function sheetNitrogen(
  order: SheetOrder,
  ground: Footprint,
  on: CalendarDate,
  others: readonly NitrogenDressing[],
  intervalYears: number,
): SheetNitrogen {
  const { manure, meal } = order;
  const manureMg = manure ? broughtBy(manure.materialKey, manure.bottomGPerM2 + manure.topGPerM2) : 0;
  const mealMg = meal ? broughtBy(meal.key, meal.gPerM2) : 0;
  const broughtMgPerM2 = manureMg === null || mealMg === null ? null : manureMg + mealMg;
  const over = nitrogenOver(
    ground,
    [...others, { footprint: ground, on, nitrogenMgPerM2: broughtMgPerM2 }],
    intervalYears,
  );
  const near = others.filter((one) => withinYears(one.on, on, 1) || withinYears(on, one.on, 1));
  const besideMgPerM2 = nitrogenOver(ground, near, intervalYears).worstMgPerM2 + (mealMg ?? 0);
  const keeps = (years: number) =>
    manure ? rateWithin(manure.materialKey, hectareLimit.kgPerHa, besideMgPerM2, years) : null;
  return {
    broughtMgPerM2,
    limitMgPerM2: over.limitMgPerM2,
    timesYear: over.timesLimit,
    timesMean: over.worstMeanMgPerM2 / over.limitMgPerM2,
    intervalYears,
    isLeast: over.pieces.some(({ unknown }) => unknown),
    besideMgPerM2,
    keepsYear: keeps(1),
    keepsMean: keeps(intervalYears),
    thumb: thumbOf(order, ground, over.limitMgPerM2),
  };
}

function broughtBy(materialKey: string, rateGPerM2: number): number | null {
  const { nitrogen } = contentsOf(materialKey);
  return nitrogen && nutrientMgPerM2(rateGPerM2, nitrogen.gPerT);
}

function thumbOf(order: SheetOrder, ground: Footprint, limitMgPerM2: number): SheetNitrogen['thumb'] {
  const [trench] = diggingOf(order, ground).plan.trenches;
  const { manure, layoutBy, barrowLitres } = order;
  if (!trench || !manure || layoutBy === 'no-trench') return null;
  const rate = thumbRuleRateGPerM2(trench, barrowLitres, manure.densityGPerL);
  const times = (rateGPerM2: number) => (broughtBy(manure.materialKey, rateGPerM2) ?? 0) / limitMgPerM2;
  return { ...rate, timesBottom: times(rate.bottomGPerM2), timesMost: times(rate.mostGPerM2) };
}
