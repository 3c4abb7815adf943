import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, calendarDate } from './calendar-date';
import { formatMonthDay, isMonthDay, parseMonthDay } from './month-day';

const everyDay = Array.from({ length: 365 }, (_, at) => addDays(calendarDate('2027-01-01'), at).slice(5));

describe('days of every year', () => {
  it('are 365, and are read back from their words', () => {
    for (const day of everyDay)
      expect([day, isMonthDay(day), parseMonthDay(formatMonthDay(day))]).toEqual([day, true, day]);
  });

  it.each(['02-29', '02-30', '04-31', '13-01', '00-10', '1-1', '11-01 ', '', 'x', 1101, null, undefined])(
    'are not %j',
    (value) => expect(isMonthDay(value)).toBe(false),
  );

  it.each([
    ['1 November', '11-01'],
    [' 1 Nov ', '11-01'],
    ['1 nov.', '11-01'],
    ['1st November', '11-01'],
    ['November 22nd', '11-22'],
    ['28 Feb', '02-28'],
    ['12-31', '12-31'],
  ])('are typed as %j', (typed, day) => expect(parseMonthDay(typed)).toBe(day));

  it.each([
    '29 February',
    '31 April',
    '0 May',
    '32 May',
    '1 November 2',
    'November',
    '1',
    '1/11',
    '1 Novembre',
    '1 X',
    '1 Nov 2026',
    '１ Nov',
    '',
  ])('are not typed as %j', (typed) => expect(parseMonthDay(typed)).toBeNull());

  it('are found in no other text', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const found = parseMonthDay(text);
        return found === null || isMonthDay(found);
      }),
    );
    expect(() => formatMonthDay('02-29')).toThrow(RangeError);
  });
});
