import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyOrder, anySoil, turned } from '@/tests/fixtures/trench-orders';
import type { SoilFigures } from '../catalogue/soils';
import { openingBarrows, soilMoved } from './soil-moved';
import { soilMoves } from './soil-moves';
import { type TrenchOrder, trenchPlan } from './trench-plan';

const order: TrenchOrder = {
  bed: { widthCm: 120, lengthCm: 350 },
  across: 'width',
  trenchWidthCm: 60,
  spitDepthCm: 25,
  method: 'double-digging',
  layout: 'straight-through',
};
const soil: SoilFigures = {
  swellLeastPercent: 15,
  swellMostPercent: 35,
  inPlaceLeastGPerL: 1000,
  inPlaceMostGPerL: 1600,
};
const unknown: SoilFigures = {
  swellLeastPercent: null,
  swellMostPercent: null,
  inPlaceLeastGPerL: null,
  inPlaceMostGPerL: null,
};
const plan = (given: Partial<TrenchOrder> = {}) => trenchPlan({ ...order, ...given });

describe('where each top spit goes', () => {
  test('straight through: the first to the far end, each other one back', () => {
    const moves = soilMoves(plan({ bed: { widthCm: 120, lengthCm: 180 } }));
    expect(moves).toEqual([
      { from: 1, to: 3, kind: 'opening', volumeMl: 180_000, distanceCm: 120 },
      { from: 2, to: 1, kind: 'throw', volumeMl: 180_000, distanceCm: 60 },
      { from: 3, to: 2, kind: 'throw', volumeMl: 180_000, distanceCm: 60 },
    ]);
  });

  test('two halves: the first across, and one turn at the far end', () => {
    const moves = soilMoves(plan({ bed: { widthCm: 120, lengthCm: 120 }, layout: 'two-halves' }));
    expect(moves.map(({ from, to, kind, distanceCm }) => [from, to, kind, distanceCm])).toEqual([
      [1, 4, 'opening', 60],
      [2, 1, 'throw', 60],
      [3, 2, 'turn', 60],
      [4, 3, 'throw', 60],
    ]);
  });

  test('one trench is filled with its own', () =>
    expect(soilMoves(plan({ bed: { widthCm: 120, lengthCm: 60 } }))).toEqual([
      { from: 1, to: 1, kind: 'opening', volumeMl: 180_000, distanceCm: 0 },
    ]));

  test('forking and mulch throw nothing', () => {
    expect(soilMoves(plan({ method: 'forking' }))).toEqual([]);
    expect(soilMoves(plan({ method: 'mulch' }))).toEqual([]);
  });
});

describe('the soil that is moved', () => {
  test('a trench of 120 × 60 × 25 cm, and a last of 50', () => {
    const { trenches, total } = soilMoved(plan(), soil);
    expect(trenches[0]).toEqual({
      number: 1,
      openedMl: 180_000,
      forkedMl: 180_000,
      massG: { least: 180_000, most: 288_000 },
      looseMl: { least: 207_000, most: 243_000 },
    });
    expect(trenches.at(-1)?.openedMl).toBe(150_000);
    expect(total.openedMl).toBe(1_050_000);
    expect(total.massG).toEqual({ least: 1_050_000, most: 1_680_000 });
  });

  test.each([
    ['double-digging', 1_050_000, 1_050_000],
    ['single-digging', 1_050_000, 0],
    ['forking', 0, 1_050_000],
    ['mulch', 0, 0],
  ] as const)('%s opens %s mL and loosens %s mL where it lies', (method, openedMl, forkedMl) =>
    expect(soilMoved(plan({ method }), soil).total).toMatchObject({ openedMl, forkedMl }),
  );

  test('a soil of which nothing is known moves the same volume, of no known weight or swell', () => {
    const { total } = soilMoved(plan(), unknown);
    expect(total).toEqual({ openedMl: 1_050_000, forkedMl: 1_050_000, massG: null, looseMl: null });
    expect(openingBarrows(soilMoved(plan(), unknown), 85)).toBeNull();
  });

  test('barrows of the first trench, rounded up', () => {
    expect(openingBarrows(soilMoved(plan(), soil), 85)).toEqual({ least: 3, most: 3 });
    expect(openingBarrows(soilMoved(plan(), soil), 207)).toEqual({ least: 1, most: 2 });
    expect(openingBarrows(soilMoved(plan({ method: 'mulch' }), soil), 85)).toEqual({ least: 0, most: 0 });
    for (const barrow of [0, -85, 0.5, Number.NaN])
      expect(() => openingBarrows(soilMoved(plan(), soil), barrow)).toThrow(RangeError);
  });

  test('a soil whose range goes down, or below nothing, is refused', () => {
    expect(() => soilMoved(plan(), { ...soil, swellLeastPercent: 36 })).toThrow(RangeError);
    expect(() => soilMoved(plan(), { ...soil, inPlaceLeastGPerL: -1 })).toThrow(RangeError);
    expect(() => soilMoved(plan(), { ...soil, inPlaceMostGPerL: Number.NaN })).toThrow(RangeError);
  });
});

const digging = anyOrder(['double-digging', 'single-digging']);

describe('whatever the bed', () => {
  test('every trench is left once and filled once: soil out × swell is soil back', () => {
    fc.assert(
      fc.property(digging, anySoil, (any, ofSoil) => {
        const one = trenchPlan(any);
        const moves = soilMoves(one);
        const { trenches, total } = soilMoved(one, ofSoil);
        const numbers = one.trenches.map(({ number }) => number);
        expect(moves.map(({ from }) => from)).toEqual(numbers);
        expect(moves.map(({ to }) => to).toSorted((a, b) => a - b)).toEqual(numbers);
        expect(moves.map(({ volumeMl }) => volumeMl)).toEqual(trenches.map(({ openedMl }) => openedMl));
        expect(total.looseMl === null).toBe(ofSoil.swellLeastPercent === null);
        if (ofSoil.swellLeastPercent === null) return;
        // Laid back trench by trench, by where each spit went.
        const back = moves.reduce((sum, { from }) => sum + (trenches[from - 1]?.looseMl?.least ?? Number.NaN), 0);
        expect(back).toBe(Math.round((total.openedMl * (100 + ofSoil.swellLeastPercent)) / 100));
        expect(back).toBe(total.looseMl?.least);
      }),
    );
  });

  test('both layouts move the same soil, as does the bed turned by a quarter', () => {
    fc.assert(
      fc.property(anyOrder(), anySoil, (any, ofSoil) => {
        const total = (of: TrenchOrder) => soilMoved(trenchPlan(of), ofSoil).total;
        expect(total({ ...any, layout: 'straight-through' })).toEqual(total({ ...any, layout: 'two-halves' }));
        expect(total(turned(any))).toEqual(total(any));
      }),
    );
  });

  test('it is the bed’s area times the depth, and every number is a number', () => {
    fc.assert(
      fc.property(digging, anySoil, (any, ofSoil) => {
        const { trenches, total } = soilMoved(trenchPlan(any), ofSoil);
        expect(total.openedMl).toBe(any.bed.widthCm * any.bed.lengthCm * any.spitDepthCm);
        for (const { openedMl, forkedMl, massG, looseMl } of trenches)
          for (const value of [openedMl, forkedMl, massG?.least, massG?.most, looseMl?.least, looseMl?.most])
            if (value !== undefined) expect(Number.isSafeInteger(value) && value >= 0).toBe(true);
      }),
      { numRuns: 50 },
    );
  });
});
