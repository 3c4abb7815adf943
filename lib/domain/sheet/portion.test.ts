import { describe, expect, it } from 'vitest';
import { plainGround, plainOrder } from '@/tests/fixtures/sheet-orders';
import { calendarDate } from '../calendar/calendar-date';
import type { Digger } from '../exertion/session';
import { type Pace, portionOf } from './portion';
import { diggingOf } from './sheet-order';

const { plan } = diggingOf(plainOrder, plainGround);
const digger: Digger = {
  ageBand: 'under-60',
  pace: 'steady',
  bodyMassKg: 70,
  sessionMinutes: 90,
  limitKcalPerMin: null,
};
const pace: Pace = { digger, sessionsPerWeek: 3, from: plainOrder.from, until: plainOrder.until };
const monday = calendarDate('2026-11-09');
const wednesday = calendarDate('2026-11-11');
const done = (doneOn: typeof monday, ...trenches: number[]) => trenches.map((trench) => ({ trench, doneOn }));
const at = (today: typeof monday, ticks: ReturnType<typeof done> = [], who = pace) =>
  portionOf(plan, ticks, who, today, 1_000_000);

describe('portionOf', () => {
  it('is two trenches of 19 minutes in a session with 48 of digging: three mornings for six', () => {
    const portion = at(monday);
    expect(portion?.today.map(({ trench, finishes }) => [trench, finishes])).toEqual([
      [1, true],
      [2, true],
    ]);
    expect(portion).toMatchObject({
      doneToday: 0,
      leftToday: 2,
      daysLeft: 23,
      plan: { sessions: 3, inTime: { code: 'enough' } },
    });
    expect(portion?.plan.minutes).toBeCloseTo(6 * 19.2, 9);
  });

  it('stays the same through the day, and says how far it has come', () => {
    const portion = at(monday, done(monday, 1));
    expect(portion?.today.map(({ trench }) => trench)).toEqual([1, 2]);
    expect(portion).toMatchObject({ doneToday: 1, leftToday: 1, plan: { sessions: 3 } });
    expect(at(monday, done(monday, 1, 2, 3))).toMatchObject({ doneToday: 3, leftToday: 0 });
  });

  it('goes on next time from where it was left', () => {
    const portion = at(wednesday, done(monday, 1, 2));
    expect(portion?.today.map(({ trench }) => trench)).toEqual([3, 4]);
    expect(portion).toMatchObject({ doneToday: 0, leftToday: 2, plan: { sessions: 2 } });
  });

  it('is told to the end on the day on which all is done, and then no more', () => {
    const all = [...done(monday, 1, 2, 3, 4), ...done(wednesday, 5, 6)];
    expect(at(wednesday, all)).toMatchObject({ doneToday: 2, leftToday: 0 });
    expect(at(calendarDate('2026-11-12'), all)).toBeNull();
  });

  it('gives whoever has not said their age a short first session, once', () => {
    const unsaid = { ...pace, digger: { ...digger, ageBand: 'not-said' as const } };
    const first = at(monday, [], unsaid);
    expect(first?.plan).toMatchObject({ basis: { code: 'by-the-clock' }, firstSession: { totalMin: 30 } });
    // A trench of 19 minutes does not fit a quarter of an hour: it is begun.
    expect(first?.today).toMatchObject([{ trench: 1, finishes: false, minutes: 15 }]);
    expect(first?.today[0]?.ofMinutes).toBeCloseTo(19.2, 9);
    expect(first?.leftToday).toBe(0);
    expect(at(wednesday, done(monday, 1), unsaid)?.plan.firstSession.totalMin).toBe(60);
  });

  it('counts the days from when the season for it opens, and none once it is over', () => {
    expect(at(calendarDate('2026-09-01'))?.daysLeft).toBe(62);
    expect(at(plainOrder.until)?.daysLeft).toBe(1);
    const late = at(calendarDate('2026-12-02'));
    expect(late).toMatchObject({ daysLeft: 0, plan: { inTime: { code: 'not-enough' } } });
  });
});
