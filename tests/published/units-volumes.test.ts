import { expect, test } from 'vitest';
import { readVolumeMl } from '@/lib/domain/quantity/volume';

// Weights and Measures Act 1878, measures of capacity: a bushel of eight gallons, a peck of two; 36.4 and 9.1 L derived.
test.each([
  ['8 gallons', 36.4],
  ['2 gallons', 9.1],
])('%s are %s L', (typed, litres) => {
  expect(Math.round((readVolumeMl(typed, 'l') ?? 0) / 100) / 10).toBe(litres);
});
