import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DiggingOrder, planDays } from './plan-days';
import type { Digger } from './session';

const digger: Digger = {
  ageBand: 'under-60',
  pace: 'gentle',
  bodyMassKg: 70,
  sessionMinutes: 60,
  limitKcalPerMin: null,
};
const order: DiggingOrder = {
  work: { kind: 'area', areaCm2: 90_000, method: 'double-digging' },
  digger,
  sessionsPerWeek: 3,
  daysLeft: 15,
  soilMassG: null,
};

describe('planDays', () => {
  test('nine square metres at a gentle pace: seven sessions in fifteen days, just in time', () => {
    const plan = planDays(order);
    expect(plan.minutes).toBeCloseTo(360, 9);
    expect(plan).toMatchObject({
      basis: { code: 'adults-19-59' },
      notes: ['group-averages'],
      sessions: 7,
      daysNeeded: 15,
      inTime: { code: 'enough', spareDays: 0 },
      split: null,
      soilPerSessionG: null,
    });
  });

  test('a day too few: what can be done until then, and how often would be enough', () => {
    const { inTime, firstSession } = planDays({ ...order, daysLeft: 14 });
    expect(inTime).toMatchObject({ code: 'not-enough', shortByDays: 1, sessionsByThen: 6, sessionsPerWeekEnough: 4 });
    expect(inTime.code === 'not-enough' && inTime.minutesByThen).toBeCloseTo(6 * firstSession.diggingMin, 9);
  });

  test('no day left: nothing can be done, and no number of sessions helps', () =>
    expect(planDays({ ...order, daysLeft: 0 }).inTime).toEqual({
      code: 'not-enough',
      shortByDays: 15,
      sessionsByThen: 0,
      minutesByThen: 0,
      sessionsPerWeekEnough: null,
    }));

  test('a session every day does in seven days what cannot be done in six', () => {
    expect(planDays({ ...order, daysLeft: 7 }).inTime).toMatchObject({ sessionsPerWeekEnough: 7 });
    expect(planDays({ ...order, daysLeft: 6 }).inTime).toMatchObject({ sessionsPerWeekEnough: null });
  });

  test('whoever has been at it already has had their short first session', () => {
    const byTheClock = { ...order, digger: { ...digger, ageBand: 'not-said' as const } };
    expect(planDays(byTheClock).firstSession.totalMin).toBe(30);
    expect(planDays({ ...byTheClock, sessionsDone: 0 })).toEqual(planDays(byTheClock));
    const later = planDays({ ...byTheClock, sessionsDone: 1 });
    expect(later.firstSession).toEqual(later.laterSession);
    expect(() => planDays({ ...byTheClock, sessionsDone: -1 })).toThrow(RangeError);
  });

  test.each([
    ['60-or-over', '60-or-over'],
    ['not-said', 'age-not-said'],
  ] as const)('%s goes by the clock: more sessions, no energy figure', (ageBand, why) => {
    const plan = planDays({ ...order, digger: { ...digger, ageBand, sessionMinutes: 120 } });
    expect(plan.basis).toEqual({ code: 'by-the-clock', why });
    expect(plan.notes).toEqual(['no-energy-figure', 'session-shortened']);
    // A quarter of an hour the first time, half an hour after that: 15 + 11 × 30 fall short of six hours, 12 do not.
    expect(plan.sessions).toBe(13);
    expect(JSON.stringify(plan)).not.toMatch(/kcal|met/i);
  });

  test('a body that was not weighed is said to be assumed', () =>
    expect(planDays({ ...order, digger: { ...digger, bodyMassKg: null } }).notes).toEqual([
      'group-averages',
      'weight-assumed',
    ]));

  test('trenches stay whole, and the soil of the heaviest session is told', () => {
    const work = { kind: 'trenches', minutes: [30, 30, 30, 30] } as const;
    const plan = planDays({ ...order, work, soilMassG: 4_000_000 });
    expect(plan.split?.map((parts) => parts.map(({ trench }) => trench))).toEqual([[1], [2], [3], [4]]);
    expect(plan).toMatchObject({ minutes: 120, sessions: 4, soilPerSessionG: 1_000_000 });
  });

  test('work of one short session', () => {
    const plan = planDays({ ...order, work: { kind: 'minutes', minutes: 10 }, soilMassG: 90_000 });
    expect(plan).toMatchObject({ sessions: 1, daysNeeded: 1, soilPerSessionG: 90_000 });
  });

  const bands = fc.constantFrom<Digger['ageBand']>('under-60', '60-or-over', 'not-said');
  const minutes = fc.integer({ min: 1, max: 5000 });

  test('against a diary kept session by session', () => {
    fc.assert(
      fc.property(bands, minutes, fc.integer({ min: 10, max: 480 }), (ageBand, work, sessionMinutes) => {
        const plan = planDays({
          ...order,
          digger: { ...digger, ageBand, sessionMinutes },
          work: { kind: 'minutes', minutes: work },
        });
        let sessions = 0;
        for (let left = work; left > 1 / 60; sessions++)
          left -= (sessions === 0 ? plan.firstSession : plan.laterSession).diggingMin;
        expect(plan.sessions).toBe(sessions);
      }),
    );
  });

  test('what would be enough is enough, and one session a week fewer is not', () => {
    fc.assert(
      fc.property(minutes, fc.integer({ min: 1, max: 6 }), fc.nat(200), (work, sessionsPerWeek, daysLeft) => {
        const asked = { ...order, work: { kind: 'minutes', minutes: work }, daysLeft } as const;
        const { inTime } = planDays({ ...asked, sessionsPerWeek });
        if (inTime.code === 'enough') return;
        expect(inTime.minutesByThen).toBeLessThan(work);
        const often = inTime.sessionsPerWeekEnough;
        expect(planDays({ ...asked, sessionsPerWeek: often ?? 7 }).inTime.code === 'enough').toBe(often !== null);
        expect(planDays({ ...asked, sessionsPerWeek: (often ?? 8) - 1 }).inTime.code).toBe('not-enough');
      }),
    );
  });

  test.each<Partial<DiggingOrder>>([
    { work: { kind: 'area', areaCm2: 0, method: 'forking' } },
    { work: { kind: 'area', areaCm2: 1e12, method: 'double-digging' } },
    { work: { kind: 'minutes', minutes: Number.NaN } },
    { work: { kind: 'trenches', minutes: [] } },
    { work: { kind: 'trenches', minutes: [30, 0] } },
    { sessionsPerWeek: 0 },
    { sessionsPerWeek: 15 },
    { daysLeft: -1 },
    { daysLeft: 1.5 },
    { soilMassG: 0 },
    { soilMassG: Number.POSITIVE_INFINITY },
  ])('%j is refused', (wrong) => expect(() => planDays({ ...order, ...wrong })).toThrow(RangeError));
});
