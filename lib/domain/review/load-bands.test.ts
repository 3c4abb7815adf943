import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadBands } from './load-bands';

const loads = fc.array(fc.nat({ max: 30 }), { maxLength: 60 });
const least = fc.integer({ min: 1, max: 5 });

describe('how loads spread over holdings', () => {
  it.each([
    [[], 1, null],
    [[3, 3], 3, null],
    [[0, 0, 0], 3, [{ fromLoads: 0, toLoads: 0, holdings: 3 }]],
    [
      [0, 0, 0, 1, 2, 2, 4],
      3,
      [
        { fromLoads: 0, toLoads: 0, holdings: 3 },
        { fromLoads: 1, toLoads: null, holdings: 4 },
      ],
    ],
    [[0, 1, 4, 30], 3, [{ fromLoads: 0, toLoads: null, holdings: 4 }]],
    [
      [0, 4],
      1,
      [
        { fromLoads: 0, toLoads: 0, holdings: 1 },
        { fromLoads: 1, toLoads: 2, holdings: 0 },
        { fromLoads: 3, toLoads: 5, holdings: 1 },
      ],
    ],
  ])('%j, at least %d', (of, fewest, bands) => expect(loadBands(of, fewest)).toEqual(bands));

  it('counts every holding once, in bands that follow on one another, and shows no few', () => {
    fc.assert(
      fc.property(loads, least, (of, fewest) => {
        const bands = loadBands(of, fewest);
        if (of.length < fewest) {
          expect(bands).toBeNull();
          return;
        }
        expect(bands?.reduce((sum, { holdings }) => sum + holdings, 0)).toBe(of.length);
        expect(bands?.every(({ holdings }) => holdings === 0 || holdings >= fewest)).toBe(true);
        expect(bands?.map(({ fromLoads }) => fromLoads)).toEqual([
          0,
          ...(bands?.slice(0, -1).map(({ toLoads }) => (toLoads ?? Number.NaN) + 1) ?? []),
        ]);
        for (const { fromLoads, toLoads, holdings } of bands ?? [])
          expect(of.filter((one) => one >= fromLoads && one <= (toLoads ?? one))).toHaveLength(holdings);
      }),
    );
  });

  it('does not mind the order', () => {
    fc.assert(
      fc.property(loads, least, (of, fewest) => {
        expect(loadBands([...of].reverse(), fewest)).toEqual(loadBands(of, fewest));
      }),
    );
  });

  it.each([
    [[1.5], 1],
    [[-1], 1],
    [[1], 0],
  ])('%j with %d is refused', (of, fewest) => expect(() => loadBands(of, fewest)).toThrow(RangeError));
});
