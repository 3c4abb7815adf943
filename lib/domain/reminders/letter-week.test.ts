import { describe, expect, it } from 'vitest';
import { letterWeek } from './letter-week';

describe('the week whose letter is to go out', () => {
  it.each([
    ['2026-11-29T23:59', null],
    ['2026-11-30T05:59', null],
    ['2026-11-30T06:00', '2026-11-30'],
    ['2026-11-30T23:59', '2026-11-30'],
    ['2026-12-01T00:00', '2026-11-30'],
    ['2026-12-02T23:59', '2026-11-30'],
    ['2026-12-03T00:00', null],
    ['2027-01-01T12:00', null],
    // The week in which the clocks change, and the one across the year.
    ['2027-03-29T06:00', '2027-03-29'],
    ['2029-01-01T06:00', '2029-01-01'],
    ['2030-01-01T06:00', '2029-12-31'],
  ])('%s → %s', (wall, monday) => expect(letterWeek(wall)).toBe(monday));
});
