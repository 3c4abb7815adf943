import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyDressedOrder, turned } from '@/tests/fixtures/trench-orders';
import { needOf } from '../need/need-of';
import type { Dressing } from './dressing';
import { type Amounts, layersOf } from './layers';
import { type TrenchOrder, trenchPlan } from './trench-plan';
import { restAfter, usedUpTo } from './used-up-to';

const order: TrenchOrder = {
  bed: { widthCm: 120, lengthCm: 360 },
  across: 'width',
  trenchWidthCm: 60,
  spitDepthCm: 25,
  method: 'double-digging',
  layout: 'straight-through',
};
const manure = { densityGPerL: 400, bottomGPerM2: 15_000, topGPerM2: 5000, barrowLitres: 85 };
const horn = { key: 'hoof-and-horn', gPerM2: 100, into: 'bottom' as const, jarG: 230 };
const dressing: Dressing = { manure, meals: [horn], strawGPerM2: 500 };
const plan = trenchPlan(order);

describe('the layers of each trench', () => {
  // 0.72 m²: 10.8 kg (27 L) below, 3.6 kg (9 L) above, 72 g of meal, 360 g of straw.
  test('manure below and above, meal by weight and by jar, straw', () => {
    expect(layersOf(plan, dressing).trenches[0]).toEqual({
      number: 1,
      areaCm2: 7200,
      manureBottomG: 10_800,
      manureBottomMl: 27_000,
      manureTopG: 3600,
      manureTopMl: 9000,
      loads: 36 / 85,
      meals: [{ key: 'hoof-and-horn', into: 'bottom', massG: 72, jars: 72 / 230 }],
      strawG: 360,
      barrow: { number: 1, leftMl: 49_000 },
    });
  });

  test('the barrow one is on, and what is left in it', () => {
    expect(layersOf(plan, dressing).trenches.map(({ barrow }) => [barrow.number, barrow.leftMl / 1000])).toEqual([
      [1, 49],
      [1, 13],
      [2, 62],
      [2, 26],
      [3, 75],
      [3, 39],
    ]);
  });

  test('in all, whole loads rounded up once', () => {
    const { total } = layersOf(plan, dressing);
    expect(total).toMatchObject({ manureBottomG: 64_800, manureTopG: 21_600, wholeLoads: 3, strawG: 2160 });
    expect(total.loads).toBeCloseTo(216 / 85, 12);
  });

  test('a barrow emptied to the last litre is not followed by another', () => {
    // 4.32 m² at 20 kg/m² and 400 g/L are 216 L: two barrows of 108 L.
    const { trenches, total } = layersOf(plan, { ...dressing, manure: { ...manure, barrowLitres: 108 } });
    expect(total.wholeLoads).toBe(2);
    expect(trenches[2]?.barrow).toEqual({ number: 1, leftMl: 0 });
  });

  test('a tenth of a millilitre over is one load more, as it is in the need', () => {
    // 20.0001 m² at 1 kg/m² and 1,000 g/L are 20,000.1 mL.
    const bed = { widthCm: 489, lengthCm: 409 };
    const justOver = { densityGPerL: 1000, bottomGPerM2: 600, topGPerM2: 400, barrowLitres: 20 };
    const { total } = layersOf(trenchPlan({ ...order, bed }), { ...dressing, manure: justOver });
    expect([total.wholeLoads, total.manureBottomMl + total.manureTopMl]).toEqual([2, 20_001]);
  });

  test('a jar that was never weighed leaves the measure open', () => {
    const { total } = layersOf(plan, { ...dressing, meals: [{ ...horn, jarG: null }] });
    expect(total.meals).toEqual([{ key: 'hoof-and-horn', into: 'bottom', massG: 432, jars: null }]);
  });

  test('ground that takes nothing takes nothing', () => {
    const { total } = layersOf(plan, { manure: null, meals: [], strawGPerM2: 0 });
    expect(total).toMatchObject({ manureBottomMl: 0, loads: 0, meals: [], strawG: 0, wholeLoads: 0 });
  });
});

describe('what is refused', () => {
  test.each<[string, Partial<Dressing>]>([
    ['manure of no rate', { manure: { ...manure, bottomGPerM2: 0, topGPerM2: 0 } }],
    ['a negative rate', { manure: { ...manure, bottomGPerM2: -1 } }],
    ['a rate that is no number', { manure: { ...manure, topGPerM2: Number.NaN } }],
    ['manure without density', { manure: { ...manure, densityGPerL: 0 } }],
    ['an empty barrow', { manure: { ...manure, barrowLitres: 0 } }],
    ['half a litre of barrow', { manure: { ...manure, barrowLitres: 0.5 } }],
    ['a meal of no rate', { meals: [{ ...horn, gPerM2: 0 }] }],
    ['a jar that weighs nothing', { meals: [{ ...horn, jarG: 0 }] }],
    ['less than no straw', { strawGPerM2: -1 }],
    ['endless straw', { strawGPerM2: Number.POSITIVE_INFINITY }],
  ])('%s', (_, change) => expect(() => layersOf(plan, { ...dressing, ...change })).toThrow(RangeError));

  test('anything for the bottom where nothing is opened', () => {
    const forked = trenchPlan({ ...order, method: 'forking' });
    const onTop = { ...dressing, manure: { ...manure, bottomGPerM2: 0 }, meals: [{ ...horn, into: 'top' as const }] };
    expect(layersOf(forked, onTop).total.manureTopG).toBe(21_600);
    expect(() => layersOf(forked, { ...onTop, manure })).toThrow(RangeError);
    expect(() => layersOf(forked, { ...onTop, meals: [horn] })).toThrow(RangeError);
  });
});

describe('what is used, and what the rest needs', () => {
  const layers = layersOf(plan, dressing);

  test('after two trenches', () => {
    expect(usedUpTo(layers, 2)).toMatchObject({
      areaCm2: 14_400,
      manureBottomG: 21_600,
      barrow: { number: 1, leftMl: 13_000 },
    });
    expect(restAfter(layers, 2)).toMatchObject({ manureBottomG: 43_200, atHandMl: 13_000, loadsToFetch: 2 });
  });

  test('before the first and after the last', () => {
    expect(usedUpTo(layers, 0)).toMatchObject({ areaCm2: 0, loads: 0, barrow: { number: 0, leftMl: 0 } });
    expect(restAfter(layers, 0)).toMatchObject({ atHandMl: 0, loadsToFetch: 3 });
    expect(restAfter(layers, 6)).toMatchObject({ areaCm2: 0, manureTopG: 0, atHandMl: 39_000, loadsToFetch: 0 });
  });

  test.each([-1, 7, 0.5, Number.NaN])('%s trenches of six are refused', (done) => {
    expect(() => usedUpTo(layers, done)).toThrow(RangeError);
    expect(() => restAfter(layers, done)).toThrow(RangeError);
  });
});

const wholes = ({ areaCm2, manureBottomG, manureBottomMl, manureTopG, manureTopMl, meals, strawG }: Amounts) => [
  ...[areaCm2, manureBottomG, manureBottomMl, manureTopG, manureTopMl, strawG],
  ...meals.map(({ massG }) => massG),
];
const added = (rows: readonly (readonly number[])[]) =>
  rows.reduce((sums, row) => sums.map((sum, at) => sum + (row[at] ?? Number.NaN)));

describe('whatever the bed and the dressing', () => {
  test('the trenches sum exactly to the total, and the total is area times rate', () => {
    fc.assert(
      fc.property(anyDressedOrder, ({ order: any, dressing: laid }) => {
        const { trenches, total } = layersOf(trenchPlan(any), laid);
        const areaM2 = (any.bed.widthCm * any.bed.lengthCm) / 10_000;
        expect(added(trenches.map(wholes))).toEqual(wholes(total));
        expect(Math.abs(total.strawG - areaM2 * laid.strawGPerM2)).toBeLessThanOrEqual(0.5 + 1e-6);
        laid.meals.forEach(({ gPerM2 }, at) =>
          expect(Math.abs((total.meals[at]?.massG ?? Number.NaN) - areaM2 * gPerM2)).toBeLessThanOrEqual(0.5 + 1e-6),
        );
        for (const trench of trenches)
          for (const value of wholes(trench)) expect(Number.isSafeInteger(value) && value >= 0).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  test('used and rest are the whole after every trench, and the barrow holds what was not laid', () => {
    fc.assert(
      fc.property(anyDressedOrder, fc.nat(1000), ({ order: any, dressing: laid }, some) => {
        const layers = layersOf(trenchPlan(any), laid);
        const done = some % (layers.trenches.length + 1);
        const [used, rest] = [usedUpTo(layers, done), restAfter(layers, done)];
        expect(added([wholes(used), wholes(rest)])).toEqual(wholes(layers.total));
        const barrowMl = 1000 * (laid.manure?.barrowLitres ?? 0);
        const laidMl = used.manureBottomMl + used.manureTopMl;
        expect(used.barrow.number * barrowMl - used.barrow.leftMl).toBe(laidMl);
        expect(used.barrow.leftMl).toBeLessThan(Math.max(1, barrowMl));
        expect(used.barrow.number + rest.loadsToFetch).toBe(layers.total.wholeLoads);
      }),
    );
  });

  test('the loads and the weight are those of the need of the same ground', () => {
    fc.assert(
      fc.property(anyDressedOrder, ({ order: any, dressing: laid }) => {
        if (!laid.manure) return;
        const { total } = layersOf(trenchPlan(any), laid);
        const { bottomGPerM2, topGPerM2, densityGPerL, barrowLitres } = laid.manure;
        const need = needOf([{ id: 'a', dueCm2: any.bed.widthCm * any.bed.lengthCm, unloggedCm2: 0 }], {
          rateGPerM2: bottomGPerM2 + topGPerM2,
          densityGPerL,
          barrowLitres,
          intervalYears: 1,
        });
        expect(total.wholeLoads).toBe(need.loads);
        expect(total.manureBottomG + total.manureTopG).toBe(need.grounds[0]?.massG);
      }),
    );
  });

  test('a bed turned by a quarter takes the same, trench by trench, and nothing given is changed', () => {
    fc.assert(
      fc.property(anyDressedOrder, (any) => {
        const before = structuredClone(any);
        expect(layersOf(trenchPlan(turned(any.order)), any.dressing)).toEqual(
          layersOf(trenchPlan(any.order), any.dressing),
        );
        expect(any).toEqual(before);
      }),
    );
  });
});
