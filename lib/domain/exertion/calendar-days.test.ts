import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysOfSessions, sessionsInDays } from './calendar-days';

const often = fc.integer({ min: 1, max: 14 });

describe('sessions and days', () => {
  test.each([
    [1, 1, 1],
    [2, 1, 8],
    [3, 3, 5],
    [4, 3, 8],
    [7, 7, 7],
    [2, 14, 1],
    [3, 14, 2],
  ])('%s sessions, %s a week: %s days', (sessions, perWeek, days) => {
    expect(daysOfSessions(sessions, perWeek)).toBe(days);
    expect(sessionsInDays(days, perWeek)).toBeGreaterThanOrEqual(sessions);
    expect(sessionsInDays(days - 1, perWeek)).toBeLessThan(sessions);
  });

  test('no day, no session', () => expect(sessionsInDays(0, 3)).toBe(0));

  test('as many as fit, and one more would not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), often, (days, perWeek) => {
        const sessions = sessionsInDays(days, perWeek);
        expect(daysOfSessions(sessions, perWeek)).toBeLessThanOrEqual(days);
        expect(daysOfSessions(sessions + 1, perWeek)).toBeGreaterThan(days);
      }),
    );
  });

  test('a week never holds more than was said', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), often, (weeks, perWeek) => {
        expect(sessionsInDays(7 * weeks, perWeek)).toBe(weeks * perWeek);
      }),
    );
  });

  test.each([0, -1, 1.5, 15, Number.NaN, Number.POSITIVE_INFINITY])('%s a week is refused', (perWeek) => {
    expect(() => daysOfSessions(1, perWeek)).toThrow(RangeError);
    expect(() => sessionsInDays(1, perWeek)).toThrow(RangeError);
  });

  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%s sessions or days are refused', (value) => {
    expect(() => daysOfSessions(value, 3)).toThrow(RangeError);
    expect(() => sessionsInDays(value, 3)).toThrow(RangeError);
  });

  test('no session takes no plan', () => expect(() => daysOfSessions(0, 3)).toThrow(RangeError));
});
