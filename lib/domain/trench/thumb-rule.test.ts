import { describe, expect, test } from 'vitest';
import { mostDressingGPerM2 } from '../nutrients/dressing';
import { thumbMealGPerM2, thumbRuleRateGPerM2 } from './thumb-rule';

const trench = { lengthCm: 120, widthCm: 60 };

describe('the thumb rule', () => {
  test('half a load of 34 kg on 0.72 m², and anything up to the other half above', () =>
    expect(thumbRuleRateGPerM2(trench, 85, 400)).toEqual({
      bottomGPerM2: 23_611,
      topMostGPerM2: 23_611,
      mostGPerM2: 47_222,
    }));

  test('bottom and top sum to the most, odd grams and all', () => {
    const { bottomGPerM2, topMostGPerM2, mostGPerM2 } = thumbRuleRateGPerM2({ lengthCm: 133, widthCm: 61 }, 77, 401);
    expect(bottomGPerM2 + topMostGPerM2).toBe(mostGPerM2);
  });

  test('over several times what 250 kg of nitrogen a hectare allows of horse manure', () => {
    expect(Math.floor(thumbRuleRateGPerM2(trench, 85, 400).bottomGPerM2 / mostDressingGPerM2(5000, 250))).toBe(4);
  });

  test('half a jar of meal a trench', () => expect(thumbMealGPerM2(trench, 230)).toBe(160));

  test.each([0, -1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused wherever it stands', (value) => {
    expect(() => thumbRuleRateGPerM2({ ...trench, lengthCm: value }, 85, 400)).toThrow(RangeError);
    expect(() => thumbRuleRateGPerM2({ ...trench, widthCm: value }, 85, 400)).toThrow(RangeError);
    expect(() => thumbRuleRateGPerM2(trench, value, 400)).toThrow(RangeError);
    expect(() => thumbRuleRateGPerM2(trench, 85, value)).toThrow(RangeError);
    expect(() => thumbMealGPerM2(trench, value)).toThrow(RangeError);
  });
});
