import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '@/tests/fixtures/chance';
import { welchInterval } from '../statistics/intervals';
import { comparison, type Treated } from './comparison';

const treated = (key: string, ...values: number[]): Treated => ({
  key,
  observations: values.map((value, at) => ({ value, plot: `${key} ${at}` })),
});
const onPlots = (key: string, values: Readonly<Record<string, readonly number[]>>): Treated => ({
  key,
  observations: Object.entries(values).flatMap(([plot, all]) => all.map((value) => ({ value, plot }))),
});

describe('what few results allow to be said', () => {
  it('is nothing of fewer than three plots: the values alone', () => {
    const { groups, contrasts } = comparison([treated('dug', 2, 3), treated('not dug', 1, 1, 2, 3)]);
    expect(
      groups.map(({ values, count, mean, interval, estimate }) => [values, count, mean, interval, estimate]),
    ).toEqual([
      [[2, 3], 2, null, null, null],
      [[1, 1, 2, 3], 4, 1.75, expect.objectContaining({ estimate: 1.75, degrees: 3 }), 1.75],
    ]);
    expect(contrasts).toEqual([
      {
        first: 'dug',
        second: 'not dug',
        by: 'groups',
        counts: [2, 4],
        level: 0.95,
        interval: null,
        hiddenBelow: null,
        verdict: 'too-few',
      },
    ]);
  });

  it('is Welch’s interval on different plots, and more or less only where it leaves nothing out', () => {
    const verdict = (first: number[], second: number[]) =>
      comparison([treated('a', ...first), treated('b', ...second)]).contrasts[0]?.verdict;
    expect(verdict([3, 4, 5], [1, 2, 3])).toBe('cannot-tell');
    expect(verdict([6, 7, 8], [1, 2, 3])).toBe('likely-more');
    expect(verdict([1, 2, 3], [6, 7, 8])).toBe('likely-less');
    const [one] = comparison([treated('a', 3, 4, 5), treated('b', 1, 2, 3)]).contrasts;
    expect(one?.interval).toEqual(welchInterval([3, 4, 5], [1, 2, 3], 0.95));
    expect(one?.hiddenBelow).toBeCloseTo(2.267, 3);
  });

  it('takes the results of one plot as one', () => {
    const { groups } = comparison([onPlots('a', { p1: [1, 3], p2: [5], p3: [4, 4, 4] }), treated('b', 1, 2, 3)]);
    expect(groups[0]).toMatchObject({ values: [2, 5, 4], count: 3 });
  });

  it('compares plots that had both as pairs, and leaves out those that had one', () => {
    const dug = onPlots('dug', { p1: [11], p2: [21], p3: [31.5], p4: [99] });
    const not = onPlots('not dug', { p1: [10], p2: [20], p3: [30], p5: [1] });
    expect(comparison([dug, not]).contrasts[0]).toMatchObject({
      by: 'pairs',
      counts: [3, 3],
      interval: { degrees: 2, estimate: 3.5 / 3 },
      verdict: 'likely-more',
    });
    // By groups the plots' own differences would hide it.
    expect(welchInterval([11, 21, 31.5], [10, 20, 30], 0.95).low).toBeLessThan(0);
  });

  it('can’t be told where all results are alike', () => {
    expect(comparison([treated('a', 2, 2, 2), treated('b', 2, 2, 2)]).contrasts[0]).toMatchObject({
      interval: null,
      verdict: 'cannot-tell',
    });
    expect(comparison([treated('a', 2, 2, 2), treated('b', 1, 2, 3)]).contrasts[0]?.interval).not.toBeNull();
  });

  it('is held to more where more is compared at once', () => {
    const four = ['a', 'b', 'c', 'd'].map((key, at) => treated(key, at, at + 1, at + 3));
    const { contrasts } = comparison(four);
    expect(contrasts).toHaveLength(6);
    for (const { level } of contrasts) expect(level).toBeCloseTo(1 - 0.05 / 6, 12);
  });

  it('takes pairs as pairs where three holders had them, and no fewer', () => {
    const held = (key: string, values: readonly number[], holders: readonly string[]): Treated => ({
      key,
      observations: values.map((value, at) => ({ value, plot: `p${at}`, holder: holders[at] ?? '' })),
    });
    const by = (...holders: string[]) =>
      comparison([held('a', [2, 3, 5, 4], holders), held('b', [1, 1, 2, 4], holders)]).contrasts[0]?.by;
    expect(by('x', 'x', 'y', 'z')).toBe('pairs');
    expect(by('x', 'x', 'y', 'y')).toBe('groups');
  });

  it('tells of one group alone, and contrasts it with nothing', () => {
    const { groups, contrasts } = comparison([treated('a', 1, 2, 3)]);
    expect(groups[0]).toMatchObject({ count: 3, mean: 2, estimate: 2 });
    expect(contrasts).toEqual([]);
  });

  it('refuses no group, a key that stands twice, a group of nothing and values that are none', () => {
    expect(() => comparison([])).toThrow(RangeError);
    expect(() => comparison([treated('a', 1), treated('a', 2)])).toThrow(RangeError);
    expect(() => comparison([treated('a', 1), treated('b')])).toThrow(RangeError);
    expect(() => comparison([treated('a', 1), treated('b', Number.NaN)])).toThrow(RangeError);
  });

  it('is the same in whatever order it was written down, and the other way round when groups change places', () => {
    const values = fc.array(fc.double({ min: 0, max: 9, noNaN: true }), { minLength: 3, maxLength: 6 });
    fc.assert(
      fc.property(values, values, (ones, others) => {
        const [a, b] = [treated('a', ...ones), treated('b', ...others)];
        const mixed = { ...a, observations: [...a.observations].reverse() };
        const [plain, turned] = [comparison([a, b]), comparison([b, mixed])];
        expect(turned.groups[1]?.mean).toBeCloseTo(plain.groups[0]?.mean ?? Number.NaN, 9);
        const [one, other] = [plain.contrasts[0]?.interval, turned.contrasts[0]?.interval];
        expect(other === null).toBe(one === null);
        if (one && other) expect(other.low).toBeCloseTo(-one.high, 7);
      }),
    );
  });

  it('says more or less of five alike in a hundred at most, though six contrasts are looked at', () => {
    const { normal } = chanceFrom(1908);
    const runs = 1_000;
    let said = 0;
    for (let run = 0; run < runs; run++) {
      const groups = ['a', 'b', 'c', 'd'].map((key) => treated(key, ...Array.from({ length: 5 }, () => 2 + normal())));
      if (comparison(groups).contrasts.some(({ verdict }) => verdict !== 'cannot-tell')) said += 1;
    }
    expect(said / runs).toBeLessThan(0.065);
    expect(said).toBeGreaterThan(0);
  });
});
