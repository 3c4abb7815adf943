import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { footprint } from '../ground/footprint';
import { recipesOf } from '../recipe/recipe-of';
import { strawAndMeals } from './straw-and-meals';
import { strawNeed, strawReasons } from './straw-need';

const bed = footprint(0, 0, 300, 400);
const recipes = recipesOf({ member: {}, society: {} });
const onions = { footprint: bed, cropGroup: 'alliums' as const };
const straw = (lengthCm: number) => ({ materialKey: 'straw', footprint: footprint(0, 0, 300, lengthCm) });

describe('the straw a holding wants', () => {
  it('is told crop by crop, less what is strewn', () => {
    expect(strawReasons(bed, [onions], recipes, [straw(100)])).toEqual([
      { cropGroup: 'alliums', areaCm2: 120_000, strewnCm2: 30_000, rateGPerM2: 500 },
    ]);
    expect(strawReasons(bed, [{ ...onions, cropGroup: 'leaves' }], recipes, [])).toEqual([]);
    expect(strawReasons(bed, [{ ...onions, cropGroup: null }], recipes, [])).toEqual([]);
    expect(strawReasons(bed, [], recipes, [])).toEqual([]);
  });

  it('is rounded up once, over all its ground', () => {
    // 6 kg a bed.
    const reasons = strawReasons(bed, [onions], recipes, []);
    const beds = [1, 2, 3].map((id) => ({ id: String(id), reasons }));
    expect(strawNeed(beds, 13_000).loads).toBe(2);
    expect(strawNeed(beds.slice(0, 2), 12_000).loads).toBe(1);
    expect(strawNeed(beds.slice(0, 2), 11_999).loads).toBe(2);
    expect(strawNeed([], 13_000)).toEqual({ loads: 0, grounds: [] });
  });

  it('is the straw of the recipes, whatever is planned and strewn', () => {
    const group = fc.constantFrom('alliums' as const, 'potatoes' as const, 'leaves' as const, null);
    const lengths = fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }), group);
    fc.assert(
      fc.property(fc.array(lengths, { maxLength: 3 }), fc.integer({ min: 1, max: 500 }), (crops, strewnTo) => {
        const planned = crops.map(([y, lengthCm, cropGroup]) => ({
          footprint: footprint(0, y, 300, lengthCm),
          cropGroup,
        }));
        const had = [straw(strewnTo)];
        const inAll = strawAndMeals(bed, planned, recipes, had).get('straw') ?? 0;
        const { loads } = strawNeed([{ id: 'a', reasons: strawReasons(bed, planned, recipes, had) }], 13_000);
        expect(loads).toBe(Math.ceil(inAll / 130_000_000));
      }),
    );
  });

  it('refuses a load of no weight, and more strewn than there is', () => {
    expect(() => strawNeed([], 0)).toThrow(RangeError);
    const reasons = [{ cropGroup: 'alliums' as const, areaCm2: 1, strewnCm2: 2, rateGPerM2: 500 }];
    expect(() => strawNeed([{ id: 'a', reasons }], 1)).toThrow(RangeError);
  });
});
