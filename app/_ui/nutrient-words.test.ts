import { expect, test } from 'vitest';
import { nutrientFigure, nutrientWords, rangeFigure, rangeWords } from './nutrient-words';

test('nutrients in a member’s units', () => {
  expect(nutrientWords(25_000, 'metric')).toBe('25 g/m²');
  expect(nutrientWords(25_000, 'imperial')).toBe('0.74 oz/sq yd');
  expect([nutrientFigure(0, 'metric'), nutrientFigure(0, 'imperial')]).toEqual(['0', '0']);
  expect(nutrientFigure(2549, 'metric')).toBe('2.5');
});

test('a range, and one figure where both ends read alike', () => {
  expect(rangeFigure({ leastMgPerM2: 2500, mostMgPerM2: 6250 }, 'metric')).toBe('2.5 to 6.3');
  expect(rangeWords({ leastMgPerM2: 2500, mostMgPerM2: 2501 }, 'metric')).toBe('2.5 g/m²');
});
