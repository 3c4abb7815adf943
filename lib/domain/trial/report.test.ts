import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pairedInterval } from '../statistics/intervals';
import { type Pair, trialReport } from './report';

const pair = (id: string, a: number | null, b: number | null, holding = id): Pair => ({ id, holding, a, b });
const three = [pair('1', 3, 1), pair('2', 5, 2), pair('3', 4, 3)];

describe('a report', () => {
  test('of three plots', () => {
    const { told, ...counts } = trialReport(three);
    expect(counts).toEqual({ whole: 3, half: 0, none: 0, holders: 3 });
    expect(told).toMatchObject({ meanA: 4, meanB: 2, difference: 2, verdict: 'cannot-tell' });
    expect(told?.interval?.low).toBeCloseTo(-0.484, 3);
    expect(told?.interval?.high).toBeCloseTo(4.484, 3);
    expect(told?.hiddenBelow).toBeCloseTo(2.484, 3);
    expect(told?.pairs.map(({ difference }) => difference)).toEqual([2, 3, 1]);
  });
  test('leaves plots with one result out, and counts them', () => {
    const some = [...three, pair('4', 9, null), pair('5', null, 0), pair('6', null, null)];
    expect(trialReport(some)).toEqual({ ...trialReport(three), half: 2, none: 1 });
  });
  test('nothing is told of two holders, with however many plots', () => {
    const same = [pair('1', 3, 1), pair('2', 5, 2), pair('3', 4, 3, '1'), pair('4', 4, 3, '2')];
    expect(trialReport(same)).toEqual({ whole: 4, half: 0, none: 0, holders: 2, told: null });
    expect(trialReport([])).toEqual({ whole: 0, half: 0, none: 0, holders: 0, told: null });
  });
  test('a result of nothing is a result', () =>
    expect(trialReport([...three.slice(0, 2), pair('3', 0, 0)]).whole).toBe(3));
  test('differences that are all alike have no interval, and nobody wins', () =>
    expect(trialReport([pair('1', 3, 1), pair('2', 5, 3), pair('3', 4, 2)]).told).toMatchObject({
      interval: null,
      hiddenBelow: null,
      difference: 2,
      verdict: 'cannot-tell',
    }));
  test('more or less is said where the interval leaves nothing out', () => {
    const more = [pair('1', 3, 1), pair('2', 5, 3), pair('3', 4, 1.9), pair('4', 6, 4)];
    expect(trialReport(more).told?.verdict).toBe('likely-more');
    expect(trialReport(more.map(({ a, b, ...one }) => ({ ...one, a: b, b: a }))).told?.verdict).toBe('likely-less');
  });
  test('a value that is none is refused', () =>
    expect(() => trialReport([...three, pair('4', Number.NaN, 1)])).toThrow(RangeError));

  const gave = fc.integer({ min: 0, max: 9000 });
  const pairs = fc
    .array(fc.tuple(gave, gave), { minLength: 3, maxLength: 12 })
    .map((values) => values.map(([a, b], at) => pair(String(at), a, b)));

  test('is the paired interval of the whole pairs, in whatever order, turned where A and B are', () =>
    fc.assert(
      fc.property(pairs, (all) => {
        const { told } = trialReport(all);
        const differences = new Set(all.map(({ a, b }) => (a ?? 0) - (b ?? 0)));
        if (differences.size === 1) return expect(told?.interval).toBeNull();
        const interval = pairedInterval(
          all.map(({ a, b }) => [a ?? 0, b ?? 0] as const),
          0.95,
        );
        expect(told?.interval?.low).toBeCloseTo(interval.low, 6);
        expect(told?.interval?.high).toBeCloseTo(interval.high, 6);
        expect(trialReport(all.toReversed()).told?.interval?.low).toBeCloseTo(interval.low, 6);
        const turned = trialReport(all.map(({ a, b, ...one }) => ({ ...one, a: b, b: a })));
        expect(turned.told?.interval?.low).toBeCloseTo(-interval.high, 6);
      }),
    ));
});
