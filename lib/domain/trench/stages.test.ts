import { describe, expect, test } from 'vitest';
import { deepDressing, diggingOf, topDressing } from '@/tests/fixtures/trench-orders';
import type { Digging } from './digging';
import type { Drawing } from './drawing';
import { stageAtTrench, stagesAtTrench, stagesOf } from './stages';

const codes = (of: Digging) => stagesOf(of).map(({ code, trench }) => (trench === null ? code : `${code} ${trench}`));
const kindsOf = ({ parts }: Drawing, trench: number | null) =>
  parts.filter((part) => part.trench === trench).map(({ kind }) => kind);

describe('the stages of the work', () => {
  test('double digging straight through', () =>
    expect(codes(diggingOf())).toEqual([
      'mark-out',
      'open-first 1',
      'fork-bottom 1',
      'turn-next 1',
      'fork-bottom 2',
      'fill-last 6',
      'left-high',
      'spring-finish',
    ]));

  test('in two halves there is a turn at the far end', () =>
    expect(codes(diggingOf('double-digging', 'two-halves'))).toEqual([
      'mark-out',
      'open-first 1',
      'fork-bottom 1',
      'turn-next 1',
      'fork-bottom 2',
      'turn-round 6',
      'fill-last 12',
      'left-high',
      'spring-finish',
    ]));

  test('a bed of one trench, and one of a trench in each half', () => {
    expect(codes(diggingOf('double-digging', 'straight-through', 60))).toEqual([
      'mark-out',
      'open-first 1',
      'fork-bottom 1',
      'fill-last 1',
      'left-high',
      'spring-finish',
    ]);
    expect(codes(diggingOf('double-digging', 'two-halves', 60)).slice(3, 5)).toEqual(['turn-round 1', 'fill-last 2']);
  });

  test('other methods have fewer', () => {
    expect(codes({ ...diggingOf('single-digging'), dressing: topDressing })).toEqual([
      'mark-out',
      'open-first 1',
      'turn-next 1',
      'turn-next 2',
      'fill-last 6',
      'left-high',
      'spring-finish',
    ]);
    expect(codes(diggingOf('single-digging'))).toContain('dress-bottom 1');
    expect(codes(diggingOf('forking'))).toEqual([
      'mark-out',
      'spread-strip 1',
      'fork-strip 1',
      'left-high',
      'spring-finish',
    ]);
    expect(codes({ ...diggingOf('forking'), dressing: { manure: null, meals: [], strawGPerM2: 0 } })).not.toContain(
      'spread-strip 1',
    );
    expect(codes(diggingOf('mulch'))).toEqual(['mark-out', 'lay-mulch 1', 'laid']);
  });

  test('no finish, no stage of it', () =>
    expect(codes({ ...diggingOf(), springFinishCm: null }).at(-1)).toBe('left-high'));

  test.each([0, -1, 51, 0.5, Number.NaN])('a finish of %s cm in spits of 25 is refused', (springFinishCm) =>
    expect(() => stagesOf({ ...diggingOf(), springFinishCm })).toThrow(RangeError),
  );

  test('a bottom that is never opened is refused', () =>
    expect(() => stagesOf({ ...diggingOf('mulch'), dressing: deepDressing })).toThrow(RangeError));
});

describe('the steps of one trench', () => {
  const steps = (number: number, of = diggingOf()) => stagesAtTrench(of, number).map(({ code }) => code);

  test('the first, another, and the last', () => {
    expect([steps(1), steps(2), steps(6)]).toEqual([
      ['open-first', 'fork-bottom', 'turn-next'],
      ['fork-bottom', 'turn-next'],
      ['fork-bottom', 'fill-last'],
    ]);
    expect(steps(6, diggingOf('double-digging', 'two-halves'))).toEqual(['fork-bottom', 'turn-round']);
  });

  test('how it looks now: marked out, or the trench in hand open and the one before it filled', () => {
    expect(stageAtTrench(diggingOf(), 1).code).toBe('mark-out');
    const { code, plan } = stageAtTrench(diggingOf(), 3);
    expect([code, kindsOf(plan, 2), kindsOf(plan, 3), kindsOf(plan, 4)]).toEqual([
      'turn-next',
      ['topsoil'],
      ['open'],
      ['straw'],
    ]);
    expect(stageAtTrench(diggingOf(), 7)).toEqual(stagesOf(diggingOf()).at(-2));
    expect(stageAtTrench(diggingOf('mulch'), 7).code).toBe('laid');
  });

  test.each([0, 7, 1.5, Number.NaN])('trench %s of six is refused', (number) => {
    expect(() => stagesAtTrench(diggingOf(), number)).toThrow(RangeError);
    expect(() => stageAtTrench(diggingOf(), number === 7 ? 8 : number)).toThrow(RangeError);
  });
});
