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
