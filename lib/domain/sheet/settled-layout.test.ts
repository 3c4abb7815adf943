import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyOrder, anySoil, knownSoil } from '@/tests/fixtures/trench-orders';
import { lessCarrying } from '../trench/carrying';
import { settledLayout } from './settled-layout';

const order = {
  bed: { widthCm: 200, lengthCm: 700 },
  across: 'width',
  trenchWidthCm: 60,
  spitDepthCm: 25,
  method: 'double-digging',
} as const;
const loam = knownSoil('loamy');
const wide = (widthCm: number) => ({ ...order, bed: { ...order.bed, widthCm } });

describe('settledLayout', () => {
  it('takes whichever is less carrying', () =>
    expect(settledLayout(order, 'as-suggested', loam)).toEqual({ layout: 'two-halves', by: 'less-carrying' }));

  it('suggests no halves of less than 90 cm, but digs them where they are asked for', () => {
    expect(settledLayout(wide(180), 'as-suggested', loam)).toMatchObject({ layout: 'two-halves' });
    expect(settledLayout(wide(179), 'as-suggested', loam)).toEqual({
      layout: 'straight-through',
      by: 'halves-too-short',
    });
    expect(settledLayout(wide(120), 'two-halves', loam)).toEqual({ layout: 'two-halves', by: 'asked' });
  });

  it.each(['forking', 'mulch'] as const)('has nothing to carry for %s', (method) =>
    expect(settledLayout({ ...order, method }, 'two-halves', loam)).toEqual({
      layout: 'straight-through',
      by: 'no-trench',
    }),
  );

  it('goes straight through where both carry the same', () => {
    const turnedOver = { ...order, bed: { widthCm: 240, lengthCm: 120 }, trenchWidthCm: 120 };
    expect(lessCarrying(turnedOver, loam).less).not.toBe('two-halves');
    expect(settledLayout(turnedOver, 'as-suggested', loam).layout).toBe('straight-through');
  });

  it('never suggests the layout that carries more', () =>
    fc.assert(
      fc.property(anyOrder(['double-digging', 'single-digging']), anySoil, (one, soil) => {
        const { layout, by } = settledLayout(one, 'as-suggested', soil);
        const { less } = lessCarrying(one, soil);
        if (by === 'less-carrying') expect(['equal', layout]).toContain(less);
        else expect(layout).toBe('straight-through');
      }),
    ));
});
