import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyOrder, turned } from '@/tests/fixtures/trench-orders';
import { areaCm2, subtract } from '../ground/footprint';
import { suggestedLayout } from './suggested-layout';
import { defaultAcross, type TrenchOrder, trenchPlan } from './trench-plan';

const order: TrenchOrder = {
  bed: { widthCm: 120, lengthCm: 360 },
  across: 'width',
  trenchWidthCm: 60,
  spitDepthCm: 25,
  method: 'double-digging',
  layout: 'straight-through',
};
const widths = (lengthCm: number) =>
  trenchPlan({ ...order, bed: { widthCm: 120, lengthCm } }).trenches.map(({ widthCm }) => widthCm);

describe('the trenches of a bed', () => {
  test('straight through, from one end to the other', () => {
    const { trenches, runCm } = trenchPlan(order);
    expect(runCm).toBe(360);
    expect(trenches).toHaveLength(6);
    expect(trenches[0]).toEqual({
      number: 1,
      half: 'whole',
      footprint: { xCm: 0, yCm: 0, widthCm: 120, lengthCm: 60 },
      lengthCm: 120,
      widthCm: 60,
    });
    expect(trenches.at(-1)?.footprint).toEqual({ xCm: 0, yCm: 300, widthCm: 120, lengthCm: 60 });
  });

  test('in two halves, down one and back up the other, so that the last lies beside the first', () => {
    const { trenches } = trenchPlan({ ...order, layout: 'two-halves' });
    expect(trenches).toHaveLength(12);
    expect(trenches.map(({ footprint }) => footprint.yCm / 60)).toEqual([0, 1, 2, 3, 4, 5, 5, 4, 3, 2, 1, 0]);
    expect(trenches.map(({ half }) => half).slice(5, 7)).toEqual(['first', 'second']);
    expect(trenches.at(-1)?.footprint).toEqual({ xCm: 60, yCm: 0, widthCm: 60, lengthCm: 60 });
  });

  test('an odd centimetre goes to the first half', () => {
    const { trenches } = trenchPlan({ ...order, bed: { widthCm: 121, lengthCm: 60 }, layout: 'two-halves' });
    expect(trenches.map(({ lengthCm }) => lengthCm)).toEqual([61, 60]);
  });

  test.each([
    [60, [60]],
    [89, [89]],
    [90, [60, 30]],
    [149, [60, 89]],
    [150, [60, 60, 30]],
    [180, [60, 60, 60]],
  ])('a run of %s cm: the last is adjusted, never a sliver', (runCm, expected) =>
    expect(widths(runCm)).toEqual(expected),
  );

  test('a run exactly a trench wide is one; a centimetre less is refused', () => {
    expect(widths(60)).toEqual([60]);
    expect(() => widths(59)).toThrow('bed narrower than a trench');
  });

  test('a bed of one centimetre cannot be parted, one of two can', () => {
    const halves = (widthCm: number) =>
      trenchPlan({ ...order, bed: { widthCm, lengthCm: 60 }, layout: 'two-halves' }).trenches.length;
    expect(halves(2)).toBe(2);
    expect(() => halves(1)).toThrow(RangeError);
  });

  test.each([0, -1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%s is refused wherever it stands', (size) => {
    for (const bad of [
      { bed: { widthCm: size, lengthCm: 360 } },
      { bed: { widthCm: 120, lengthCm: size } },
      { trenchWidthCm: size },
      { spitDepthCm: size },
    ])
      expect(() => trenchPlan({ ...order, ...bad })).toThrow(RangeError);
  });

  test('trenches run along the shorter side where nobody says', () => {
    expect(defaultAcross({ widthCm: 120, lengthCm: 360 })).toBe('width');
    expect(defaultAcross({ widthCm: 360, lengthCm: 120 })).toBe('length');
    expect(defaultAcross({ widthCm: 120, lengthCm: 120 })).toBe('width');
  });
});

describe('the layout that is suggested', () => {
  test('two halves from just over 15 ft', () => {
    const layouts = [457, 458].map((widthCm) => suggestedLayout({ widthCm, lengthCm: 100 }, 'width'));
    expect(layouts).toEqual(['straight-through', 'two-halves']);
    expect(suggestedLayout({ widthCm: 100, lengthCm: 458 }, 'length')).toBe('two-halves');
    expect(() => suggestedLayout({ widthCm: 0, lengthCm: 100 }, 'width')).toThrow(RangeError);
  });
});

describe('whatever the bed', () => {
  test('the trenches tile it exactly, numbered in order', () => {
    fc.assert(
      fc.property(anyOrder(), (any) => {
        const { trenches } = trenchPlan(any);
        const bed = { xCm: 0, yCm: 0, ...any.bed };
        const ground = trenches.map(({ footprint }) => footprint);
        expect(ground.reduce((sum, one) => sum + areaCm2(one), 0)).toBe(areaCm2(bed));
        expect(subtract(bed, ground)).toEqual([]);
        expect(trenches.map(({ number }) => number)).toEqual(trenches.map((_, at) => at + 1));
      }),
      { numRuns: 60 },
    );
  });

  test('only the farthest differs from the width, and is half to one and a half of it', () => {
    fc.assert(
      fc.property(anyOrder(), (any) => {
        const { trenches } = trenchPlan(any);
        const perHalf = any.layout === 'two-halves' ? trenches.length / 2 : trenches.length;
        trenches.forEach(({ widthCm }, at) => {
          if (at !== perHalf - 1 && at !== perHalf) expect(widthCm).toBe(any.trenchWidthCm);
          if (perHalf > 1) expect(2 * widthCm).toBeGreaterThanOrEqual(any.trenchWidthCm);
          expect(2 * widthCm).toBeLessThan(3 * any.trenchWidthCm + 1);
        });
      }),
    );
  });

  test('a bed turned by a quarter has the same trenches, turned', () => {
    fc.assert(
      fc.property(anyOrder(), (any) => {
        const sizes = (of: TrenchOrder) =>
          trenchPlan(of).trenches.map(({ half, lengthCm, widthCm, footprint: { xCm, yCm } }) => {
            const [alongCm, acrossCm] = of.across === 'width' ? [yCm, xCm] : [xCm, yCm];
            return { half, lengthCm, widthCm, alongCm, acrossCm };
          });
        expect(sizes(turned(any))).toEqual(sizes(any));
      }),
    );
  });

  test('what was ordered is not changed', () => {
    fc.assert(
      fc.property(anyOrder(), (any) => {
        const before = structuredClone(any);
        trenchPlan(Object.freeze(any));
        expect(any).toEqual(before);
      }),
    );
  });
});
