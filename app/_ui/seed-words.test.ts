import { describe, expect, it } from 'vitest';
import { packetState } from '@/lib/domain/seed/packet-state';
import { packetMark, packetWhy, seedAmountWords, seedMassWords } from './seed-words';

describe('seed in words', () => {
  it.each([
    ['seeds', 1, '1 seed'],
    ['seeds', 1250, '1,250 seeds'],
    ['sets', 25, '25 sets'],
    ['milligrams', 1500, '1.5 g'],
    ['milligrams', 1, '0.001 g'],
  ] as const)('%s, %i: %s', (unit, amount, words) => expect(seedAmountWords(unit, amount)).toBe(words));

  it.each([
    [1064, '1.1 g'],
    [999, '1 g'],
    [312, '0.31 g'],
    [12_345, '12.3 g'],
  ])('%i mg: %s', (massMg, words) => expect(seedMassWords({ massMg })).toBe(words));

  it('says why a packet counts, and why not', () => {
    const why = (packedYear: number | null, tested: number | null = null) => {
      const state = packetState('leek', packedYear, 2027, tested);
      return `${packetMark(state).word}: ${packetWhy(state, 2027, tested)}`;
    };
    expect(why(2027)).toBe('sound: packed for 2027; kept cool and dry it lives about 2 years.');
    expect(why(2026)).toBe('sound: 1 year old in 2027; kept cool and dry it lives about 2 years.');
    expect(why(2025)).toMatch(/^test first: 2 years old in 2027; .* this is its last/);
    expect(why(2024)).toMatch(/^past: .* not counted/);
    expect(why(null)).toMatch(/^year unknown: /);
    expect(why(2019, 40)).toBe('tested: 40 of 100 came up in your test; it counts by that.');
  });
});
