import { describe, expect, it } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { latestDay, likelyDay } from './work-day';

const day = calendarDate;
const undated = (season: number, incorporated = false) => ({ season, doneOn: null, incorporated });
const dated = { season: 2027, doneOn: day('2026-10-05'), incorporated: true };

describe('the day of work', () => {
  it('is the one on record', () => {
    expect([likelyDay(dated), latestDay(dated, day('2026-11-25'))]).toEqual(['2026-10-05', '2026-10-05']);
  });

  it('is reckoned as 1 November before its season', () => expect(likelyDay(undated(2027))).toBe('2026-11-01'));

  it('is never before the calendar begins', () => expect(likelyDay(undated(1900))).toBe('1900-11-01'));

  it.each([
    [2026, '2026-08-30', '2026-08-30'],
    [2026, '2026-08-31', '2026-08-31'],
    [2026, '2026-09-01', '2026-08-31'],
    [2027, '2026-11-25', '2026-11-25'],
    [1990, '2026-11-25', '1990-08-31'],
  ])('left on top for %i is at the latest, on %s, %s', (season, today, latest) =>
    expect(latestDay(undated(season), day(today))).toBe(latest),
  );

  it.each([
    [2026, '2026-04-29', '2026-04-29'],
    [2026, '2026-05-01', '2026-04-30'],
    [2027, '2026-11-25', '2026-11-25'],
  ])('dug in for %i is at the latest, on %s, %s', (season, today, latest) =>
    expect(latestDay(undated(season, true), day(today))).toBe(latest),
  );
});
