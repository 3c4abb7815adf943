import { describe, expect, test } from 'vitest';
import { type Material, materialOf } from '@/lib/domain/catalogue/materials';
import { needOf } from '@/lib/domain/need/need-of';
import { loadsIn } from '@/lib/domain/quantity/load';

const material = (key: string): Material => materialOf(key) ?? expect.fail(key);
const barrowKg = (densityGPerL: number) =>
  needOf([], { rateGPerM2: 5000, barrowLitres: 85, densityGPerL, intervalYears: 3 }).barrowLoadG / 1000;

describe('density', () => {
  // Swiss Federal Office for Agriculture, Gehaltstabelle HODUFLU, 2024: nitrogen per m³ over nitrogen per t.
  test('horse manure, 1.76 kg/m³ and 4.40 kg/t, weighs 0.40 t/m³', () =>
    expect(material('horse-manure').densityGPerL).toBe(Math.round((1.76 / 4.4) * 1000)));
  test('stacked cattle manure, 3.38 kg/m³ and 4.50 kg/t, weighs 0.75 t/m³', () => {
    expect(Math.abs(material('cattle-manure').densityGPerL - (3.38 / 4.5) * 1000)).toBeLessThan(2);
  });
  // Alberta Agriculture, Nutrient Management Planning Guide, pp. 126–127: 19.48 kg in a pail of 20 L.
  test('the heaviest manure that was weighed by the pail is within the range of what is mixed', () => {
    expect(material('mixed-manure').mostGPerL).toBe(Math.round(19_480 / 20));
  });
});

describe('barrow-loads', () => {
  // Densities: HODUFLU 2024, as above. A barrow of 85 L: common practice.
  test('a barrow of 85 L holds 34 kg of horse manure and 63.75 kg of cattle manure', () => {
    expect(barrowKg(material('horse-manure').densityGPerL)).toBe(34);
    expect(barrowKg(material('cattle-manure').densityGPerL)).toBe(63.75);
  });
  test('a cubic metre is 11.76 barrows of 85 L and 11.11 of 90 L, so 11 whole loads of either', () => {
    expect(loadsIn({ thousandths: 1000, unit: 'm3' }, 85, 400)).toBe(11);
    expect(loadsIn({ thousandths: 100_000, unit: 'm3' }, 85, 400)).toBe(1176);
    expect(loadsIn({ thousandths: 100_000, unit: 'm3' }, 90, 400)).toBe(1111);
  });
  // Soil out of an opening trench 10 m × 0.60 m × 0.25 m with a swell of 30 %: 1.950 m³ loose, 22.94 barrows of 85 L.
  // RHS, Double digging (width of a trench); a construction-estimating text (swell).
  test('1.950 m³ of loose soil is 22 full barrows and part of another', () =>
    expect(loadsIn({ thousandths: 1950, unit: 'm3' }, 85, 1300)).toBe(22));
});
