import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyDressedOrder, anySoil, turned } from '@/tests/fixtures/trench-orders';
import { soilOf } from '../catalogue/soils';
import type { Dressing } from './dressing';
import { layerHeights, riseOf } from './layer-heights';
import { type TrenchOrder, trenchPlan } from './trench-plan';

const order: TrenchOrder = {
  bed: { widthCm: 120, lengthCm: 360 },
  across: 'width',
  trenchWidthCm: 60,
  spitDepthCm: 25,
  method: 'double-digging',
  layout: 'straight-through',
};
const loam = soilOf('loamy') ?? expect.fail();
const dressing: Dressing = {
  manure: { densityGPerL: 400, bottomGPerM2: 3000, topGPerM2: 2000, barrowLitres: 85 },
  meals: [],
  strawGPerM2: 700,
};
const onTop: Dressing = { ...dressing, manure: dressing.manure && { ...dressing.manure, bottomGPerM2: 0 } };

test('ten litres to the square metre lie a centimetre high', () => {
  expect(layerHeights(dressing)).toEqual({ manureBottomCm: 0.75, manureTopCm: 0.5, strawCm: 1 });
  expect(layerHeights({ manure: null, meals: [], strawGPerM2: 0 })).toEqual({
    manureBottomCm: 0,
    manureTopCm: 0,
    strawCm: 0,
  });
});

describe('how high the ground will stand', () => {
  test('two spits of loam, with manure and straw apart, and the settlement open', () =>
    expect(riseOf(trenchPlan(order), loam, dressing)).toEqual({
      swellCm: { least: 7.5, most: 17.5 },
      manureCm: 1.3,
      strawCm: 1,
      settlement: { code: 'no-published-figure', cm: null },
    }));

  test.each([
    ['single-digging', { least: 3.8, most: 8.8 }],
    ['forking', { least: 3.8, most: 8.8 }],
    ['mulch', { least: 0, most: 0 }],
  ] as const)('%s swells %o', (method, swellCm) =>
    expect(riseOf(trenchPlan({ ...order, method }), loam, onTop).swellCm).toEqual(swellCm),
  );

  test('a soil whose swell nobody gives stands at no known height', () =>
    expect(riseOf(trenchPlan(order), soilOf('peaty') ?? loam, dressing).swellCm).toBeNull());

  test('the height is the swollen volume over the area, and turning the bed changes nothing', () => {
    fc.assert(
      fc.property(anyDressedOrder, anySoil, ({ order: any, dressing: laid }, soil) => {
        const rise = riseOf(trenchPlan(any), soil, laid);
        expect(riseOf(trenchPlan(turned(any)), soil, laid)).toEqual(rise);
        for (const cm of [rise.manureCm, rise.strawCm, rise.swellCm?.least ?? 0, rise.swellCm?.most ?? 0])
          expect(Number.isFinite(cm) && cm >= 0).toBe(true);
      }),
    );
  });
});
