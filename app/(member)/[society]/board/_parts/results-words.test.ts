import { describe, expect, it } from 'vitest';
import type { ToldContrast } from '@/lib/domain/comparison/compare-beds';
import { contrastSays, groupSays, groupWords, resultsNow, yieldFigure } from './results-words';

const contrast = (given: Partial<ToldContrast>): ToldContrast => ({
  ...{ first: 'double', second: 'not-double', by: 'groups', counts: [2, 2], level: 0.95 },
  ...{ low: -800, high: 1_900, hiddenBelow: 1_300, verdict: 'cannot-tell' },
  ...given,
});
const says = (given: Partial<ToldContrast>, units: 'metric' | 'imperial' = 'metric') =>
  contrastSays(contrast(given), ['double dug', 'dug another way'], units);

describe('what two groups allow to be said', () => {
  it('names the plots, where the difference lies, and what would not have shown', () => {
    expect(says({})).toBe(
      'Double dug against dug another way: of 2 and 2 plots, the difference lies between −0.8 and +1.9 kg/m². That includes none: 4 plots can’t tell. A difference smaller than 1.3 would not have shown.',
    );
    expect(says({ by: 'pairs', counts: [4, 4] })).toContain('on the 4 plots that had both, the difference');
    expect(says({ by: 'pairs', counts: [4, 4] })).toContain('4 plots can’t tell');
    expect(says({}, 'imperial')).toContain('between −1.5 and +3.5 lb/sq yd');
  });

  it('names more or less with its doubt, never a bare winner', () => {
    for (const [verdict, more] of [
      ['likely-more', 'double dug'],
      ['likely-less', 'dug another way'],
    ] as const)
      expect(says({ verdict, low: 200, high: 900 })).toMatch(
        new RegExp(`Here “${more}” likely gave more; whether that was the cause, these plots can’t tell\\.$`),
      );
  });

  it('says where there is nothing to reckon', () => {
    const nothing = { low: null, high: null, hiddenBelow: null };
    expect(says({ ...nothing, verdict: 'too-few' })).toContain('too few plots');
    expect(says({ ...nothing, verdict: 'cannot-tell' })).toContain('says nothing of how far others would');
  });
});

describe('groups', () => {
  const told = { season: 2026, varietyNames: { sturon: 'Sturon' } };
  it.each([
    ['digging', 'double', 'double dug'],
    ['manure', 'none', 'not manured for the season'],
    ['years-since', '4+', '4 years or more since its group'],
    ['sowing', 'sown 9', 'sown 26 February to 25 March'],
    ['sowing', 'planted before 41', 'planted 8 October to 4 November, the year before'],
    ['variety', 'sturon', 'Sturon'],
    ['season', '2026', '2026'],
  ] as const)('%s %s', (question, key, words) => expect(groupWords(question, key, told)).toBe(words));

  it('are said with their range and mean', () => {
    const group = { key: 'double', own: [], low: 1_000, high: 3_000, estimate: 2_000 };
    expect(groupSays('double dug', { ...group, values: [1_000, 2_000, 3_000], mean: 2_000 }, 'metric')).toBe(
      'Double dug: 3 plots, from 1 to 3, on average 2.',
    );
    expect(yieldFigure(0, 'imperial')).toBe('0');
  });
});

it('a comparison in short says how it stands', () => {
  const state = { cropName: 'Onion', season: 2026, question: 'digging' } as const;
  expect(resultsNow({ ...state, plots: 0, verdicts: [] })).toBe('withheld: of fewer than three neighbours');
  expect(resultsNow({ ...state, plots: 7, verdicts: ['cannot-tell'] })).toBe('7 plots; so few can’t tell a difference');
  expect(resultsNow({ ...state, plots: 9, verdicts: ['likely-more', 'cannot-tell'] })).toBe(
    '9 plots; one difference is likely, the cause not known',
  );
});
