import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { restMinutes } from './rest';

const limit = fc.double({ min: 1.6, max: 8, noNaN: true });
const over = fc.double({ min: 0.001, max: 30, noNaN: true });

describe('restMinutes', () => {
  test('none up to the limit, and some beyond it', () => {
    expect(restMinutes(60, 3.999, 4)).toBe(0);
    expect(restMinutes(60, 4, 4)).toBe(0);
    expect(restMinutes(60, 4.001, 4)).toBeGreaterThan(0);
    expect(restMinutes(60, 1.5, 4)).toBe(0);
    expect(restMinutes(60, 0.1, 4)).toBe(0);
  });

  test('the session’s mean energy is the limit, minute by minute', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 480 }), limit, over, (total, keep, above) => {
        const work = keep + above;
        const rest = restMinutes(total, work, keep);
        expect((work * (total - rest) + 1.5 * rest) / total).toBeCloseTo(keep, 9);
        expect(rest > 0 && rest < total).toBe(true);
      }),
    );
  });

  test('harder work wants more rest, twice the session twice as much', () => {
    fc.assert(
      fc.property(limit, over, over, (keep, above, more) => {
        expect(restMinutes(60, keep + above + more, keep)).toBeGreaterThan(restMinutes(60, keep + above, keep));
        expect(restMinutes(120, keep + above, keep)).toBeCloseTo(2 * restMinutes(60, keep + above, keep), 9);
      }),
    );
  });

  test('where resting costs the limit, no rest is enough', () => {
    expect(() => restMinutes(60, 6, 1.5)).toThrow(RangeError);
    expect(() => restMinutes(60, 6, 1)).toThrow(RangeError);
    expect(restMinutes(60, 6, 1.6)).toBeLessThan(60);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused wherever it stands', (value) => {
    expect(() => restMinutes(value, 6, 4)).toThrow(RangeError);
    expect(() => restMinutes(60, value, 4)).toThrow(RangeError);
    expect(() => restMinutes(60, 6, value)).toThrow(RangeError);
    expect(() => restMinutes(60, 6, 4, value)).toThrow(RangeError);
  });
});
