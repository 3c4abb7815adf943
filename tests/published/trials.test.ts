import { expect, test } from 'vitest';
import { trialReport } from '@/lib/domain/trial/report';

// Student (W. S. Gosset), The Probable Error of a Mean, Biometrika 6, 1908, after Cushny and Peebles, 1905: hours of sleep gained by ten
// patients, each of whom had both drugs. As pairs: 95 cases of 100 from −2.4599 to −0.7001, about −1.58.
test('the sleep of ten patients through a trial’s report: each patient a block', () => {
  const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
  const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
  const pairs = first.map((a, at) => ({ id: String(at), holding: String(at), a, b: second[at] ?? null }));
  const { whole, told } = trialReport(pairs);
  expect(whole).toBe(10);
  expect(told?.meanA).toBeCloseTo(0.75, 12);
  expect(told?.meanB).toBeCloseTo(2.33, 12);
  expect(told?.difference).toBeCloseTo(-1.58, 12);
  expect([told?.interval?.low, told?.interval?.high].map((end) => Number(end?.toFixed(4)))).toEqual([-2.4599, -0.7001]);
  expect(told?.verdict).toBe('likely-less');
});
