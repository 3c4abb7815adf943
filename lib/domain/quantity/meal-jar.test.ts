import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatJars, jarOf } from './meal-jar';

const density = { leastGPerL: 590, mostGPerL: 640, proxy: 'meat meal' };

describe('jarOf', () => {
  test('reckoned, and said to be', () =>
    expect(jarOf({ jarMl: 370, weighedG: null, density })).toEqual({
      basis: 'estimated',
      jarG: 228,
      leastG: 218,
      mostG: 237,
      proxy: 'meat meal',
    }));

  test('a jar that was weighed goes before any density, and needs none', () => {
    expect(jarOf({ jarMl: 370, weighedG: 251, density })).toEqual({ basis: 'weighed', jarG: 251 });
    expect(jarOf({ jarMl: 370, weighedG: 251, density: null })).toEqual({ basis: 'weighed', jarG: 251 });
  });

  test('nothing is known of a meal without a figure', () =>
    expect(jarOf({ jarMl: 370, weighedG: null, density: null })).toEqual({ basis: 'not-known' }));

  test('an estimate lies between its ends', () => {
    const gPerL = fc.integer({ min: 50, max: 2000 });
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 5000 }), gPerL, fc.nat(500), (jarMl, leastGPerL, more) => {
        const range = { leastGPerL, mostGPerL: leastGPerL + more, proxy: null };
        const jar = jarOf({ jarMl, weighedG: null, density: range });
        expect(jar.basis === 'estimated' && jar.leastG <= jar.jarG && jar.jarG <= jar.mostG).toBe(true);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused wherever it stands', (value) => {
    expect(() => jarOf({ jarMl: value, weighedG: 251, density })).toThrow(RangeError);
    expect(() => jarOf({ jarMl: 370, weighedG: value, density })).toThrow(RangeError);
    expect(() => jarOf({ jarMl: 370, weighedG: null, density: { ...density, leastGPerL: value } })).toThrow(RangeError);
    expect(() => jarOf({ jarMl: 370, weighedG: null, density: { ...density, mostGPerL: value } })).toThrow(RangeError);
    expect(() => formatJars(value, 225)).toThrow(RangeError);
    expect(() => formatJars(110, value)).toThrow(RangeError);
  });

  test('a density from more to less, and a jarful of nothing, are refused', () => {
    expect(() => jarOf({ jarMl: 370, weighedG: null, density: { ...density, mostGPerL: 500 } })).toThrow(RangeError);
    expect(() => jarOf({ jarMl: 0.1, weighedG: null, density })).toThrow(RangeError);
    expect(() => jarOf({ jarMl: 370, weighedG: 0.4, density })).toThrow(RangeError);
  });
});

test('jars by the quarter', () => {
  expect([1, 28, 29, 110, 225, 230, 280, 500].map((massG) => formatJars(massG, 225))).toEqual([
    'under ¼ jar',
    'under ¼ jar',
    '¼ jar',
    '½ jar',
    '1 jar',
    '1 jar',
    '1¼ jars',
    '2¼ jars',
  ]);
});
