import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goneOver, storeLot } from '@/tests/fixtures/store-lots';
import { addDays, calendarDate } from '../calendar/calendar-date';
import { curingClock } from './curing-clock';
import { roundsDue } from './rounds-due';

const day = calendarDate;
const onions = storeLot();
const due = (today: string, lot = onions) => roundsDue([lot], day(today))[0];

describe('a going over', () => {
  it.each([
    ['2026-09-01', false, 0, 0],
    ['2026-09-14', false, 0, 0],
    ['2026-09-15', true, 0, 0],
    ['2026-09-16', true, 1, 0],
    ['2026-09-28', true, 13, 0],
    ['2026-09-29', true, 14, 1],
    ['2026-10-13', true, 28, 2],
  ])(
    'of onions put in on 1 September, on %s: due %s, %i days late, %i missed',
    (today, isDue, daysLate, missedRounds) =>
      expect(due(today)).toMatchObject({ dueOn: '2026-09-15', everyDays: 14, isDue, daysLate, missedRounds }),
  );

  it('is counted from the last', () =>
    expect(due('2026-09-29', goneOver(onions, ['2026-09-20', 4, 0]))).toMatchObject({
      lastOn: '2026-09-20',
      dueOn: '2026-10-04',
      isDue: false,
    }));

  it('of potatoes comes by the month, and of any lot as its holder has it', () => {
    expect(due('2026-10-01', storeLot({ keepingKey: 'potato' }))).toMatchObject({ dueOn: '2026-10-01', isDue: true });
    expect(due('2026-09-08', storeLot({ goingOverDays: 7 }))).toMatchObject({ dueOn: '2026-09-08', isDue: true });
  });

  it('is none where nothing is left', () =>
    expect(roundsDue([goneOver(onions, ['2026-09-20', 58, 2])], day('2026-12-01'))).toEqual([]));

  it('goes by place, what is due longest first', () => {
    const lots = [
      storeLot({ id: 'b', placeId: 'shed', putInOn: day('2026-09-05') }),
      storeLot({ id: 'c', placeId: 'clamp' }),
      storeLot({ id: 'a', placeId: 'shed', putInOn: day('2026-09-05') }),
      storeLot({ id: 'd', placeId: 'shed' }),
    ];
    expect(roundsDue(lots, day('2026-09-20')).map(({ lotId }) => lotId)).toEqual(['c', 'd', 'a', 'b']);
  });

  it('refuses what is not yet, an unknown kind and no interval', () => {
    expect(() => due('2026-08-31')).toThrow(RangeError);
    expect(() => due('2026-09-20', storeLot({ keepingKey: 'nobody-knows' }))).toThrow(RangeError);
    expect(() => due('2026-09-20', storeLot({ goingOverDays: 0 }))).toThrow(RangeError);
  });

  it('is missed once for each of its days that went by before the last one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.nat(400), (goingOverDays, since) => {
        const today = addDays(onions.putInOn, since);
        const [round] = roundsDue([{ ...onions, goingOverDays }], today);
        let missed = 0;
        for (let at = goingOverDays; at + goingOverDays <= since; at += goingOverDays) missed++;
        expect(round).toMatchObject({ missedRounds: missed, isDue: since >= goingOverDays });
      }),
    );
  });
});

describe('curing', () => {
  const clock = (today: string, keepingKey = 'onion') => curingClock(keepingKey, day('2026-08-01'), day(today));

  it.each([
    ['2026-08-01', 'curing', 0],
    ['2026-08-14', 'curing', 13],
    ['2026-08-15', 'ready', 14],
    ['2026-08-21', 'ready', 20],
    ['2026-08-22', 'over-long', 21],
  ] as const)('of onions laid out on 1 August, on %s: %s, day %i', (today, state, at) =>
    expect(clock(today)).toMatchObject({ state, day: at, readyOn: '2026-08-15', latestOn: '2026-08-21' }),
  );

  it('is not for acorn squash, and has no clock for carrots', () => {
    expect(clock('2026-08-05', 'acorn-squash')).toMatchObject({ state: 'not-cured', readyOn: '2026-08-01' });
    expect(clock('2026-08-05', 'carrot')).toBeNull();
  });

  it('has begun', () => expect(() => clock('2026-07-31')).toThrow(RangeError));
});
