import { describe, expect, it } from 'vitest';
import { addDays, calendarDate } from '@/lib/domain/calendar/calendar-date';
import { chartDays, monthTicks } from './chart-days';

const today = calendarDate('2026-11-28');
const likely = [0, 50, 100, 150].map((days, at) => ({
  on: addDays(today, days),
  permille: [1000, 600, 9, 0][at] ?? 0,
}));

describe('how far a chart goes', () => {
  it.each([
    ['past the day from which hardly any is left', null, 105],
    ['past the new crop', addDays(today, 200), 210],
  ])('%s', (_, newCropOn, days) => expect(chartDays(today, likely, newCropOn)).toBe(days));

  it('is a month at the least', () => expect(chartDays(today, [{ on: today, permille: 0 }], null)).toBe(30));
});

it('the months begin on their first days, a dozen at the most', () => {
  expect(monthTicks(today, 70)).toEqual(['2026-12-01', '2027-01-01', '2027-02-01']);
  expect(monthTicks(today, 1100).length).toBeLessThanOrEqual(12);
  expect(monthTicks(calendarDate('2026-12-31'), 32)).toEqual(['2027-01-01', '2027-02-01']);
});
