import { z } from 'zod';
import { calendarDate, isCalendarDate } from '@/lib/domain/calendar/calendar-date';

const form = 'Give a real day, such as 2026-11-21.';

/** A calendar day as a date field sends it, or typed day first: 21/11/2026, 21.11.2026. */
export function day(what: string) {
  const words = `${form} It is ${what}.`;
  return z.string({ error: words }).trim().transform(yearFirst).refine(isCalendarDate, words).transform(calendarDate);
}

/** A day that may be left empty; empty comes out as null. */
export function optionalDay(what: string) {
  const words = `${form} Or leave ${what} empty.`;
  return z
    .string({ error: words })
    .trim()
    .default('')
    .transform(yearFirst)
    .refine((text) => text === '' || isCalendarDate(text), words)
    .transform((text) => (text === '' ? null : calendarDate(text)));
}

function yearFirst(text: string): string {
  const dayFirst = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(text);
  if (!dayFirst) return text;
  const [, dayOf = '', month = '', year] = dayFirst;
  return `${year}-${month.padStart(2, '0')}-${dayOf.padStart(2, '0')}`;
}
