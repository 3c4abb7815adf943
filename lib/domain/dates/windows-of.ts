import { addDays, type CalendarDate, calendarDate, daysBetween } from '../calendar/calendar-date';
import { isMonthDay, type MonthDay } from '../calendar/month-day';
import type { Season } from '../calendar/season-of';
import type { SourceKey } from '../catalogue/sources';
import {
  type HangsOn,
  referenceFrosts,
  type Step,
  type WayKey,
  type WindowRow,
  windowRowsOf,
} from '../catalogue/windows';

/** The usual last frost of spring and first of autumn, as days of the year. */
export type Frosts = { readonly lastFrost: MonthDay; readonly firstFrost: MonthDay };

/** When something is done, both days included, and why then. */
export type DatedWindow = {
  readonly step: Step;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly hangsOn: HangsOn;
  /** Days later than at the reference frosts; negative where earlier [d]. */
  readonly movedDays: number;
  readonly source: SourceKey;
};

/** One way of growing a crop for a season. */
export type CropWay = {
  readonly way: WayKey;
  /** In the order of the catalogue: sowing, planting, clearing. */
  readonly windows: readonly DatedWindow[];
  /** Days by which the frosts leave it less time than the latest sowing has at the reference frosts; 0 where it has enough [d]. */
  readonly shortDays: number;
};

/**
 * The windows of a crop for a season, moved to a society's frosts.
 *
 * Method: a window that hangs on a frost moves by as many days as that frost lies from the reference frost; one of the calendar stays. Where the
 * frosts come so close together that even the earliest sowing leaves less time to the end of clearing than the latest one has at the reference
 * frosts, the way is short by the difference.
 *
 * @param season  the year that the crop counts for; windows may lie in the autumn before or the year after
 * @param frosts  days of the year
 * @returns       one for each way that the catalogue knows; none for a crop that it does not know
 * @throws RangeError on a frost that is no day of every year, or a season outside 1901 to 2198
 * @source        the catalogue's windows, each with its own
 * @example       garlic for 2027 → planted from 1 October to 30 November 2026, whatever the frosts; or in February and early March
 */
export function windowsOf(cropKey: string, season: Season, frosts: Frosts): CropWay[] {
  const moves = { 'last-frost': moved('lastFrost', frosts), 'first-frost': moved('firstFrost', frosts), calendar: 0 };
  const rows = windowRowsOf(cropKey);
  return [...new Set(rows.map(({ way }) => way))].map((way) => {
    const printed = rows.filter((row) => row.way === way).map((row) => dated(row, season, 0));
    const windows = printed.map(({ movedDays: _, ...window }) => shifted(window, moves[window.hangsOn]));
    return { way, windows, shortDays: Math.max(0, latestDays(printed) - earliestDays(windows)) };
  });
}

/** Whether a step puts the crop into the ground where it is to stand. */
export function takesGround(step: Step): boolean {
  return step === 'in-place' || step === 'plant-out';
}

/** Days by which a frost lies later than the reference's. */
function moved(frost: keyof Frosts, frosts: Frosts): number {
  const [own, reference] = [frosts[frost], referenceFrosts[frost]];
  if (!isMonthDay(own)) throw new RangeError(`no day of every year: ${own}`);
  // Of a year without a leap day: the same in each.
  return daysBetween(calendarDate(`2027-${reference}`), calendarDate(`2027-${own}`));
}

function dated({ step, year, from, to, hangsOn, source }: WindowRow, season: Season, movedDays: number): DatedWindow {
  const begins = season + year;
  return {
    step,
    hangsOn,
    movedDays,
    source,
    from: calendarDate(`${begins}-${from}`),
    to: calendarDate(`${to < from ? begins + 1 : begins}-${to}`),
  };
}

function shifted(window: Omit<DatedWindow, 'movedDays'>, movedDays: number): DatedWindow {
  return { ...window, movedDays, from: addDays(window.from, movedDays), to: addDays(window.to, movedDays) };
}

function latestDays(windows: readonly DatedWindow[]): number {
  return daysToClear(windows, ({ to }) => to, 'last');
}

function earliestDays(windows: readonly DatedWindow[]): number {
  return daysToClear(windows, ({ from }) => from, 'first');
}

/** Days from going into the ground to the end of clearing; no end to it where the crop stands on. */
function daysToClear(
  windows: readonly DatedWindow[],
  dayOf: (window: DatedWindow) => CalendarDate,
  which: 'first' | 'last',
): number {
  const into = windows
    .filter(({ step }) => takesGround(step))
    .map(dayOf)
    .sort();
  const day = which === 'first' ? into[0] : into.at(-1);
  const cleared = windows.find(({ step }) => step === 'clear');
  return day && cleared ? daysBetween(day, cleared.to) : 0;
}
