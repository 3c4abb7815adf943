import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PaceKey } from '../catalogue/paces';
import { basisOf, type Digger, sessionOf } from './session';

const digger: Digger = {
  ageBand: 'under-60',
  pace: 'steady',
  bodyMassKg: 70,
  sessionMinutes: 60,
  limitKcalPerMin: null,
};
const paces = fc.constantFrom<PaceKey>('gentle', 'steady', 'brisk');

describe('basisOf', () => {
  test('the published costs for whoever says they are under sixty', () => {
    expect(basisOf(digger)).toMatchObject({
      code: 'adults-19-59',
      exertion: { code: '08050', edition: 2011 },
      bodyMass: 'said',
      workKcalPerMin: 6.125,
      limitKcalPerMin: 4,
    });
    expect(basisOf({ ...digger, bodyMassKg: null })).toMatchObject({ bodyMassKg: 70, bodyMass: 'assumed' });
  });

  test.each([
    ['60-or-over', '60-or-over'],
    ['not-said', 'age-not-said'],
  ] as const)('%s: the clock, and no energy figure', (ageBand, why) =>
    expect(basisOf({ ...digger, ageBand })).toEqual({ code: 'by-the-clock', why }),
  );

  test.each([
    { bodyMassKg: 29 },
    { bodyMassKg: 251 },
    { bodyMassKg: 70.5 },
    { bodyMassKg: Number.NaN },
    { limitKcalPerMin: 2.9 },
    { limitKcalPerMin: 5.1 },
    { limitKcalPerMin: Number.NaN },
    { pace: 'frantic' as PaceKey },
  ])('%j is refused, at any age', (wrong) => {
    for (const ageBand of ['under-60', '60-or-over', 'not-said'] as const)
      expect(() => basisOf({ ...digger, ...wrong, ageBand })).toThrow(RangeError);
  });
});

describe('sessionOf', () => {
  test('by energy, the first session is as the others', () => {
    const first = sessionOf(digger, 0);
    expect(first).toEqual(sessionOf(digger, 5));
    expect(first.diggingMin).toBeCloseTo(60 - (60 * 2.125) / 4.625, 9);
    expect(first.spells).toBe(3);
  });

  test('gentle work that costs no more than the limit has no rest of its own', () =>
    expect(sessionOf({ ...digger, pace: 'gentle', limitKcalPerMin: 5 }, 0)).toMatchObject({
      diggingMin: 60,
      restMin: 0,
      spells: 4,
    }));

  test.each([
    [10, 10, 10],
    [30, 30, 30],
    [45, 30, 45],
    [60, 30, 60],
    [480, 30, 60],
  ])('by the clock, %s asked: %s first, %s after that', (sessionMinutes, first, later) => {
    const old: Digger = { ...digger, ageBand: '60-or-over', sessionMinutes };
    expect([sessionOf(old, 0).totalMin, sessionOf(old, 1).totalMin]).toEqual([first, later]);
  });

  test('rest is at least as long as digging by the clock, whatever is asked', () => {
    const bands = fc.constantFrom<Digger['ageBand']>('60-or-over', 'not-said');
    fc.assert(
      fc.property(bands, paces, fc.integer({ min: 10, max: 480 }), fc.nat(5), (ageBand, pace, minutes, place) => {
        const { restMin, diggingMin } = sessionOf({ ...digger, ageBand, pace, sessionMinutes: minutes }, place);
        expect(restMin >= diggingMin && diggingMin > 0).toBe(true);
      }),
    );
  });

  test('digging and rest make the session, in spells of a quarter of an hour at most', () => {
    const masses = fc.integer({ min: 30, max: 250 });
    fc.assert(
      fc.property(paces, masses, fc.integer({ min: 10, max: 480 }), (pace, bodyMassKg, sessionMinutes) => {
        const { totalMin, diggingMin, restMin, spells } = sessionOf({ ...digger, pace, bodyMassKg, sessionMinutes }, 0);
        expect(totalMin).toBe(sessionMinutes);
        expect(diggingMin + restMin).toBeCloseTo(totalMin, 9);
        expect(diggingMin > 0 && restMin >= 0 && diggingMin / spells <= 15).toBe(true);
      }),
    );
  });

  test('a harder pace, or a heavier body, digs for less of the hour', () => {
    const diggingOf = (change: Partial<Digger>) => sessionOf({ ...digger, ...change }, 0).diggingMin;
    expect(diggingOf({ pace: 'gentle' })).toBeGreaterThan(diggingOf({ pace: 'steady' }));
    expect(diggingOf({ pace: 'steady' })).toBeGreaterThan(diggingOf({ pace: 'brisk' }));
    expect(diggingOf({ bodyMassKg: 70 })).toBeGreaterThan(diggingOf({ bodyMassKg: 71 }));
  });

  test.each([0, 9, 481, 45.5, Number.NaN])('%s minutes are refused', (sessionMinutes) =>
    expect(() => sessionOf({ ...digger, sessionMinutes }, 0)).toThrow(RangeError),
  );
});
