import { describe, expect, it } from 'vitest';
import { readMass } from '@/lib/domain/quantity/mass';
import { amountWords, rangeFigures, typedAgain, yieldWords } from './yield-words';

describe('a harvest in words', () => {
  it('is a weight in the member’s units, a count, or nothing', () => {
    expect(amountWords('grams', 4_200, 'metric')).toBe('4.2 kg');
    expect(amountWords('grams', 4_196, 'imperial')).toBe('9 lb 4 oz');
    expect(amountWords('pieces', 1_200, 'metric')).toBe('1,200');
    expect(amountWords('grams', 0, 'metric')).toBe('nothing');
  });

  it('is typed again as it was kept, to the gram', () => {
    for (const massG of [0, 1, 350, 4_196, 12_345])
      for (const units of ['metric', 'imperial'] as const)
        expect(readMass(typedAgain('grams', massG, units), units)).toBe(massG);
    expect(typedAgain('pieces', 14, 'imperial')).toBe('14');
  });
});

describe('a yield in words', () => {
  const of = { bedId: 'bed', cropKey: 'leek', season: 2026, areaCm2: 40_000 };

  it('is told on a square metre or yard', () => {
    const weighed = { ...of, measure: 'grams' as const, amount: 9_600, perM2: 2_400 };
    expect(yieldWords(weighed, 'metric')).toBe('2.4 kg/m²');
    expect(yieldWords(weighed, 'imperial')).toBe('4.4 lb/sq yd');
    const counted = { ...of, measure: 'pieces' as const, amount: 14, perM2: 4 };
    expect(yieldWords(counted, 'metric')).toBe('3.5 on 1 m²');
    expect(yieldWords(counted, 'imperial')).toBe('2.9 on 1 sq yd');
  });

  it('is nothing where the crop failed, and never nothing where it did not', () => {
    expect(yieldWords({ ...of, measure: 'grams', amount: 0, perM2: 0 }, 'metric')).toBe('nothing');
    expect(yieldWords({ ...of, measure: 'grams', amount: 1, perM2: 0 }, 'metric')).toBe('under 0.01 kg/m²');
    expect(yieldWords({ ...of, measure: 'grams', amount: 280, perM2: 70 }, 'metric')).toBe('0.07 kg/m²');
  });

  it('is a range, in one unit with all others', () => {
    expect(rangeFigures(3_662, 4_882, 'metric')).toBe('3.7 to 4.9');
    expect(rangeFigures(976, 1_953, 'metric')).toBe('0.98 to 2');
    expect(rangeFigures(6_000, 6_000, 'imperial')).toBe('11.1');
  });
});
