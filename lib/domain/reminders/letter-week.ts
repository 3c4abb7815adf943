import { addDays, calendarDate, type CalendarDate, daysBetween } from '../calendar/calendar-date';

/** Letters go out on Monday from this hour on, where the society lives; … */
const fromHour = 6;
/** … and, where nothing ran then, up to and including Wednesday: after that the week is half over. */
const lastDay = 2;

/** A Monday to count from. */
const someMonday = calendarDate('1900-01-01');

/**
 * The week whose letter is to go out now, by its Monday.
 *
 * @param wall  the time where the society lives, `YYYY-MM-DDTHH:MM`
 * @returns     the Monday; null where none is to go out now
 * @source      common practice
 * @example     Monday 30 November 2026, 07:00 → 2026-11-30; Sunday → null
 */
export function letterWeek(wall: string): CalendarDate | null {
  const today = calendarDate(wall.slice(0, 10));
  const sinceMonday = daysBetween(someMonday, today) % 7;
  if (sinceMonday > lastDay) return null;
  if (sinceMonday === 0 && Number(wall.slice(11, 13)) < fromHour) return null;
  return addDays(today, -sinceMonday);
}
