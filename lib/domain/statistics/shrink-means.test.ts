import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '@/tests/fixtures/chance';
import { momentsOf } from './moments';
import { shrinkCells, shrinkMeans } from './shrink-means';

const cell = (mean: number, errorSquare = 1) => ({ mean, errorSquare });

describe('means drawn towards that of all', () => {
  it('are James and Stein’s where all errors are alike', () => {
    const { towards, cells } = shrinkCells(
      [1, 2, 3, 4].map((mean) => cell(mean)),
      null,
    );
    expect(towards).toBeCloseTo(2.5, 12);
    cells.forEach(({ estimate, ownShare }, at) => {
      expect(ownShare).toBeCloseTo(0.8, 9);
      expect(estimate).toBeCloseTo([1.3, 2.1, 2.9, 3.7][at] ?? 0, 9);
    });
  });

  it('are drawn less where the errors had to be estimated, and further where they are larger', () => {
    const means = [1, 2, 3, 4, 5];
    const own = (errorSquare: number, degrees: number | null) =>
      shrinkCells(
        means.map((mean) => cell(mean, errorSquare)),
        degrees,
      ).cells[0]?.ownShare ?? 0;
    expect(own(1, 4)).toBeGreaterThan(own(1, null));
    expect(own(1, 4)).toBeCloseTo(1 - (1 - own(1, null)) * (4 / 6), 9);
    expect(own(0.1, null)).toBeGreaterThan(own(1, null));
    const unlike = shrinkCells([cell(1, 0.1), cell(2, 2), cell(3, 0.5), cell(6, 1)], null).cells;
    const order = unlike.map(({ ownShare }, at) => [ownShare, at] as const).toSorted((a, b) => b[0] - a[0]);
    expect(order.map(([, at]) => at)).toEqual([0, 2, 3, 1]);
  });

  it('stay where they are: up to three, without spread, or exact', () => {
    for (const means of [[1], [1, 5], [1, 5, 9]])
      expect(
        shrinkCells(
          means.map((mean) => cell(mean)),
          null,
        ).cells.map(({ estimate }) => estimate),
      ).toEqual(means);
    expect(
      shrinkCells(
        [1, 2, 3, 4].map((mean) => cell(mean, 0)),
        null,
      ).cells.map(({ estimate }) => estimate),
    ).toEqual([1, 2, 3, 4]);
    expect(shrinkMeans([[1], [2], [3], [4], [9]]).cells.every(({ ownShare }) => ownShare === 1)).toBe(true);
  });

  it('fall nearly together where chance alone would set them as far apart', () => {
    const { cells } = shrinkCells(
      [1, 1.1, 0.9, 1, 1.05].map((mean) => cell(mean)),
      null,
    );
    for (const { ownShare } of cells) expect(ownShare).toBeCloseTo(0.5, 9);
  });

  it('refuse what is no cell', () => {
    expect(() => shrinkCells([], null)).toThrow(RangeError);
    expect(() => shrinkCells([cell(Number.NaN)], null)).toThrow(RangeError);
    expect(() => shrinkCells([cell(1, -1)], null)).toThrow(RangeError);
    expect(() => shrinkCells([cell(1)], 0)).toThrow(RangeError);
    expect(() => shrinkMeans([[1, 2], []])).toThrow(RangeError);
  });

  it('lie between the cell’s own mean and the common one, in whatever order', () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: 0.01, max: 30, noNaN: true })),
          {
            minLength: 1,
            maxLength: 12,
          },
        ),
        (list) => {
          const cells = list.map(([mean, errorSquare]) => cell(mean, errorSquare));
          const found = shrinkCells(cells, 7);
          found.cells.forEach(({ estimate, ownShare }, at) => {
            const mean = cells[at]?.mean ?? 0;
            expect(ownShare).toBeGreaterThanOrEqual(0);
            expect(ownShare).toBeLessThanOrEqual(1);
            expect(estimate).toBeGreaterThanOrEqual(Math.min(mean, found.towards) - 1e-9);
            expect(estimate).toBeLessThanOrEqual(Math.max(mean, found.towards) + 1e-9);
          });
          const turned = shrinkCells([...cells].reverse(), 7).cells.toReversed();
          turned.forEach(({ estimate }, at) => expect(estimate).toBeCloseTo(found.cells[at]?.estimate ?? 0, 6));
        },
      ),
    ));

  // How far cells truly differ against how far one result does: from not at all to far.
  it.each([0, 0.5, 1, 3])('miss by less in all than plain means, cells %d apart', (apart) => {
    const { normal, whole } = chanceFrom(1961 + apart * 10);
    let [plain, drawn] = [0, 0];
    for (let run = 0; run < 1_000; run++) {
      const truths = Array.from({ length: 8 }, () => 2 + apart * normal());
      const groups = truths.map((truth) => Array.from({ length: whole(2, 5) }, () => truth + normal()));
      const { cells } = shrinkMeans(groups);
      truths.forEach((truth, at) => {
        plain += (momentsOf(groups[at] ?? []).mean - truth) ** 2;
        drawn += ((cells[at]?.estimate ?? 0) - truth) ** 2;
      });
    }
    expect(drawn).toBeLessThan(plain);
    if (apart === 0) expect(drawn).toBeLessThan(0.6 * plain);
  });
});
