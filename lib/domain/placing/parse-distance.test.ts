import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatDistance, parseDistance } from './parse-distance';

const cm = (value: number) => ({ ok: true, cm: value });
const wrong = (code: string) => ({ ok: false, code });

describe('what is typed', () => {
  test.each([
    ['27.5', cm(2750)],
    ['27,5', cm(2750)],
    [' 106 ', cm(10_600)],
    ['0', cm(0)],
    ['-0', cm(0)],
    ['-2.5', cm(-250)],
    ['−2.5 m', cm(-250)],
    ['1500 m', cm(150_000)],
    ['10000', cm(1_000_000)],
    ['-10000', cm(-1_000_000)],
    ['360 cm', cm(360)],
    ['90 ft', cm(2743)],
    ['0.004', cm(0)],
  ])('metric: %s', (typed, read) => expect(parseDistance(typed, 'metric')).toEqual(read));
  test.each([
    ['90', cm(2743)],
    ['-1.5', cm(-46)],
    ['90 ft 3 in', cm(2751)],
    ['12 6', cm(381)],
    ['27.5 m', cm(2750)],
  ])('imperial: %s', (typed, read) => expect(parseDistance(typed, 'imperial')).toEqual(read));
  test.each([
    ['', 'not-a-distance'],
    ['-', 'not-a-distance'],
    ['--5', 'not-a-distance'],
    ['+5', 'not-a-distance'],
    ['1,000', 'not-a-distance'],
    ['1,000 m', 'not-a-distance'],
    ['27 ½', 'not-a-distance'],
    ['12 6', 'not-a-distance'],
    ['1e3', 'not-a-distance'],
    ['five', 'not-a-distance'],
    ['10000.01', 'too-far'],
    ['-10001 m', 'too-far'],
    ['4000 ft', 'too-far'],
  ])('no distance: %s', (typed, code) => expect(parseDistance(typed, 'metric')).toEqual(wrong(code)));
});

test('what is shown reads back as the same, in either units', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -1_000_000, max: 1_000_000 }),
      fc.constantFrom('metric' as const, 'imperial' as const),
      (value, units) => {
        expect(parseDistance(formatDistance(value, units), units)).toEqual(cm(value));
      },
    ),
  );
});
test('shown without needless digits', () => {
  expect(['metric', 'imperial'].map((units) => formatDistance(-250, units as 'metric'))).toEqual(['-2.5', '-8.2']);
  expect(formatDistance(0, 'metric')).toBe('0');
});
