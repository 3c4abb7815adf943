import { addMonths, type CalendarDate, daysBetween } from '@/lib/domain/calendar/calendar-date';

export type Likely = { readonly on: CalendarDate; readonly permille: number };

/** How far a chart goes: a little past the day from which hardly anything is left, and past the new crop [days]. */
export function chartDays(today: CalendarDate, likely: readonly Likely[], newCropOn: CalendarDate | null): number {
  const gone = likely.find(({ permille }) => permille <= 10) ?? likely.at(-1);
  const end = Math.max(28, gone ? daysBetween(today, gone.on) : 0, newCropOn ? daysBetween(today, newCropOn) : 0);
  return Math.ceil(end * 1.05);
}

/** The first days of the months from today on, not more than so many [days], thinned to a dozen at the most. */
export function monthTicks(today: CalendarDate, days: number): CalendarDate[] {
  const first = `${today.slice(0, 8)}01` as CalendarDate;
  const all = Array.from({ length: 40 }, (_, at) => addMonths(first, at + 1)).filter(
    (on) => daysBetween(today, on) <= days,
  );
  const every = Math.ceil(all.length / 12);
  return all.filter((_, at) => at % every === 0);
}
