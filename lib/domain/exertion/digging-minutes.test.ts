import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DiggingMethod, diggingMethods } from '../catalogue/digging-methods';
import { type PaceKey, paces } from '../catalogue/paces';
import { diggingMinutes } from './digging-minutes';

const methods = diggingMethods.map(({ key }) => key);
const keys = paces.map(({ key }) => key);

describe('diggingMinutes', () => {
  test('nine square metres, two spits deep: six, four and two hours', () =>
    expect(keys.map((pace) => Math.round(diggingMinutes(90_000, 'double-digging', pace)))).toEqual([360, 240, 120]));

  test('less work takes less time', () => {
    for (const pace of keys) {
      const minutes = methods.map((method) => diggingMinutes(90_000, method, pace));
      expect(minutes).toEqual(minutes.toSorted((a, b) => b - a));
    }
  });

  test('ground in two parts takes as long as the whole', () => {
    const area = fc.integer({ min: 1, max: 100_000_000 });
    fc.assert(
      fc.property(area, area, fc.constantFrom(...methods), fc.constantFrom(...keys), (a, b, method, pace) => {
        const apart = diggingMinutes(a, method, pace) + diggingMinutes(b, method, pace);
        expect(diggingMinutes(a + b, method, pace) / apart).toBeCloseTo(1, 9);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s cm² is refused', (areaCm2) =>
    expect(() => diggingMinutes(areaCm2, 'forking', 'steady')).toThrow(RangeError),
  );

  test('no other method and no other pace', () => {
    expect(() => diggingMinutes(1, 'ploughing' as DiggingMethod, 'steady')).toThrow(RangeError);
    expect(() => diggingMinutes(1, 'toString' as DiggingMethod, 'steady')).toThrow(RangeError);
    expect(() => diggingMinutes(1, 'forking', 'frantic' as PaceKey)).toThrow(RangeError);
  });
});
