import { expect, test } from 'vitest';
import { formatMinutes } from './minutes';

test.each([
  [0, '0 min'],
  [0.2, 'under 1 min'],
  [0.5, '1 min'],
  [59.4, '59 min'],
  [59.5, '1 h'],
  [119.6, '2 h'],
  [150, '2 h 30 min'],
  [60_001, '1,000 h 1 min'],
])('%s minutes: %s', (minutes, said) => expect(formatMinutes(minutes)).toBe(said));

test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused', (minutes) =>
  expect(() => formatMinutes(minutes)).toThrow(RangeError),
);
