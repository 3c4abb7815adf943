import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyOrder, anySoil, turned } from '@/tests/fixtures/trench-orders';
import { type SoilFigures, soilOf } from '../catalogue/soils';
import { carryingOf, lessCarrying } from './carrying';
import { type TrenchOrder, trenchPlan } from './trench-plan';

const order: TrenchOrder = {
  bed: { widthCm: 120, lengthCm: 360 },
  across: 'width',
  trenchWidthCm: 60,
  spitDepthCm: 25,
  method: 'double-digging',
  layout: 'straight-through',
};
const soil: SoilFigures = {
  swellLeastPercent: null,
  swellMostPercent: null,
  inPlaceLeastGPerL: 1000,
  inPlaceMostGPerL: 1500,
};

describe('carrying', () => {
  // A trench's top spit is 120 × 60 × 25 cm: 180 kg at the least.
  test('straight through: 180 kg over 3 m, and five throws of 180 kg over 0.6 m', () => {
    expect(carryingOf(trenchPlan(order), soil)).toEqual({
      layout: 'straight-through',
      metreKg: { opening: { least: 540, most: 810 }, turn: { least: 0, most: 0 }, throw: { least: 540, most: 810 } },
      carriedMetreKg: { least: 540, most: 810 },
      carriedLitreMetres: 540,
    });
  });

  test('two halves: 90 kg across 0.6 m twice, and ten throws of 90 kg over 0.6 m', () => {
    expect(carryingOf(trenchPlan({ ...order, layout: 'two-halves' }), soil)).toEqual({
      layout: 'two-halves',
      metreKg: { opening: { least: 54, most: 81 }, turn: { least: 54, most: 81 }, throw: { least: 540, most: 810 } },
      carriedMetreKg: { least: 108, most: 162 },
      carriedLitreMetres: 108,
    });
  });

  test('a long narrow bed is less carrying in halves, a short broad one straight through', () => {
    expect(lessCarrying(order, soil).less).toBe('two-halves');
    expect(lessCarrying({ ...order, bed: { widthCm: 900, lengthCm: 120 } }, soil).less).toBe('straight-through');
    // 3 m to the far end, and 3 m across each way for half of it: a bed of 6 m × 3.60 m.
    expect(lessCarrying({ ...order, bed: { widthCm: 600, lengthCm: 360 } }, soil).less).toBe('equal');
  });

  test('which is less is known where the weight is not', () => {
    const peaty = soilOf('peaty') ?? soil;
    const { less, straightThrough, twoHalves } = lessCarrying(order, peaty);
    expect([less, straightThrough.carriedMetreKg, twoHalves.carriedMetreKg]).toEqual(['two-halves', null, null]);
  });

  test('where nothing is opened nothing is carried', () => {
    const { less, straightThrough } = lessCarrying({ ...order, method: 'mulch' }, soil);
    expect([less, straightThrough.carriedMetreKg, straightThrough.metreKg.throw]).toEqual([
      'equal',
      { least: 0, most: 0 },
      { least: 0, most: 0 },
    ]);
  });
});

describe('whatever the bed', () => {
  test('both layouts throw the same where no trench is adjusted and the halves are equal', () => {
    fc.assert(
      fc.property(anyOrder(), anySoil, fc.integer({ min: 1, max: 12 }), (any, ofSoil, count) => {
        const runCm = any.trenchWidthCm * count;
        const even = { widthCm: 2 * any.bed.widthCm, lengthCm: 2 * any.bed.lengthCm };
        const bed = any.across === 'width' ? { ...even, lengthCm: runCm } : { ...even, widthCm: runCm };
        const { straightThrough, twoHalves } = lessCarrying({ ...any, bed }, ofSoil);
        // Beyond the carried parts each is rounded as a running total: a metre-kilogram either way.
        const [one, other] = [straightThrough.metreKg.throw, twoHalves.metreKg.throw];
        expect(one === null).toBe(other === null);
        expect(Math.abs((one?.least ?? 0) - (other?.least ?? 0))).toBeLessThanOrEqual(1);
        expect(Math.abs((one?.most ?? 0) - (other?.most ?? 0))).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('the slow sum over every spit agrees, and a turned bed carries the same', () => {
    fc.assert(
      fc.property(anyOrder(['double-digging', 'single-digging']), (any) => {
        const plan = trenchPlan(any);
        const middle = (number: number) => {
          const { xCm, yCm, widthCm, lengthCm } = plan.trenches[number - 1]?.footprint ?? expect.fail();
          return [xCm + widthCm / 2, yCm + lengthCm / 2] as const;
        };
        const [from, to] = [middle(1), middle(plan.trenches.length)];
        const kg = ((plan.trenches[0]?.lengthCm ?? 0) * any.trenchWidthCm * any.spitDepthCm) / 1000;
        const opening = (kg * Math.hypot(from[0] - to[0], from[1] - to[1])) / 100;
        const { metreKg } = carryingOf(plan, soil);
        if (plan.trenches.length > (any.layout === 'two-halves' ? 2 : 1))
          expect(Math.abs((metreKg.opening?.least ?? Number.NaN) - opening)).toBeLessThanOrEqual(0.5 + 1e-6);
        expect(carryingOf(trenchPlan(turned(any)), soil)).toEqual(carryingOf(plan, soil));
      }),
    );
  });

  test('more weight is never less carrying, and every number is a number', () => {
    fc.assert(
      fc.property(anyOrder(), anySoil, (any, ofSoil) => {
        const { metreKg, carriedMetreKg, carriedLitreMetres } = carryingOf(trenchPlan(any), ofSoil);
        expect(Number.isFinite(carriedLitreMetres)).toBe(true);
        for (const span of [...Object.values(metreKg), carriedMetreKg])
          if (span)
            expect(Number.isSafeInteger(span.least) && span.least >= 0 && span.least <= span.most + 1).toBe(true);
      }),
    );
  });
});
