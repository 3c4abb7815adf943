import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { energyLimits, paceOf, paces } from '../catalogue/paces';
import { sources } from '../catalogue/sources';
import { energyKcalPerMin } from './energy';

describe('energyKcalPerMin', () => {
  test('by way of oxygen, the same', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 12, noNaN: true }), fc.integer({ min: 30, max: 250 }), (met, kg) => {
        const oxygenLitresPerMin = (met * 3.5 * kg) / 1000;
        expect(energyKcalPerMin(met, kg)).toBeCloseTo(oxygenLitresPerMin * 5, 9);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (value) => {
    expect(() => energyKcalPerMin(value, 70)).toThrow(RangeError);
    expect(() => energyKcalPerMin(5, value)).toThrow(RangeError);
  });
});

describe('paces', () => {
  test('the harder, the dearer and the sooner done', () => {
    expect(paces.map(({ exertion }) => exertion.met)).toEqual(paces.map(({ exertion }) => exertion.met).toSorted());
    const minutes = paces.map(({ doubleMinutesPerM2 }) => doubleMinutesPerM2);
    expect(minutes).toEqual(minutes.toSorted((a, b) => b - a));
  });

  test('each names its edition, its ages and its sources', () => {
    for (const { source, exertion } of paces) {
      expect(exertion).toMatchObject({ edition: 2011, leastAge: 19, mostAge: 59 });
      for (const key of [source, exertion.source, exertion.agesSource]) expect(Object.hasOwn(sources, key)).toBe(true);
    }
  });

  test('a pace by its key, and none', () => {
    expect(paceOf('steady').exertion.code).toBe('08050');
    expect(() => paceOf('frantic')).toThrow(RangeError);
  });

  test('the usual limit lies between the least and the most', () => {
    const { least, usual, most } = energyLimits;
    expect(least.kcalPerMin < usual.kcalPerMin && usual.kcalPerMin < most.kcalPerMin).toBe(true);
  });
});
