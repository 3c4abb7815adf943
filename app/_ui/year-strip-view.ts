import {
  addDays,
  addMonths,
  type CalendarDate,
  calendarDate,
  daysBetween,
  makeDate,
  monthOf,
  yearOf,
} from '@/lib/domain/calendar/calendar-date';
import type { Step } from '@/lib/domain/catalogue/windows';
import type { Frosts } from '@/lib/domain/dates/windows-of';

/** What a strip shows: so many whole months from the first of one. */
export type StripMonths = { readonly from: CalendarDate; readonly months: number };

type Bar = { readonly step: Step; readonly lane: number; readonly x: number; readonly width: number };

/** A year strip, measured in months from its left edge. */
export type StripView = {
  readonly months: readonly { readonly letter: string; readonly year: number | null }[];
  readonly bars: readonly Bar[];
  readonly frosts: readonly { readonly x: number; readonly which: keyof Frosts }[];
  readonly today: number | null;
};

const lanes: Readonly<Record<Step, number>> = { 'under-cover': 0, seedbed: 0, 'in-place': 0, 'plant-out': 1, clear: 2 };

/** The months that a strip shows around a day: two before it, and till the end of the winter after next. */
export function monthsAround(today: CalendarDate): StripMonths {
  return { from: addMonths(makeDate(yearOf(today), monthOf(today), 1), -2), months: 17 };
}

/** The months of one season: from the August before it to the May after. */
export function monthsOfSeason(season: number): StripMonths {
  return { from: makeDate(season - 1, 8, 1), months: 22 };
}

/**
 * Windows as bars on a strip of months; what lies outside is cut off. Sowing, planting and clearing have a lane each.
 *
 * @param windows  first and last day, both included
 * @returns        x and width in months, so that every month is as wide as every other
 */
export function stripView(
  { from, months }: StripMonths,
  windows: readonly { readonly step: Step; readonly from: CalendarDate; readonly to: CalendarDate }[],
  frosts: Frosts,
  today: CalendarDate,
): StripView {
  const at = (day: CalendarDate) => monthsFrom(from, day);
  const within = (x: number) => x >= 0 && x <= months;
  const bars = windows.flatMap((window): Bar[] => {
    const [x, end] = [Math.max(0, at(window.from)), Math.min(months, at(addDays(window.to, 1)))];
    return end > x ? [{ step: window.step, lane: lanes[window.step], x, width: end - x }] : [];
  });
  const years = [0, 1, 2].map((after) => yearOf(from) + after);
  const marks = years.flatMap((year) =>
    (['lastFrost', 'firstFrost'] as const).map((which) => ({ x: at(calendarDate(`${year}-${frosts[which]}`)), which })),
  );
  return {
    bars,
    months: Array.from({ length: months }, (_, nth) => {
      const first = addMonths(from, nth);
      return {
        letter: 'JFMAMJJASOND'[monthOf(first) - 1] ?? '',
        year: nth === 0 || monthOf(first) === 1 ? yearOf(first) : null,
      };
    }),
    frosts: marks.filter(({ x }) => within(x)),
    today: within(at(today)) ? at(today) : null,
  };
}

/** Months from the first of one to a day, with the part of its own month that has gone by. */
function monthsFrom(from: CalendarDate, day: CalendarDate): number {
  const first = makeDate(yearOf(day), monthOf(day), 1);
  const whole = (yearOf(day) - yearOf(from)) * 12 + monthOf(day) - monthOf(from);
  return whole + daysBetween(first, day) / daysBetween(first, addMonths(first, 1));
}
