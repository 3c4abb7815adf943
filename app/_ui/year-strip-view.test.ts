import { describe, expect, test } from 'vitest';
import { calendarDate as day } from '@/lib/domain/calendar/calendar-date';
import { monthsAround, monthsOfSeason, stripView } from './year-strip-view';

const frosts = { lastFrost: '05-01', firstFrost: '10-20' };
const around = monthsAround(day('2026-11-28'));
const bar = (from: string, to: string) =>
  stripView(around, [{ step: 'clear' as const, from: day(from), to: day(to) }], frosts, day('2026-11-28')).bars[0];

describe('a year strip', () => {
  test('begins two months back, and names each year once', () => {
    expect(around).toEqual({ from: '2026-09-01', months: 17 });
    const { months } = stripView(around, [], frosts, day('2026-11-28'));
    expect(months.map(({ letter }) => letter).join('')).toBe('SONDJFMAMJJASONDJ');
    expect(months.flatMap(({ year }) => year ?? [])).toEqual([2026, 2027, 2028]);
    expect(monthsOfSeason(2027)).toEqual({ from: '2026-08-01', months: 22 });
  });

  test.each([
    ['2026-09-01', '2026-09-30', 0, 1],
    ['2027-01-01', '2027-01-31', 4, 1],
    ['2027-04-16', '2027-05-31', 7.5, 1.5],
    ['2026-07-01', '2026-09-15', 0, 0.5],
    ['2028-01-01', '2028-05-31', 16, 1],
  ])('%s to %s', (from, to, x, width) => expect(bar(from, to)).toEqual({ step: 'clear', lane: 2, x, width }));

  test('what lies outside is not drawn', () => {
    expect(bar('2026-08-01', '2026-08-31')).toBeUndefined();
    expect(bar('2028-02-01', '2028-02-28')).toBeUndefined();
  });

  test('marks the frosts that fall on it, and the day', () => {
    const view = stripView(around, [], frosts, day('2026-11-16'));
    expect(view.frosts.map(({ which }) => which)).toEqual(['firstFrost', 'lastFrost', 'firstFrost']);
    expect(view.frosts[1]?.x).toBe(8);
    expect(view.today).toBe(2.5);
    expect(stripView(around, [], frosts, day('2029-01-01')).today).toBeNull();
  });
});
