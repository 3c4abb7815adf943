import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitTrenches } from './split-trenches';

const numbers = (minutes: readonly number[], each: number) =>
  splitTrenches(minutes, () => each).map((parts) => parts.map(({ trench }) => trench));

describe('splitTrenches', () => {
  test.each<[number[], number, number[][]]>([
    [[20, 20, 20], 45, [[1, 2], [3]]],
    [[20, 20, 20], 60, [[1, 2, 3]]],
    [[20, 20, 20], 20, [[1], [2], [3]]],
    // A minute over, to finish a trench; not two.
    [[20, 21], 40, [[1, 2]]],
    [[20, 22], 40, [[1], [2]]],
    // Longer than a session: begun with one, carried on in the next, where the one after still fits.
    [[10, 70, 15], 30, [[1], [2], [2], [2, 3]]],
    [[0.5, 0.5], 30, [[1, 2]]],
    [[90], 30, [[1], [1], [1]]],
  ])('%j in sessions of %s: %j', (minutes, each, expected) => expect(numbers(minutes, each)).toEqual(expected));

  test('a shorter first session', () => {
    const sessions = splitTrenches([20, 20, 20], (place) => (place === 0 ? 15 : 30));
    expect(sessions).toEqual([
      [{ trench: 1, minutes: 15, finishes: false }],
      [
        { trench: 1, minutes: 5, finishes: true },
        { trench: 2, minutes: 20, finishes: true },
      ],
      [{ trench: 3, minutes: 20, finishes: true }],
    ]);
  });

  const minutes = fc.array(fc.integer({ min: 1, max: 120 }), { minLength: 1, maxLength: 40 });
  const each = fc.integer({ min: 5, max: 90 });

  test('in order, all of it, each finished once, and no session overrun', () => {
    fc.assert(
      fc.property(minutes, each, (trenches, inSession) => {
        const sessions = splitTrenches(Object.freeze(trenches), () => inSession);
        const parts = sessions.flat();
        expect(parts.map(({ trench }) => trench)).toEqual(parts.map(({ trench }) => trench).toSorted((a, b) => a - b));
        for (const [at, whole] of trenches.entries()) {
          const own = parts.filter(({ trench }) => trench === at + 1);
          expect(own.reduce((sum, part) => sum + part.minutes, 0)).toBeCloseTo(whole, 9);
          expect(own.map(({ finishes }) => finishes)).toEqual(own.map((_, part) => part === own.length - 1));
        }
        for (const session of sessions) {
          expect(session.length).toBeGreaterThan(0);
          expect(session.reduce((sum, part) => sum + part.minutes, 0)).toBeLessThanOrEqual(inSession + 1);
        }
      }),
    );
  });

  test('a trench no longer than a session is never parted', () => {
    fc.assert(
      fc.property(minutes, each, (trenches, inSession) => {
        for (const { trench, finishes } of splitTrenches(trenches, () => inSession).flat())
          if ((trenches[trench - 1] ?? 0) <= inSession) expect(finishes).toBe(true);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (value) => {
    expect(() => splitTrenches([20, value], () => 30)).toThrow(RangeError);
    expect(() => splitTrenches([20], () => value)).toThrow(RangeError);
  });

  test('no trench, and one without end, are refused', () => {
    expect(() => splitTrenches([], () => 30)).toThrow(RangeError);
    expect(() => splitTrenches([1e9], () => 1)).toThrow(RangeError);
  });
});
