import { describe, expect, it } from 'vitest';
import type { Units } from './length';
import { formatShortLength, parseShortLength } from './short-length';

describe('a spade-sized length', () => {
  it.each<[string, Units, number]>([
    ['8', 'metric', 800],
    ['60', 'metric', 6000],
    ['60 cm', 'metric', 6000],
    ['0.6 m', 'metric', 6000],
    ['24 in', 'metric', 6096],
    ['2 ft', 'metric', 6096],
    ['2', 'imperial', 508],
    ['2.5', 'imperial', 635],
    ['2½', 'imperial', 635],
    ['2 ft', 'imperial', 6096],
    ['1 ft 6 in', 'imperial', 4572],
    ['60 cm', 'imperial', 6000],
    ['0', 'metric', 0],
  ])('%j in %s is %d tenths of a millimetre', (text, units, tenthMm) =>
    expect(parseShortLength(text, units)).toEqual({ ok: true, tenthMm }),
  );

  it.each(['', '-8', 'a spade', '1e2', '8 8 8'])('%j is none', (text) =>
    expect(parseShortLength(text, 'metric').ok).toBe(false),
  );

  it('is read back as it is shown, whatever the units', () => {
    for (const units of ['metric', 'imperial'] as const)
      for (let lengthCm = 0; lengthCm <= 300; lengthCm++) {
        const read = parseShortLength(formatShortLength(lengthCm, units), units);
        expect([units, lengthCm, read.ok && Math.round(read.tenthMm / 100)]).toEqual([units, lengthCm, lengthCm]);
      }
  });

  it.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('is never %d', (lengthCm) =>
    expect(() => formatShortLength(lengthCm, 'metric')).toThrow(RangeError),
  );

  it('is shown in whole inches where they read back', () => {
    expect([5, 8, 25, 60, 61, 76].map((cm) => formatShortLength(cm, 'imperial'))).toEqual([
      '2 in',
      '3 in',
      '10 in',
      '23.6 in',
      '24 in',
      '30 in',
    ]);
  });
});
