import { expect, test } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { seasonsOnRecord } from './seasons-on-record';

const window = { fromMonthDay: '05-01', toMonthDay: '08-31' };

test.each([
  ['nothing on record', 2027, 2027, null, null, [2027, 2027]],
  ['planted in the autumn before', 2027, 2027, '2026-11-10', null, [2027, 2027]],
  ['in the ground from spring to summer', 2027, 2027, '2027-03-10', '2027-07-20', [2027, 2027]],
  ['standing, cleared in the autumn', 2022, 2200, null, '2026-11-03', [2022, 2026]],
  ['standing, cleared before the window of its year', 2022, 2200, null, '2026-04-30', [2022, 2025]],
  ['cleared before its own season', 2027, 2027, null, '2026-11-03', [2027, 2027]],
] as const)('%s', (_, firstSeason, lastSeason, begun, cleared, seasons) => {
  const [begunOn, clearedOn] = [begun, cleared].map((one) => (one ? calendarDate(one) : null));
  const found = seasonsOnRecord(
    { firstSeason, lastSeason },
    { begunOn: begunOn ?? null, clearedOn: clearedOn ?? null },
    window,
  );
  expect([found.firstSeason, found.lastSeason]).toEqual(seasons);
});

test('cleared before it was begun', () =>
  expect(() =>
    seasonsOnRecord(
      { firstSeason: 2027, lastSeason: 2027 },
      { begunOn: calendarDate('2027-03-10'), clearedOn: calendarDate('2027-03-09') },
      window,
    ),
  ).toThrow(RangeError));
