import { describe, expect, it } from 'vitest';
import { plainGround, plainOrder } from '@/tests/fixtures/sheet-orders';
import { footprint } from '../ground/footprint';
import { stagesOf } from '../trench/stages';
import { diggingOf, isTooLarge, mostTrenches } from './sheet-order';

describe('diggingOf', () => {
  it('is the plan, the dressing, the soil and the finish of the order', () => {
    const digging = diggingOf(plainOrder, plainGround);
    expect(digging.plan.trenches).toHaveLength(6);
    expect(digging.plan.trenches[0]?.footprint).toEqual(footprint(0, 0, 120, 60));
    expect(digging).toMatchObject({
      dressing: { manure: { bottomGPerM2: 3000, barrowLitres: 85 }, meals: [{ key: 'hoof-and-horn' }] },
      soil: { key: 'loamy' },
      springFinishCm: 8,
    });
    expect(stagesOf(digging).map(({ code }) => code)).toContain('spring-finish');
  });

  it('reads back the same from what was kept', () => {
    const kept = JSON.parse(JSON.stringify(plainOrder)) as typeof plainOrder;
    expect(diggingOf(kept, plainGround)).toEqual(diggingOf(plainOrder, plainGround));
  });

  it('refuses ground that no trench fits, and a soil that is none', () => {
    expect(() => diggingOf(plainOrder, footprint(0, 0, 120, 59))).toThrow(RangeError);
    expect(() => diggingOf({ ...plainOrder, soil: 'chalky' as 'loamy' }, plainGround)).toThrow(RangeError);
  });
});

describe('isTooLarge', () => {
  it('is what nobody follows on one sheet: 300 trenches in two halves, or more than a hectare', () => {
    const run = (lengthCm: number) => footprint(0, 0, 120, lengthCm);
    expect(isTooLarge(run((mostTrenches / 2) * 60), 'width', 60)).toBe(false);
    expect(isTooLarge(run((mostTrenches / 2) * 60 + 1), 'width', 60)).toBe(true);
    expect(isTooLarge(run((mostTrenches / 2) * 60 + 1), 'length', 60)).toBe(false);
    expect(isTooLarge(footprint(0, 0, 10_000, 10_000), 'width', 100)).toBe(false);
    expect(isTooLarge(footprint(0, 0, 10_001, 10_000), 'width', 100)).toBe(true);
  });
});
