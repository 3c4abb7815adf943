import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, calendarDate } from '@/lib/domain/calendar/calendar-date';
import { seasonDays } from '@/lib/domain/season/season-days';
import { seasonServed } from '../ground/holding-need';

test('a day is of the season that manure put on it serves, and of no other', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 90_000 }), (days) => {
      const day = addDays(calendarDate('1901-01-01'), days);
      const { from, until } = seasonDays(seasonServed(day));
      expect(from <= day && day < until).toBe(true);
    }),
  );
});
