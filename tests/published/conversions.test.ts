import { describe, expect, test } from 'vitest';
import { mealOf } from '@/lib/domain/catalogue/meals';
import { areaOfQuarterRodsCm2, readArea } from '@/lib/domain/quantity/area';
import { gPerM2Of, type RateUnit, rateIn } from '@/lib/domain/quantity/area-rate';
import { areaOfBalesCm2, strawRateGPerM2 } from '@/lib/domain/quantity/bales';
import { calibrateBarrow } from '@/lib/domain/quantity/barrow-calibration';
import { densityOfBucketfuls } from '@/lib/domain/quantity/bucket-test';
import { heapLitres } from '@/lib/domain/quantity/heap-volume';
import { parseLength } from '@/lib/domain/quantity/length';
import { loadsIn } from '@/lib/domain/quantity/load';
import { readMass } from '@/lib/domain/quantity/mass';
import { jarOf } from '@/lib/domain/quantity/meal-jar';

const feetCm = (feet: number) => {
  const typed = parseLength(`${feet} ft`, 'imperial');
  return typed.ok ? typed.tenthMm / 100 : expect.fail(`${feet} ft`);
};
const cubicFootLitres = 28.316846592;

describe('heaps', () => {
  // Math Central, University of Regina, question 09.11 from Perry (2011): a pile 42 ft across and 16 ft high.
  test('a cone of 42 ft by 16 ft is 7,389 cubic feet', () => {
    const litres = heapLitres({ kind: 'cone', acrossCm: feetCm(42), heightCm: feetCm(16) });
    expect(Math.round(litres / cubicFootLitres)).toBe(7389);
  });

  // Moscow Mathematical Papyrus, about 1850 BC, problem 14: a truncated pyramid, 6 high, 4 at the base, 2 on top.
  test('a truncated pyramid of 6 by 4 by 2 is 56', () => {
    const heap = {
      kind: 'flat-topped',
      lengthCm: 40,
      widthCm: 40,
      heightCm: 60,
      topLengthCm: 20,
      topWidthCm: 20,
    } as const;
    expect(heapLitres(heap)).toBe(56);
  });

  // Modern Buildings, vol. 6 (early 20th century), Barrows: a navvy barrow holds about a tenth of a cubic yard; 76.5 L derived.
  test('a tenth of a cubic yard is 76 whole litres', () => {
    const yardCm = feetCm(3);
    expect(heapLitres({ kind: 'box', lengthCm: yardCm, widthCm: yardCm, heightCm: yardCm / 10 })).toBe(76);
  });

  // J. Jeavons, How to Grow More Vegetables: a trench of 5 × 1 × 1 ft fills seven buckets of 5 US gallons; 7.5 derived.
  test('a trench of 5 × 1 × 1 ft fills seven buckets of 19 L', () => {
    const trench = { kind: 'box', lengthCm: feetCm(5), widthCm: feetCm(1), heightCm: feetCm(1) } as const;
    expect(loadsIn({ thousandths: heapLitres(trench), unit: 'm3' }, 19, 1100)).toBe(7);
  });
});

describe('weighed by the bucket', () => {
  const fills = (count: number, massG: number) => Array.from({ length: count }, () => massG);

  // Alberta Agriculture, Nutrient Management Planning Guide (Agdex 400/28-3), p. 127: 19.48 kg in a pail of 20 L; ten to twenty
  // fills, p. 126.
  test('19.48 kg in 20 L is 974 kg/m³', () => {
    const found = densityOfBucketfuls({ bucketLitres: 20, emptyG: 0, fullG: fills(10, 19_480) });
    expect(found).toMatchObject({ densityGPerL: 974, enough: 'sound' });
  });

  // Livestock and Poultry Environmental Learning Center, Estimating Manure Density (undated): at least five fills of a
  // 5-gallon bucket; pounds × 1.5 are pounds a cubic foot. A US gallon of 3.785 L: Alberta, as above, Table 4.1.3.
  test.each([15, 25, 40])('%s lb in 5 US gallons, times 1.5, in pounds a cubic foot, to half a percent', (pounds) => {
    const netG = readMass(`${pounds} lb`, 'imperial') ?? expect.fail(`${pounds} lb`);
    const found = densityOfBucketfuls({ bucketLitres: 5 * 3.785, emptyG: 900, fullG: fills(5, netG + 900) });
    const poundsPerCubicFoot = (found.densityGPerL * cubicFootLitres) / 453.59237;
    expect(Math.abs(poundsPerCubicFoot / (pounds * 1.5) - 1)).toBeLessThan(0.005);
    expect(found.enough).toBe('fewer-than-ten');
  });

  // Swiss Federal Office for Agriculture, Gehaltstabelle HODUFLU, 2024: nitrogen per m³ over nitrogen per t, horse and stacked
  // cattle manure: 0.40 and 0.75 t/m³. A barrow of 85 L, 34 and 63.75 kg: derived.
  test.each([
    [1.76, 4.4, 400, 34],
    [3.38, 4.5, 750, 63.75],
  ])(
    '%s kg/m³ over %s kg/t is %s g/L and %s kg to the barrow, to two in a thousand',
    (perM3, perT, densityGPerL, barrowKg) => {
      const bucketG = (perM3 / perT) * 10_000;
      const found = densityOfBucketfuls({ bucketLitres: 10, emptyG: 0, fullG: fills(5, bucketG) });
      const { struckLitres } = calibrateBarrow(10, 8.5, null);
      expect(Math.abs(found.densityGPerL / densityGPerL - 1)).toBeLessThan(0.002);
      expect(Math.abs((found.densityGPerL * struckLitres) / 1000 / barrowKg - 1)).toBeLessThan(0.002);
    },
  );
});

describe('bales', () => {
  // Irish Farmers Journal, Straw budgeting (undated): a small bale weighs 12 to 14 kg. Taylor & Francis, building-materials
  // textbook, doi 10.4324/9781315768748-26, abstract: 375 × 500 × 990 mm. Derived: 65 to 75 kg/m³.
  test.each([
    [12_000, 65],
    [14_000, 75],
  ])('a bale of %s g at %s g/L, laid as it is, covers its own foot, to one percent', (baleG, densityGPerL) => {
    const coveredCm2 = areaOfBalesCm2(1, strawRateGPerM2(37.5, densityGPerL), baleG);
    expect(Math.abs(coveredCm2 / (50 * 99) - 1)).toBeLessThan(0.01);
  });
});

describe('a jar of meal', () => {
  // FAO, S4314E, Appendix XI (undated): meat meal 0.59–0.64, bone meal 0.80–0.96, limestone 1.08–1.14 t/m³. Derived for a jar
  // of 0.37 L, which is itself from memory: 0.22–0.24 kg (standing in for hoof and horn), 0.30–0.36, 0.40–0.42.
  test.each([
    ['hoof and horn', mealOf('hoof-and-horn')?.density, 0.22, 0.24],
    ['bone meal', mealOf('bone-meal')?.density, 0.3, 0.36],
    ['limestone', { leastGPerL: 1080, mostGPerL: 1140, proxy: null }, 0.4, 0.42],
  ])('%s, in 370 mL', (_, density, leastKg, mostKg) => {
    const jar = jarOf({ jarMl: 370, weighedG: null, density: density ?? expect.fail('no density') });
    if (jar.basis !== 'estimated') expect.fail(jar.basis);
    // Derived to ten grams.
    expect(Math.abs(jar.leastG - leastKg * 1000)).toBeLessThanOrEqual(5);
    expect(Math.abs(jar.mostG - mostKg * 1000)).toBeLessThanOrEqual(5);
  });
});

describe('units', () => {
  // Rothamsted Research, electronic Rothamsted Archive, Conversion factors (undated): imperial to metric.
  test.each<[string, number]>([
    ['1 oz', 28.35],
    ['1 lb', 453.6],
    ['1 cwt', 50_800],
    ['1 ton', 1_016_000],
  ])('%s is %s g', (text, massG) => {
    // Whole grams are read: so many at once that a gram does not show.
    const thousand = readMass(text.replace('1', '100'), 'imperial') ?? expect.fail(text);
    expect(Math.abs(thousand / 100 / massG - 1)).toBeLessThan(2e-4);
  });
  test('a square yard is 0.8361 m²', () => expect(readArea('1 sq yd', 'imperial')).toBe(8361));
  test.each<[RateUnit, RateUnit, number]>([
    ['cwt/acre', 'kg/ha', 125.5],
    ['cwt/acre', 't/ha', 0.1255],
    ['tons/acre', 'kg/ha', 2511],
    ['tons/acre', 't/ha', 2.511],
  ])('one %s in %s is %s', (from, to, factor) =>
    expect(Math.abs(rateIn(gPerM2Of(1, from), to) / factor - 1)).toBeLessThan(3e-4),
  );

  // Weights and Measures Act 1985, Schedule 1: pound of 0.45359237 kg. Derived: a hundredweight of 112 lb.
  test('a hundredweight is 50.80234544 kg', () => {
    expect(readMass('1 cwt', 'metric')).toBe(50_802);
    expect(readMass('1000 cwt', 'metric')).toBe(50_802_345);
    expect(readMass('112 lb', 'metric')).toBe(50_802);
  });

  // Square rod of 30¼ square yards: dictionary.com, Style guide, Weights (undated); ten of them 302½. Yard of 0.9144 m exactly:
  // Weights and Measures Ordinance, Cap. 68 (Hong Kong, 1987), First Schedule. 252.9285264 m²: derived.
  test('ten rods are 302.5 square yards, 252.93 m²', () => {
    expect(readArea('302.5 sq yd', 'metric')).toBe(2_529_285);
    expect(readArea('10 rods', 'metric')).toBe(2_529_285);
    expect(areaOfQuarterRodsCm2(40)).toBe(2_529_285);
  });

  // Ounce and square yard as above; derived.
  test('an ounce to the square yard is 33.9 g/m²; a tonne to the hectare 100 g/m², a kilogram a tenth of one', () => {
    expect(gPerM2Of(1, 'oz/sq yd')).toBeCloseTo(33.9, 1);
    expect(gPerM2Of(1, 't/ha')).toBe(100);
    expect(gPerM2Of(1, 'kg/ha')).toBe(0.1);
  });
});
