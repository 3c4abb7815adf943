import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { footprint } from '../ground/footprint';
import { bedsCovered } from './beds-covered';
import { cultivableCm2, needOf } from './need-of';

const rate = { rateGPerM2: 5000, barrowLitres: 85, densityGPerL: 400, intervalYears: 3 };

describe('the need of a holding', () => {
  it('is rounded up once, over all its ground', () => {
    // 12 m² at 5 kg/m² is 60 kg; a barrow-load is 34 kg.
    const beds = [
      { id: 'a', dueCm2: 60_000, unloggedCm2: 0 },
      { id: 'b', dueCm2: 60_000, unloggedCm2: 0 },
    ];
    expect(needOf(beds, rate).loads).toBe(2);
    expect(needOf(beds.slice(0, 1), rate).loads).toBe(1);
  });

  it('is nothing where nothing is due, and a load for a little', () => {
    expect(needOf([], rate).loads).toBe(0);
    expect(needOf([{ id: 'a', dueCm2: 1, unloggedCm2: 0 }], rate).loads).toBe(1);
  });

  it('counts a share of unlogged ground, exactly', () => {
    // 20.4 m² unlogged, a third of it: 6.8 m², 34 kg: one load to the gram.
    expect(needOf([{ id: 'a', dueCm2: 0, unloggedCm2: 204_000 }], rate).loads).toBe(1);
    expect(needOf([{ id: 'a', dueCm2: 0, unloggedCm2: 204_001 }], rate).loads).toBe(2);
  });

  it('never falls when more ground is due', () => {
    fc.assert(
      fc.property(fc.nat(10_000_000), fc.nat(10_000_000), fc.nat(1_000_000), (due, unlogged, more) => {
        const loads = (dueCm2: number) => needOf([{ id: 'a', dueCm2, unloggedCm2: unlogged }], rate).loads;
        expect(loads(due + more)).toBeGreaterThanOrEqual(loads(due));
      }),
    );
  });

  it('refuses rates and areas that are none', () => {
    expect(() => needOf([], { ...rate, barrowLitres: 0 })).toThrow(RangeError);
    expect(() => needOf([{ id: 'a', dueCm2: -1, unloggedCm2: 0 }], rate)).toThrow(RangeError);
    expect(() => cultivableCm2(100, 101)).toThrow(RangeError);
  });
});

describe('the ground that loads have covered', () => {
  const bed = (bedId: string, wantedG: number) => ({ bedId, wantedG, footprint: footprint(0, 0, 100, 200) });

  it('fills bed after bed, and the last as a strip', () => {
    expect(bedsCovered(3, 34_000, [bed('a', 60_000), bed('b', 84_000)])).toEqual([
      { bedId: 'a', footprint: footprint(0, 0, 100, 200), massG: 60_000 },
      { bedId: 'b', footprint: footprint(0, 0, 100, 100), massG: 42_000 },
    ]);
  });

  it('covers nothing without loads, and refuses half ones', () => {
    expect(bedsCovered(0, 34_000, [bed('a', 1)])).toEqual([]);
    expect(() => bedsCovered(0.5, 34_000, [])).toThrow(RangeError);
  });
});
