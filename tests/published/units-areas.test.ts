import { expect, test } from 'vitest';
import { areaOfQuarterRodsCm2, formatArea } from '@/lib/domain/quantity/area';
import { parseLength } from '@/lib/domain/quantity/length';

// Yard of 0.9144 m exactly; acre of 4,840 square yards: Weights and Measures Ordinance, Cap. 68 (Hong Kong, 1987),
// First Schedule. Square rod of 30¼ square yards, 272¼ square feet, 25.293 m²: dictionary.com, Style guide, Weights.
test('a square rod is 25.293 m², or 272¼ square feet', () => {
  expect(areaOfQuarterRodsCm2(4)).toBe(252_929);
  expect(formatArea(areaOfQuarterRodsCm2(4), 'imperial')).toBe('272 sq ft');
  expect(formatArea(areaOfQuarterRodsCm2(4), 'metric')).toBe('25.3 m²');
});

test('ten rods are 252.9285264 m²', () => expect(areaOfQuarterRodsCm2(40)).toBe(2_529_285));

test('an acre, 160 square rods, is 4,046.8564224 m²', () => expect(areaOfQuarterRodsCm2(640)).toBe(40_468_564));

// Allotments Act 1922, section 22(1): an allotment garden is at most 40 poles, a quarter of that acre.
test('forty poles are a quarter of an acre', () => expect(areaOfQuarterRodsCm2(160)).toBe(10_117_141));

// Three feet to the yard of 0.9144 m exactly, as above.
test('a yard typed in feet or in inches is 0.9144 m', () => {
  for (const text of ['3 ft', '36 in', '0.9144 m'])
    expect(parseLength(text, 'imperial')).toEqual({ ok: true, tenthMm: 9144 });
});

// 5½ yards to the rod, as above.
test('a rod typed in feet and inches is 5.0292 m', () =>
  expect(parseLength('16 ft 6 in', 'metric')).toEqual({ ok: true, tenthMm: 50_292 }));
