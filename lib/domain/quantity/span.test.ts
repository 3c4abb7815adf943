import { expect, test } from 'vitest';
import { spanOf } from './span';

test('an amount at both ends', () => {
  expect(spanOf(15, 35, (percent) => percent * 2)).toEqual({ least: 30, most: 70 });
  expect(spanOf(35, 35, (percent) => percent)).toEqual({ least: 35, most: 35 });
  expect(spanOf(0, 0, (percent) => percent)).toEqual({ least: 0, most: 0 });
});

test('unknown at either end is unknown', () => {
  for (const [least, most] of [
    [null, null],
    [1, null],
    [null, 1],
  ] as const)
    expect(spanOf(least, most, (end) => end)).toBeNull();
});

test.each([
  [2, 1],
  [-1, 1],
  [Number.NaN, 1],
  [1, Number.POSITIVE_INFINITY],
  [null, -1],
] as const)('from %s to %s is no range', (least, most) =>
  expect(() => spanOf(least, most, (end) => end)).toThrow(RangeError),
);
