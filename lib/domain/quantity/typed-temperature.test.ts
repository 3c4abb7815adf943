import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatTemperature, readTemperature } from './typed-temperature';

describe('a temperature as it is typed', () => {
  it.each([
    ['4', 40],
    [' 4,5 ', 45],
    ['-2.5', -25],
    ['−2.5 °C', -25],
    ['-0', 0],
    ['40 °F', 44],
    ['32f', 0],
    ['50', 500],
    ['-50', -500],
    ['50.1', null],
    ['-51', null],
    ['4.25', null],
    ['cold', null],
    ['', null],
    ['--4', null],
  ])('%s → %s', (text, tenthC) => expect(readTemperature(text)).toBe(tenthC));

  it('is told with a real minus, and only of whole tenths', () => {
    expect(formatTemperature(-25)).toBe('−2.5 °C');
    expect(formatTemperature(0)).toBe('0 °C');
    expect(() => formatTemperature(0.5)).toThrow(RangeError);
  });

  it('is read back from what is told', () =>
    fc.assert(
      fc.property(fc.integer({ min: -500, max: 500 }), (tenthC) => {
        expect(readTemperature(formatTemperature(tenthC))).toBe(tenthC);
      }),
    ));
});
