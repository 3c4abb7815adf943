import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyDressedOrder, anySoil, diggingOf, knownSoil, turned } from '@/tests/fixtures/trench-orders';
import { columnOf, drawnSwellPercent, heightOf } from './column';
import type { Digging } from './digging';
import type { Drawing, Part, PartKind } from './drawing';
import { stageAtTrench, stagesAtTrench, stagesOf } from './stages';
import { trenchPlan } from './trench-plan';

const kindsOf = ({ parts }: Drawing, trench: number | null) =>
  parts.filter((part) => part.trench === trench).map(({ kind }) => kind);
const areaOf = ({ widthCm, heightCm }: Part) => widthCm * heightCm;

describe('the side view', () => {
  const sections = stagesOf(diggingOf()).map(({ section }) => section);
  const [, opened, forked, turnedOver] = sections;
  const partsOf = (drawing: Drawing | undefined, trench: number) =>
    drawing?.parts.filter((part) => part.trench === trench).map(({ kind, yCm, heightCm }) => [kind, yCm, heightCm]);

  // The heap, the highest of all, stands 31.25 cm: the ground lies 32 cm down the drawing. A spit is 25 cm.
  test('the first trench opened, forked with its manure, and filled', () => {
    const surfaceCm = 32;
    expect(opened?.surfaceCm).toBe(surfaceCm);
    expect(partsOf(opened, 1)).toEqual([
      ['subsoil', surfaceCm + 25, 25],
      ['open', surfaceCm, 25],
    ]);
    expect(kindsOf(forked ?? expect.fail(), 1)).toEqual(['forked', 'manure-bottom', 'open']);
    expect(kindsOf(turnedOver ?? expect.fail(), 1)).toEqual([
      'forked',
      'manure-bottom',
      'straw',
      'topsoil',
      'manure-top',
      'topsoil',
    ]);
    expect(kindsOf(turnedOver ?? expect.fail(), 2)).toEqual(['subsoil', 'open']);
  });

  test('left high by the swell and what was laid in, and the finish in its top', () => {
    // 50 cm × 25 % = 12.5; 12 kg/m² at 400 g/L = 3; straw 700 g/m² at 70 g/L = 1.
    const rises = sections.flatMap(({ measures }) => measures.filter(({ code }) => code === 'rise'));
    expect(rises.map(({ lengthCm }) => lengthCm)).toEqual([16.5]);
    const folds = sections.at(-1)?.parts.filter(({ kind }) => kind === 'folded') ?? [];
    expect(folds).toHaveLength(5);
    for (const { heightCm } of folds) expect(heightCm).toBe(8);
  });

  test('five trenches at most, the one in hand among them, with the heap where it lies beside them', () => {
    const long = diggingOf('double-digging', 'straight-through', 1200);
    const seen = (drawing: Drawing) => [...new Set(drawing.parts.map(({ trench }) => trench))];
    expect(seen(stageAtTrench(long, 11).section)).toEqual([8, 9, 10, 11, 12]);
    const [, last] = stagesAtTrench(long, 20);
    expect(seen(last?.section ?? expect.fail())).toEqual([16, 17, 18, 19, 20, null]);
    expect(stagesAtTrench(long, 20)[0]?.section.parts.at(-1)?.kind).toBe('heap');
  });

  test('up the second half the heap lies on the other side', () => {
    const back = diggingOf('double-digging', 'two-halves');
    const { section } = stagesAtTrench(back, 12)[0] ?? expect.fail();
    const heap = section.parts.find(({ kind }) => kind === 'heap') ?? expect.fail();
    const last = section.parts.find(({ trench }) => trench === 12) ?? expect.fail();
    expect(heap.xCm + heap.widthCm).toBe(last.xCm);
  });

  test('what nobody knows is not drawn as a swell, and its rise not written', () => {
    const peaty = { ...diggingOf(), soil: knownSoil('peaty') };
    expect(drawnSwellPercent(peaty.soil)).toBeNull();
    const measures = stagesOf(peaty).flatMap(({ section }) => section.measures.map(({ code }) => code));
    expect(measures).not.toContain('rise');
    expect(heightOf(columnOf(peaty, 'undug'))).toBe(51);
  });
});

describe('the view from above', () => {
  test('the heap waits beyond the far end, or beside the last trench of two halves', () => {
    const heapOf = (of: Digging) => stagesOf(of)[1]?.plan.parts.find(({ kind }) => kind === 'heap');
    expect(heapOf(diggingOf())).toMatchObject({ xCm: 0, yCm: 360, widthCm: 120, heightCm: 60 });
    expect(heapOf(diggingOf('double-digging', 'two-halves'))).toMatchObject({
      xCm: 60,
      yCm: 0,
      widthCm: 60,
      heightCm: 60,
    });
    expect(stagesOf(diggingOf('double-digging', 'two-halves'))[0]?.plan).toMatchObject({ widthCm: 120, heightCm: 420 });
    expect(heapOf(diggingOf('mulch'))).toBeUndefined();
  });

  test('soil on its way: out to the heap, one back, round, and from the heap into the last', () => {
    const arrows = stagesOf(diggingOf('double-digging', 'two-halves')).flatMap(({ code, plan }) =>
      plan.arrows.map((arrow) => `${code}: ${arrow.code}`),
    );
    expect(arrows).toEqual(['open-first: carry', 'turn-next: throw', 'turn-round: turn', 'fill-last: throw']);
  });
});

const any = fc.tuple(anyDressedOrder, anySoil, fc.option(fc.integer({ min: 1, max: 2 }))).map(
  ([{ order, dressing }, soil, springFinishCm]): Digging => ({
    plan: trenchPlan(order),
    dressing,
    soil,
    springFinishCm,
  }),
);
const kindsIn = (drawing: Drawing) => drawing.parts.map(({ kind }) => kind);

describe('whatever the work', () => {
  test('every rectangle lies within its drawing, and every number is a number', () => {
    fc.assert(
      fc.property(any, (one) => {
        for (const { section, plan } of stagesOf(one))
          for (const { parts, widthCm, heightCm, arrows, measures } of [section, plan]) {
            expect(widthCm > 0 && heightCm > 0).toBe(true);
            for (const part of parts) {
              expect(part.widthCm > 0 && part.heightCm > 0 && part.xCm >= 0 && part.yCm >= -1e-9).toBe(true);
              expect(part.xCm + part.widthCm).toBeLessThanOrEqual(widthCm + 1e-6);
              expect(part.yCm + part.heightCm).toBeLessThanOrEqual(heightCm + 1e-6);
            }
            for (const { from, to } of [...arrows, ...measures])
              expect([from.xCm, from.yCm, to.xCm, to.yCm].every(Number.isFinite)).toBe(true);
          }
      }),
      { numRuns: 50 },
    );
  });

  test('seen from above the trenches fill the bed at every stage', () => {
    fc.assert(
      fc.property(any, (one) => {
        const { widthCm, lengthCm } = one.plan.order.bed;
        for (const { plan } of stagesOf(one)) {
          const trenches = plan.parts.filter(({ trench }) => trench !== null);
          expect(trenches.reduce((sum, part) => sum + areaOf(part), 0)).toBe(widthCm * lengthCm);
        }
      }),
      { numRuns: 50 },
    );
  });

  test('soil out, swollen, is soil back: no drawing makes or loses a spit', () => {
    fc.assert(
      fc.property(any, (one) => {
        const loose = 1 + (drawnSwellPercent(one.soil) ?? 0) / 100;
        const spits = (kinds: readonly PartKind[]) => (state: 'undug' | 'opened' | 'filled') =>
          heightOf(columnOf(one, state).filter(({ kind }) => kinds.includes(kind)));
        const [firm, dug] = [spits(['undug', 'subsoil']), spits(['topsoil', 'forked'])];
        const loosened = firm('undug') - firm('filled');
        expect(dug('filled')).toBeCloseTo(loosened * loose, 6);
        const heap = stagesOf(one)[1]?.section.parts.find(({ kind }) => kind === 'heap');
        const outCm2 = (firm('undug') - firm('opened')) * (one.plan.trenches[0]?.widthCm ?? 0);
        if (heap) expect(Math.abs(areaOf(heap) - outCm2 * loose)).toBeLessThanOrEqual(0.06 * heap.widthCm);
      }),
    );
  });

  test('what lies on each trench is the same however the bed is turned', () => {
    fc.assert(
      fc.property(any, (one) => {
        const other = { ...one, plan: trenchPlan(turned(one.plan.order)) };
        const [stages, others] = [stagesOf(one), stagesOf(other)];
        expect(others.map(({ section }) => section)).toEqual(stages.map(({ section }) => section));
        expect(others.map(({ plan }) => kindsIn(plan))).toEqual(stages.map(({ plan }) => kindsIn(plan)));
      }),
      { numRuns: 50 },
    );
  });

  test('nothing given is changed', () => {
    fc.assert(
      fc.property(any, (one) => {
        const before = structuredClone(one);
        stagesOf(one);
        expect(one).toEqual(before);
      }),
      { numRuns: 30 },
    );
  });
});
