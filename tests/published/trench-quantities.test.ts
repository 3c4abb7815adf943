import { describe, expect, test } from 'vitest';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { type Soil, soilOf } from '@/lib/domain/catalogue/soils';
import { loadsIn } from '@/lib/domain/quantity/load';
import { openingBarrows, soilMoved } from '@/lib/domain/trench/soil-moved';
import { suggestedLayout } from '@/lib/domain/trench/suggested-layout';
import { type TrenchOrder, trenchPlan } from '@/lib/domain/trench/trench-plan';

const soil = (key: string): Soil => soilOf(key) ?? expect.fail(key);
const order: TrenchOrder = {
  bed: { widthCm: 1000, lengthCm: 600 },
  across: 'width',
  trenchWidthCm: 60,
  spitDepthCm: 25,
  method: 'double-digging',
  layout: 'straight-through',
};
const moved = (given: Partial<TrenchOrder>, of: Soil) => soilMoved(trenchPlan({ ...order, ...given }), of);

describe('the soil of an opening trench', () => {
  // Trench of 60 cm: Royal Horticultural Society, Double digging, undated. Swell of dense clay, 30 %: construction-estimating
  // text, Fig. 9.1. Over 10 m, a spit of 25 cm: 1.500 m³ in place, 1.950 m³ loose, 22.94 barrows of 85 L.
  test('10 m of 0.60 × 0.25 m in dense clay: 1.500 m³ in place, 1.950 m³ loose, 23 barrows of 85 L', () => {
    const trenchWidthCm = diggingMethodOf('double-digging').trenchWidthCm;
    const inClay = moved({ trenchWidthCm }, soil('clayey'));
    expect(inClay.trenches[0]?.openedMl).toBe(1_500_000);
    expect(inClay.trenches[0]?.looseMl?.least).toBe(1_950_000);
    expect(openingBarrows(inClay, 85)?.least).toBe(23);
  });

  // J. Jeavons, How to Grow More Vegetables: a trench of 5 × 1 × 1 ft fills seven five-gallon buckets (18.9 L; 37.4 US gallons).
  test('5 × 1 × 1 ft fills seven buckets of five gallons', () => {
    const bed = { widthCm: 152, lengthCm: 305 };
    const opened =
      moved({ bed, trenchWidthCm: 30, spitDepthCm: 30 }, soil('sandy')).trenches[0]?.openedMl ?? Number.NaN;
    expect(loadsIn({ thousandths: Math.round(opened / 1000), unit: 'm3' }, 19, 1)).toBe(7);
  });
});

describe('swell', () => {
  // Construction-estimating text, Fig. 9.1: 1,000 cubic yards of dense clay in the bank are 1,300 loose; sand and gravel swell by 15 %.
  test('dense clay, 1,000 to 1,300; sand and gravel by 15 %', () => {
    const loose = (key: string) => moved({ bed: { widthCm: 1000, lengthCm: 4000 } }, soil(key)).total;
    expect(loose('clayey')).toMatchObject({ openedMl: 100_000_000, looseMl: { least: 130_000_000 } });
    expect(loose('sandy')).toMatchObject({ looseMl: { most: 115_000_000 } });
  });

  // Alaska Department of Transportation, 1983, as compiled on a page of bulking factors: sand 5 %, silt 35 %, damp clay 40 %.
  test('sand 5 %, silt 35 %, damp clay 40 %', () => {
    const bed = { widthCm: 1000, lengthCm: 4000 };
    expect(moved({ bed }, soil('sandy')).total.looseMl?.least).toBe(105_000_000);
    expect(moved({ bed }, soil('silty')).total.looseMl).toEqual({ least: 135_000_000, most: 135_000_000 });
    expect(moved({ bed }, soil('clayey')).total.looseMl?.most).toBe(140_000_000);
  });
});

describe('weight', () => {
  // Commercial Gardening, vol. 1, Digging, about 1913: an acre dug a foot deep in 20 days at 70 tons, or in 11 days at 120:
  // 1,400 and 1,320 long tons of 1,016.05 kg. Here in whole centimetres, a spit of 30 for its 30.48.
  test('an acre dug a foot deep is 1,320 to 1,400 tons of good loam', () => {
    const acre = { widthCm: 1000, lengthCm: 40_469 };
    const { massG } = moved({ bed: acre, method: 'single-digging', spitDepthCm: 30 }, soil('loamy')).total;
    expect(massG?.least).toBeLessThan(1_320 * 1_016_047);
    expect(massG?.most).toBeGreaterThan(1_400 * 1_016_047);
  });

  // USDA Natural Resources Conservation Service, bulk density and the growth of roots, as relayed: roots go well below
  // 1.60 t/m³ in sandy ground, 1.40 in silty, 1.10 in clayey, and are stopped above 1.80, 1.65 and 1.47.
  test.each([
    ['sandy', 1600, 1800],
    ['silty', 1400, 1650],
    ['clayey', 1100, 1470],
  ])('a cubic metre of %s ground lies from below %s kg up to %s', (key, wellKg, stoppedKg) => {
    const cubicMetre = { bed: { widthCm: 100, lengthCm: 400 }, trenchWidthCm: 100, spitDepthCm: 25 };
    const { massG } = moved(cubicMetre, soil(key)).total;
    expect(massG?.least).toBeLessThan(wellKg * 1000);
    expect(massG?.most).toBe(stoppedKg * 1000);
  });
});

describe('the layout', () => {
  // Ministry of Agriculture, Dig for Victory Leaflet No. 20 (New Series), How to Dig: single-dig trenches of 15 in; ground wider
  // than 15 ft (457.2 cm) is dug in two halves.
  test('ground up to 15 ft wide straight through, wider in two halves', () => {
    const layout = (feet: number) => suggestedLayout({ widthCm: Math.round(feet * 30.48), lengthCm: 900 }, 'width');
    expect([14, 15, 16, 30].map(layout)).toEqual(['straight-through', 'straight-through', 'two-halves', 'two-halves']);
  });

  test('a single-dig trench of 15 in: 30 ft of ground in 24 of them', () => {
    const { trenchWidthCm } = diggingMethodOf('single-digging');
    const plan = trenchPlan({
      ...order,
      bed: { widthCm: 457, lengthCm: 914 },
      trenchWidthCm,
      method: 'single-digging',
    });
    expect(plan.trenches).toHaveLength(24);
  });
});
