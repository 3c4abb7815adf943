import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spacings } from '../catalogue/spacings';
import { footprint } from '../ground/footprint';
import { apartOf, plantsOn } from './plants-on';
import { germinationOf, seedsWanted } from './seeds-wanted';

const bed = footprint(0, 0, 120, 360);

describe('plants on a footprint', () => {
  it('stand in whole rows, whichever way they run', () => {
    const apart = { rowsCm: 30, inRowCm: 10 };
    expect(plantsOn(bed, apart, 'length')).toEqual({ rows: 4, inRow: 36, plants: 144 });
    expect(plantsOn(bed, apart, 'width')).toEqual({ rows: 12, inRow: 12, plants: 144 });
    expect(plantsOn(bed, { rowsCm: 50, inRowCm: 7 }, 'length')).toEqual({ rows: 2, inRow: 51, plants: 102 });
  });

  it('are one at least, however narrow it is', () =>
    expect(plantsOn(footprint(0, 0, 30, 30), { rowsCm: 183, inRowCm: 183 }, 'length')).toEqual({
      rows: 1,
      inRow: 1,
      plants: 1,
    }));

  it('have whole distances', () => {
    expect(() => plantsOn(bed, { rowsCm: 0, inRowCm: 10 }, 'length')).toThrow(RangeError);
    expect(() => plantsOn(bed, { rowsCm: 30, inRowCm: 2.5 }, 'length')).toThrow(RangeError);
  });

  it('never want more ground than there is, and no further row would fit', () => {
    const size = fc.integer({ min: 1, max: 2_000 });
    fc.assert(
      fc.property(size, size, size, size, (widthCm, lengthCm, rowsCm, inRowCm) => {
        fc.pre(rowsCm <= widthCm && inRowCm <= lengthCm);
        const { rows, inRow, plants } = plantsOn(footprint(0, 0, widthCm, lengthCm), { rowsCm, inRowCm }, 'length');
        expect(plants).toBe(rows * inRow);
        expect(rows * rowsCm <= widthCm && (rows + 1) * rowsCm > widthCm).toBe(true);
        expect(inRow * inRowCm <= lengthCm && (inRow + 1) * inRowCm > lengthCm).toBe(true);
      }),
    );
  });

  it('stand as printed, in the middle of the range', () => {
    for (const spacing of spacings) {
      const { rowsCm, inRowCm } = apartOf(spacing);
      const cm = spacing.printedIn === 'inches' ? 2.54 : 1;
      expect(rowsCm >= Math.floor(spacing.rowsLeast * cm) && rowsCm <= Math.ceil(spacing.rowsMost * cm)).toBe(true);
      expect(inRowCm >= Math.floor(spacing.inRowLeast * cm) && inRowCm <= Math.ceil(spacing.inRowMost * cm)).toBe(true);
    }
  });
});

describe('seeds for so many plants', () => {
  it.each([
    [144, 70, 25, 258],
    [100, 100, 0, 100],
    [100, 80, 0, 125],
    [1, 65, 0, 2],
    [0, 65, 50, 0],
  ])('%i plants, %i %% germinate, a margin of %i %%: %i', (plants, germination, margin, seeds) =>
    expect(seedsWanted(plants, germination, margin)).toBe(seeds),
  );

  it.each([
    [-1, 70, 0],
    [1.5, 70, 0],
    [1, 0, 0],
    [1, 101, 0],
    [1, 70, -1],
    [2 ** 52, 70, 100],
  ])('%d plants, %d %%, %d %%: none', (...given) => expect(() => seedsWanted(...given)).toThrow(RangeError));

  it('are enough, and one fewer would not be', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.integer({ min: 1, max: 100 }),
        fc.nat(100),
        (plants, percent, margin) => {
          const seeds = BigInt(seedsWanted(plants, percent, margin));
          const wanted = BigInt(plants) * BigInt(100 + margin);
          expect(seeds * BigInt(percent) >= wanted && (seeds - 1n) * BigInt(percent) < wanted).toBe(true);
        },
      ),
    );
  });

  it('are reckoned by the least that may be sold, and by common practice where no law names the crop', () => {
    expect(germinationOf('carrot')).toEqual({ percent: 65, source: 'eu-germination' });
    expect(germinationOf('oca')).toEqual({ percent: 50, source: 'common-practice' });
  });
});
