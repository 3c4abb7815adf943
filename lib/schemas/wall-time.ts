import { z } from 'zod';
import { isCalendarDate } from '@/lib/domain/calendar/calendar-date';

// Within the century, where every time zone knows its hours.
const shape = /^20\d\d-\d\d-\d\d[T ]([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d{1,3})?)?$/;
const words = 'Give the day and time, such as 2026-12-03 18:00.';

/** A day and time on the society's clock, to the minute. */
export const wallTime = z
  .string({ error: words })
  .trim()
  .refine((text) => shape.test(text) && isCalendarDate(text.slice(0, 10)), words)
  .transform((text) => text.replace(' ', 'T').slice(0, 16));
