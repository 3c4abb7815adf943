import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PaceKey } from '../catalogue/paces';
import { type AgeBand, sessionOf } from './session';
import { spellOf } from './spell';

describe('spellOf', () => {
  test('digging down, rest up', () => {
    expect(spellOf({ totalMin: 60, diggingMin: 32.4, restMin: 27.6, spells: 3 })).toEqual({
      times: 3,
      diggingMin: 10,
      restMin: 10,
    });
    expect(spellOf({ totalMin: 60, diggingMin: 60, restMin: 0, spells: 4 })).toEqual({
      times: 4,
      diggingMin: 15,
      restMin: 0,
    });
    expect(spellOf({ totalMin: 10, diggingMin: 0.5, restMin: 9.5, spells: 1 })).toMatchObject({ diggingMin: 1 });
  });

  test('no longer than the session, and no more digging than it holds', () => {
    const bands = fc.constantFrom<AgeBand>('under-60', '60-or-over', 'not-said');
    const paces = fc.constantFrom<PaceKey>('gentle', 'steady', 'brisk');
    const masses = fc.integer({ min: 30, max: 250 });
    fc.assert(
      fc.property(bands, paces, masses, fc.integer({ min: 10, max: 480 }), (ageBand, pace, bodyMassKg, minutes) => {
        const session = sessionOf({ ageBand, pace, bodyMassKg, sessionMinutes: minutes, limitKcalPerMin: null }, 1);
        const { times, diggingMin, restMin } = spellOf(session);
        expect([times, diggingMin, restMin].every(Number.isSafeInteger)).toBe(true);
        expect(diggingMin >= 1 && diggingMin <= 15 && restMin >= 0).toBe(true);
        expect(times * (diggingMin + restMin)).toBeLessThanOrEqual(session.totalMin);
        expect(times * diggingMin).toBeLessThanOrEqual(Math.max(times, session.diggingMin + 1e-6));
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (value) => {
    expect(() => spellOf({ totalMin: 60, diggingMin: value, restMin: 0, spells: 1 })).toThrow(RangeError);
    expect(() => spellOf({ totalMin: value, diggingMin: 1, restMin: 0, spells: 1 })).toThrow(RangeError);
    expect(() => spellOf({ totalMin: 60, diggingMin: 1, restMin: 0, spells: value })).toThrow(RangeError);
  });
});
