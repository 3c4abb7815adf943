import { expect, test } from 'vitest';
import { seasonDays } from './season-days';

test('from September up to the end of August', () =>
  expect(seasonDays(2027)).toEqual({ from: '2026-09-01', until: '2027-09-01' }));

test.each([1900, 2200, 2026.5, Number.NaN])('%d is no season', (season) =>
  expect(() => seasonDays(season)).toThrow(RangeError),
);
