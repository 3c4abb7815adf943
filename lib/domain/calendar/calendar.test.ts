import { describe, expect, it } from 'vitest';
import { addDays, addMonths, calendarDate, daysBetween, isCalendarDate, makeDate, withinYears } from './calendar-date';
import { seasonsOf } from './season-of';

const day = calendarDate;

describe('calendar days', () => {
  it.each(['2026-02-31', '1899-12-31', '2200-01-01', '2026-1-1', '', 'today', '2026-13-01'])('are not %s', (text) => {
    expect(isCalendarDate(text)).toBe(false);
    expect(() => calendarDate(text)).toThrow(RangeError);
  });

  it('count across leap days and years', () => {
    expect(addDays(day('2024-02-28'), 2)).toBe('2024-03-01');
    expect(daysBetween(day('2026-12-31'), day('2027-01-01'))).toBe(1);
    expect(makeDate(2026, 5, 1)).toBe('2026-05-01');
    expect(() => addDays(day('2026-01-01'), 0.5)).toThrow(RangeError);
  });
});

describe('months and years', () => {
  it('end with the month where it is shorter', () => {
    expect(addMonths(day('2026-08-31'), 6)).toBe('2027-02-28');
    expect(addMonths(day('2023-08-31'), 6)).toBe('2024-02-29');
    expect(addMonths(day('2026-11-15'), 3)).toBe('2027-02-15');
    expect(addMonths(day('2026-03-31'), -1)).toBe('2026-02-28');
    expect(() => addMonths(day('2026-01-01'), 0.5)).toThrow(RangeError);
  });

  it.each([
    ['2026-03-01', '2026-03-01', true],
    ['2026-03-01', '2027-02-28', true],
    ['2026-03-01', '2027-03-01', false],
    ['2026-03-01', '2026-02-28', false],
    ['2027-03-01', '2028-02-29', true],
    ['2024-02-29', '2025-02-28', true],
    ['2024-02-29', '2025-03-01', false],
    ['2023-02-28', '2024-02-28', false],
  ])('a year from %s: %s in it, %s', (from, on, within) => expect(withinYears(day(from), day(on), 1)).toBe(within));

  it('several years, none, and what are no years', () => {
    expect(withinYears(day('2026-03-01'), day('2029-02-28'), 3)).toBe(true);
    expect(withinYears(day('2026-03-01'), day('2029-03-01'), 3)).toBe(false);
    expect(withinYears(day('2026-03-01'), day('2026-03-01'), 0)).toBe(false);
    expect(() => withinYears(day('2026-03-01'), day('2026-03-01'), 1.5)).toThrow(RangeError);
  });
});

describe('the seasons of a planting', () => {
  const seasons = (sownOn: string, clearedOn: string | null) => {
    const { firstSeason, lastSeason } = seasonsOf({
      sownOn: day(sownOn),
      plantedOn: null,
      clearedOn: clearedOn ? day(clearedOn) : null,
    });
    return [firstSeason, lastSeason];
  };

  it.each([
    ['October garlic counts next year', '2025-10-20', '2026-07-10', [2026, 2026]],
    ['September mustard counts this year', '2025-09-05', '2026-03-20', [2025, 2025]],
    ['a summer crop counts its own', '2026-04-01', '2026-10-01', [2026, 2026]],
    ['leeks that stand over count once', '2026-06-20', '2027-04-10', [2026, 2026]],
    ['what stands into May counts twice', '2026-06-20', '2027-05-01', [2026, 2027]],
    ['what stands counts from when it can', '2026-10-20', null, [2027, 2027]],
    ['31 August is in the window', '2026-08-31', null, [2026, 2026]],
  ])('%s', (_, sownOn, clearedOn, expected) => {
    expect(seasons(sownOn, clearedOn)).toEqual(expected);
  });

  it('need a beginning, and an end after it', () => {
    expect(() => seasonsOf({ sownOn: null, plantedOn: null, clearedOn: null })).toThrow(RangeError);
    expect(() => seasons('2026-05-01', '2026-04-01')).toThrow(RangeError);
  });
});
