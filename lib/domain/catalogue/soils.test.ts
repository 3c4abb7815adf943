import { describe, expect, test } from 'vitest';
import { spanOf } from '../quantity/span';
import { diggingMethodOf, diggingMethods, diggingSizes, thumbRule } from './digging-methods';
import { type SoilFigures, soilOf, soils } from './soils';
import { sources } from './sources';

const figures = [
  'swellLeastPercent',
  'swellMostPercent',
  'inPlaceLeastGPerL',
  'inPlaceMostGPerL',
] as const satisfies readonly (keyof SoilFigures)[];

describe('soils', () => {
  test('each once, found by its key', () => {
    expect(new Set(soils.map(({ key }) => key)).size).toBe(soils.length);
    for (const soil of soils) expect(soilOf(soil.key)).toBe(soil);
    expect(soilOf('chalky')).toBeUndefined();
  });

  test('every value has a source, and what is not known has none', () => {
    for (const soil of soils) {
      for (const figure of figures)
        expect([soil.key, figure, soil.sources[figure] !== null]).toEqual([soil.key, figure, soil[figure] !== null]);
      for (const source of Object.values(soil.sources))
        if (source !== null) expect(Object.hasOwn(sources, source)).toBe(true);
    }
  });

  test('every range goes upward, and is whole or unknown at both ends', () => {
    for (const soil of soils) {
      const swell = spanOf(soil.swellLeastPercent, soil.swellMostPercent, (percent) => percent);
      const weight = spanOf(soil.inPlaceLeastGPerL, soil.inPlaceMostGPerL, (gPerL) => gPerL);
      expect([soil.key, swell === null]).toEqual([soil.key, soil.swellLeastPercent === null]);
      expect([soil.key, weight === null]).toEqual([soil.key, soil.inPlaceLeastGPerL === null]);
    }
  });

  test('the swell of peat is left open rather than guessed', () =>
    expect(figures.map((figure) => soilOf('peaty')?.[figure])).toEqual([null, null, null, null]));

  test('heavy ground is dug in autumn, light ground in spring', () => {
    expect(soilOf('clayey')?.diggingSeason).toBe('autumn');
    expect(soilOf('sandy')?.diggingSeason).toBe('spring');
  });
});

describe('ways of digging', () => {
  test('each once, with a width and a source, and refused where there is none', () => {
    expect(new Set(diggingMethods.map(({ key }) => key)).size).toBe(diggingMethods.length);
    for (const method of diggingMethods) {
      expect(diggingMethodOf(method.key)).toBe(method);
      expect(Number.isSafeInteger(method.trenchWidthCm) && method.trenchWidthCm > 0).toBe(true);
      expect(Object.hasOwn(sources, method.source)).toBe(true);
    }
    expect(() => diggingMethodOf('ploughing')).toThrow(RangeError);
  });

  test('what is opened is loosened', () => {
    for (const { opensTrench, loosenedSpits } of diggingMethods)
      if (opensTrench) expect(loosenedSpits).toBeGreaterThan(0);
  });

  test('sizes and the thumb rule have sources', () => {
    for (const { source } of [...Object.values(diggingSizes), thumbRule])
      expect(Object.hasOwn(sources, source)).toBe(true);
  });
});
