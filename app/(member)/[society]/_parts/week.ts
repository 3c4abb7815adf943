import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';

/** Where and when a week is read, and in which units. */
export type Week = {
  readonly society: string;
  readonly today: CalendarDate;
  readonly timeZone: string;
  readonly units: 'metric' | 'imperial';
};
