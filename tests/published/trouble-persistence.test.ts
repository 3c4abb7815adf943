import { describe, expect, test } from 'vitest';
import { likelyLeft } from '@/lib/domain/rotation/likely-left';

// Wallenhammar, Monitoring and control of Plasmodiophora brassicae in spring oilseed brassica crops, abstract: half-life
// 3.6 years; the shares by arithmetic on it [percent].
test.each([
  [1, 82.5],
  [2, 68.0],
  [3, 56.1],
  [4, 46.3],
  [6, 31.5],
  [7, 26.0],
  [8, 21.4],
  [10, 14.6],
])('clubroot after %s years without a host: up to %s %% left', (years, percent) => {
  expect((likelyLeft('clubroot', years).range?.mostPermille ?? 0) / 10).toBeCloseTo(percent, 0);
});

// Canola Council agronomist in Alberta Farmer Express, 28 December 2018: 95 to 99 % of spores die over a two-year break.
test('clubroot of a light infestation, two years: 1 to 5 % left at the least', () => {
  expect(likelyLeft('clubroot', 2).range?.leastPermille).toBe(10);
});

describe('potato cyst eelworm', () => {
  // Thesis, core.ac.uk works 8061926: 45 populations lost 11 to 69 % a year; after six years 49.7 and 0.1 % by arithmetic.
  test('six years', () => {
    const { range } = likelyLeft('potato-eelworm', 6);
    expect((range?.mostPermille ?? 0) / 10).toBeCloseTo(49.7, 0);
    expect((range?.leastPermille ?? 1) / 10).toBeLessThanOrEqual(0.1);
  });
});

// Abstract on Verticillium dahliae in the Negev: 4 % alive after seven years of non-hosts.
test('verticillium after seven years', () => {
  expect(likelyLeft('verticillium', 7).range?.mostPermille).toBeCloseTo(40, -1);
});

// Westerdahl, UC Davis: beet cyst nematode lost 15–25 % a year in San Joaquin, up to 61 % in England.
test('beet cyst eelworm after two years', () => {
  expect(likelyLeft('beet-eelworm', 2).range).toEqual({ leastPermille: 152, mostPermille: 722 });
});

// University of California IPM: sclerotia of white rot live over twenty years; no rate is given, so none is shown.
test('white rot has no rate, only a length', () => {
  expect(likelyLeft('white-rot', 10)).toMatchObject({ range: null, livesYears: 20 });
});

test('nothing is ever shown as gone', () => {
  for (const trouble of ['clubroot', 'potato-eelworm', 'verticillium', 'beet-eelworm'])
    expect(likelyLeft(trouble, 60).range?.mostPermille).toBeGreaterThan(0);
});
