import { expect, test } from 'vitest';
import { celsiusOf } from './temperature';

test.each([
  [32, 0],
  [212, 100],
  [-40, -40],
])('%s °F is %s °C', (fahrenheit, celsius) => expect(celsiusOf(fahrenheit)).toBeCloseTo(celsius, 10));

test.each([Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (wrong) =>
  expect(() => celsiusOf(wrong)).toThrow(RangeError),
);
