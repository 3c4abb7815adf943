import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anySheet, plainGround, plainOrder } from '@/tests/fixtures/sheet-orders';
import { footprint } from '../ground/footprint';
import { figuresOf } from './sheet-figures';

describe('figuresOf', () => {
  it('is what the order asks of its ground', () => {
    const figures = figuresOf(plainOrder, plainGround);
    expect(figures.layers.total).toMatchObject({ wholeLoads: 1, manureBottomMl: 32_400, manureTopMl: 21_600 });
    expect(figures.moved.total.openedMl).toBe(1_080_000);
    // 180 L of loam that swell by 15 to 35 %, in barrows of 85 L.
    expect(figures.openingBarrows).toEqual({ least: 3, most: 3 });
    expect(figures.rise.swellCm).toEqual({ least: 7.5, most: 17.5 });
    expect(figures.carrying?.less).toBe('two-halves');
    expect(figures.leafletLayout).toBe('straight-through');
  });

  it('wheels no soil in two halves, and carries nothing where nothing is opened', () => {
    expect(figuresOf({ ...plainOrder, layout: 'two-halves' }, plainGround).openingBarrows).toBeNull();
    const manure = plainOrder.manure && { ...plainOrder.manure, bottomGPerM2: 0 };
    const forked = { ...plainOrder, method: 'forking' as const, manure, meal: null };
    expect(figuresOf(forked, plainGround)).toMatchObject({ carrying: null, openingBarrows: null, leafletLayout: null });
  });

  it('answers for ground that cannot be parted in two', () => {
    const strip = footprint(0, 0, 1, 360);
    expect(figuresOf(plainOrder, strip).carrying).toBeNull();
  });

  it('gives the layout that it was settled on the carrying that it has', () =>
    fc.assert(
      fc.property(anySheet, ({ order, ground }) => {
        const { carrying, digging } = figuresOf(order, ground);
        if (carrying) expect(['two-halves', 'straight-through', 'equal']).toContain(carrying.less);
        expect(digging.plan.order.layout).toBe(order.layout);
      }),
    ));
});
