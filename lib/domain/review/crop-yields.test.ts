import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cropYields, type WeighedCrop } from './crop-yields';

const leeks = (holdingId: string, massG: number, areaCm2 = 10_000): WeighedCrop => ({
  ...{ holdingId, isOwn: false, cropKey: 'leek', massG, areaCm2 },
});
const weighed = fc.array(
  fc.record({
    holdingId: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
    cropKey: fc.constantFrom('leek', 'onion', 'potato'),
    isOwn: fc.constant(false),
    massG: fc.nat({ max: 100_000 }),
    areaCm2: fc.integer({ min: 1, max: 200_000 }),
  }),
  { maxLength: 40 },
);

describe('what crops yielded', () => {
  it('is the mean over holdings, with its interval', () => {
    const { told, withheld } = cropYields([leeks('a', 1000), leeks('b', 2000), leeks('c', 3000)]);
    expect(withheld).toEqual([]);
    expect(told).toMatchObject([{ cropKey: 'leek', holdings: 3, gPerM2: { estimate: 2000 } }]);
    expect(told[0]?.gPerM2.low).toBeCloseTo(-484.1, 1);
    expect(told[0]?.gPerM2.high).toBeCloseTo(4484.1, 1);
  });

  it('counts a holding once, by all of its ground', () => {
    const { told } = cropYields([leeks('a', 1000), leeks('a', 2000, 20_000), leeks('b', 1000), leeks('c', 1000)]);
    expect(told).toMatchObject([{ holdings: 3, gPerM2: { estimate: 1000, low: 1000, high: 1000 } }]);
  });

  it('is withheld of fewer than three holdings, however many beds they had', () => {
    fc.assert(
      fc.property(weighed, fc.subarray(['a', 'b']), (of, own) => {
        const { told, withheld } = cropYields(of.map((one) => ({ ...one, isOwn: own.includes(one.holdingId) })));
        const holdingsOf = (key: string) => new Set(of.flatMap((one) => (one.cropKey === key ? [one.holdingId] : [])));
        expect([...told.map(({ cropKey }) => cropKey), ...withheld].sort()).toEqual(
          [...new Set(of.map(({ cropKey }) => cropKey))].sort(),
        );
        const othersOf = (key: string, mine: string[]) =>
          [...holdingsOf(key)].filter((id) => !mine.includes(id)).length;
        for (const { cropKey, holdings } of told) {
          expect(holdings).toBe(holdingsOf(cropKey).size);
          expect(othersOf(cropKey, own)).toBeGreaterThanOrEqual(3);
        }
        for (const key of withheld) expect(othersOf(key, own)).toBeLessThan(3);
      }),
    );
  });

  it('tells the same of a crop whatever else was weighed, and in whatever order', () => {
    fc.assert(
      fc.property(weighed, (of) => {
        const alone = cropYields(of.filter(({ cropKey }) => cropKey === 'leek')).told;
        const among = cropYields([...of].reverse()).told.filter(({ cropKey }) => cropKey === 'leek');
        expect(among.map(({ holdings }) => holdings)).toEqual(alone.map(({ holdings }) => holdings));
        for (const [at, { gPerM2 }] of among.entries())
          expect(gPerM2.estimate).toBeCloseTo(alone[at]?.gPerM2.estimate ?? Number.NaN, 6);
      }),
    );
  });

  it.each([[leeks('a', -1)], [leeks('a', 1, 0)], [leeks('a', 1.5)]])('%j is refused', (one) =>
    expect(() => cropYields([one])).toThrow(RangeError),
  );
});
