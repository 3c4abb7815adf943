import { expect, test } from 'vitest';
import { potatoAdviceOf } from './potato-advice';

const at = (index: number) => ({ phosphorus: index, potassium: index, magnesium: index });

test('follows the index, and potash the yield', () => {
  expect(potatoAdviceOf(at(0), 5000)).toEqual({
    phosphateMgPerM2: 25_000,
    potashMgPerM2: 36_000,
    magnesiaMgPerM2: 12_000,
  });
  expect(potatoAdviceOf(at(3), 4000)).toEqual({ phosphateMgPerM2: 10_000, potashMgPerM2: 9200, magnesiaMgPerM2: 0 });
});

test('asks for nothing on rich ground, however heavy the crop, and never for less than nothing', () => {
  for (const index of [4, 5, 9]) expect(Object.values(potatoAdviceOf(at(index), 9000))).toEqual([0, 0, 0]);
  expect(potatoAdviceOf(at(3), 0).potashMgPerM2).toBe(0);
});

test.each([-1, 0.5, Number.NaN])('%s is refused', (wrong) => {
  expect(() => potatoAdviceOf(at(wrong), 5000)).toThrow(RangeError);
  expect(() => potatoAdviceOf(at(1), wrong)).toThrow(RangeError);
});
