import { type CalendarDate, daysBetween } from '../calendar/calendar-date';

/** Where a day stands to a window. Days are whole and never negative [d]. */
export type SowingState =
  | { readonly code: 'opens'; readonly inDays: number }
  /** 0 days left on its last day. */
  | { readonly code: 'open'; readonly daysLeft: number }
  | { readonly code: 'closed'; readonly daysAgo: number };

/**
 * Whether a window is still to open, open, or closed on a day.
 *
 * @param window  first and last day, both included
 * @returns       the code, with the days till it opens, left in it, or since it closed
 * @throws RangeError on a window that ends before it begins
 * @source        by definition
 * @example       1 to 31 January, on 29 January → open, 2 days left
 */
export function sowingState(
  { from, to }: { readonly from: CalendarDate; readonly to: CalendarDate },
  today: CalendarDate,
): SowingState {
  if (to < from) throw new RangeError(`a window ends before it begins: ${from} to ${to}`);
  if (today < from) return { code: 'opens', inDays: daysBetween(today, from) };
  if (today > to) return { code: 'closed', daysAgo: daysBetween(to, today) };
  return { code: 'open', daysLeft: daysBetween(today, to) };
}
