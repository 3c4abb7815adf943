import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, type CalendarDate, daysBetween } from './calendar-date';
import { lastMonthDay, nextMonthDay } from './next-month-day';

const day = (text: string) => text as CalendarDate;

describe('a day of every year', () => {
  it.each([
    ['2026-11-28', '07-20', '2027-07-20', '2026-07-20'],
    ['2026-07-20', '07-20', '2026-07-20', '2026-07-20'],
    ['2026-07-19', '07-20', '2026-07-20', '2025-07-20'],
    ['2026-07-21', '07-20', '2027-07-20', '2026-07-20'],
    ['2028-02-29', '03-01', '2028-03-01', '2027-03-01'],
  ])('of %s, %s is next %s and was last %s', (today, monthDay, next, last) => {
    expect(nextMonthDay(day(today), monthDay)).toBe(next);
    expect(lastMonthDay(day(today), monthDay)).toBe(last);
  });

  it.each(['02-29', '13-01', '7-1', ''])('is not %s', (monthDay) => {
    expect(() => nextMonthDay(day('2026-01-01'), monthDay)).toThrow(RangeError);
    expect(() => lastMonthDay(day('2026-01-01'), monthDay)).toThrow(RangeError);
  });

  it('comes within a year, and is the first one there', () => {
    const offsets = fc.integer({ min: 0, max: 20_000 });
    fc.assert(
      fc.property(offsets, offsets, (from, which) => {
        const today = addDays(day('2000-01-01'), from);
        const monthDay = addDays(day('2001-01-01'), which % 365).slice(5);
        const [next, last] = [nextMonthDay(today, monthDay), lastMonthDay(today, monthDay)];
        expect([next.slice(5), last.slice(5)]).toEqual([monthDay, monthDay]);
        for (const away of [daysBetween(today, next), daysBetween(last, today)]) {
          expect(away).toBeGreaterThanOrEqual(0);
          expect(away).toBeLessThanOrEqual(365);
        }
      }),
    );
  });
});
