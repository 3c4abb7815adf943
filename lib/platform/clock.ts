import 'server-only';
import { type CalendarDate, calendarDate } from '@/lib/domain/calendar/calendar-date';
import { env } from './env';

/** The instant now; fixed only under test. */
export function now(): Date {
  const { fixedNow } = env();
  return fixedNow ? new Date(fixedNow) : new Date();
}

/** The calendar day that an instant falls on where the society lives. */
export function dayIn(timeZone: string, instant: Date): CalendarDate {
  const parts = new Intl.DateTimeFormat('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' });
  return calendarDate(parts.format(instant));
}

/** The calendar day now where the society lives. */
export function todayIn(timeZone: string): CalendarDate {
  return dayIn(timeZone, now());
}

/**
 * The instant of a wall-clock time where the society lives. In the hour that spring skips, the time after the skip is
 * taken; of the hour that autumn repeats, the first.
 *
 * @param wall  `YYYY-MM-DDTHH:MM`
 */
export function instantIn(timeZone: string, wall: string): Date {
  const asUtc = Date.parse(`${wall}:00Z`);
  const shown = (at: number) => Date.parse(`${wallIn(timeZone, new Date(at))}:00Z`);
  const offsets = [asUtc - 86_400_000, asUtc + 86_400_000].map((at) => shown(at) - at);
  const fitting = offsets.map((offset) => asUtc - offset).filter((at) => shown(at) === asUtc);
  return new Date(fitting.length ? Math.min(...fitting) : asUtc - Math.min(...offsets));
}

/** The wall-clock time of an instant where the society lives, as `YYYY-MM-DDTHH:MM`. */
export function wallIn(timeZone: string, instant: Date): string {
  const time = new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
  return `${dayIn(timeZone, instant)}T${time.format(instant)}`;
}
