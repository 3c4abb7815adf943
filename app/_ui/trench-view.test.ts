import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diggingOf } from '@/tests/fixtures/trench-orders';
import { planOf } from '@/lib/domain/trench/plan-drawing';
import { sectionOf } from '@/lib/domain/trench/section-drawing';
import { arrowPath, numbersFit, viewOf, wordFits } from './trench-view';

const phone = { width: 350, height: 300, letter: 14 };
const filled = (hand: number) => ({ hand, phase: 'filled' as const });
const bed = diggingOf();
const trenchesIn = (parts: readonly { trench: number | null }[]) => [
  ...new Set(parts.flatMap(({ trench }) => trench ?? [])),
];

describe('a section', () => {
  test('shows the trench in hand with its neighbours, and all five where it is wanted', () => {
    const drawing = sectionOf(bed, filled(3));
    expect(trenchesIn(viewOf(drawing, phone, 3).parts)).toEqual([2, 3, 4]);
    expect(trenchesIn(viewOf(drawing, phone, null).parts)).toHaveLength(5);
  });

  test('shows the heap beside the last trench, and not where it lies far off', () => {
    const kinds = (hand: number) =>
      viewOf(sectionOf(bed, { hand, phase: 'dressed' }), phone, hand).parts.map(({ kind }) => kind);
    expect(kinds(6)).toContain('heap');
    expect(kinds(1)).not.toContain('heap');
  });

  test('shows an arrow whose both ends are shown', () => {
    expect(viewOf(sectionOf(bed, filled(3)), phone, 3).arrows).toHaveLength(1);
    const far = sectionOf(diggingOf('double-digging', 'straight-through', 180), { hand: 1, phase: 'opened' });
    expect(far.arrows).toHaveLength(1);
    expect(viewOf(far, phone, 1).arrows).toEqual([]);
  });

  test('leaves the sky out', () => {
    const low = viewOf(sectionOf(bed, { hand: 1, phase: 'untouched' }), phone, 1);
    const high = viewOf(sectionOf(bed, filled(1)), phone, 1);
    expect(low.box.heightCm).toBeLessThan(high.box.heightCm);
  });

  test('keeps its measures at its edges', () => {
    const { measures, parts } = viewOf(sectionOf(bed, filled(5)), phone, 5);
    const left = Math.min(...parts.map(({ xCm }) => xCm));
    expect(measures.find(({ code }) => code === 'spit-depth')?.from.xCm).toBe(left);
  });
});

describe('from above', () => {
  test('sizes are written outside the bed alone', () => {
    const codes = (hand: number) => viewOf(planOf(bed, filled(hand)), phone, null).measures.map(({ code }) => code);
    expect(codes(1)).toEqual(['trench-length', 'trench-width']);
    expect(codes(3)).toEqual(['trench-width']);
  });

  test('numbers are written where all of them fit', () => {
    expect(numbersFit(viewOf(planOf(bed, filled(1)), phone, null))).toBe(true);
    expect(numbersFit(viewOf(planOf(bed, filled(1)), { ...phone, height: 60 }, null))).toBe(false);
  });
});

test('nothing is stretched, and letters read the same size in any room', () =>
  fc.assert(
    fc.property(
      fc.integer({ min: 150, max: 900 }),
      fc.integer({ min: 80, max: 900 }),
      fc.integer({ min: 1, max: 6 }),
      (width, height, hand) => {
        const room = { width, height, letter: 12 };
        const { box, letterCm } = viewOf(sectionOf(bed, filled(hand)), room, hand);
        const scale = Math.min(width / box.widthCm, height / box.heightCm);
        expect(letterCm * scale).toBeCloseTo(12, 6);
      },
    ),
  ));

test('a word fits by its letters, a path bends over what it passes', () => {
  const part = { kind: 'heap' as const, trench: null, xCm: 0, yCm: 0, widthCm: 60, heightCm: 20 };
  expect(wordFits('soil of 1', part, 10)).toBe(true);
  expect(wordFits('soil of 1', part, 12)).toBe(false);
  expect(wordFits('1', { ...part, heightCm: 11 }, 10)).toBe(false);
  const along = { code: 'throw' as const, from: { xCm: 90, yCm: 30 }, to: { xCm: 30, yCm: 30 } };
  expect(arrowPath(along, 20)).toBe('M90 30Q60 10 30 30');
  expect(arrowPath({ ...along, to: { xCm: 90, yCm: 130 } }, 20)).toBe('M90 30Q110 80 90 130');
});
