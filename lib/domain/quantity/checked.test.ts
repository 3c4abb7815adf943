import { expect, test } from 'vitest';
import { positive, wholeFrom } from './checked';

test.each([1e-6, 0.5, 1, 1e12])('%s is a measure', (value) => expect(positive(value, 'it')).toBe(value));

test.each([0, -1, 9e-7, 1.1e12, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
  '%s is none',
  (value) => expect(() => positive(value, 'a heap’s height')).toThrow(RangeError),
);

test('the error says what was measured', () =>
  expect(() => positive(0, 'a heap’s height')).toThrow('a heap’s height is a number above 0: 0'));

test.each([1, 7, Number.MAX_SAFE_INTEGER])('%s is a whole number from 1', (value) =>
  expect(wholeFrom(1, value)).toBe(value),
);

test.each([0, -1, 1.5, 2 ** 53, Number.NaN, Number.POSITIVE_INFINITY])('%s is not', (value) =>
  expect(() => wholeFrom(1, value)).toThrow(RangeError),
);
