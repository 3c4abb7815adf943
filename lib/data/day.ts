import 'server-only';
import { type CalendarDate, calendarDate } from '@/lib/domain/calendar/calendar-date';

/** A calendar day as PostgreSQL's date column takes it. */
export function toDbDay(day: CalendarDate): Date {
  return new Date(`${day}T00:00:00Z`);
}

/** A date column's value as a calendar day. */
export function fromDbDay(value: Date): CalendarDate {
  return calendarDate(value.toISOString().slice(0, 10));
}
