import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shrinkageOf, shrinkages } from '../catalogue/heap-shrinkage';
import { materials } from '../catalogue/materials';
import { leftOnHeap, type LastKnown } from './left-on-heap';

const heap = (also: Partial<LastKnown> = {}): LastKnown => ({
  ...{ loads: 40, days: 200, kind: 'manure', ageMonths: null },
  ...also,
});

describe('what is left on a heap', () => {
  it.each([
    ['on its first day, all of it', heap({ days: 0 }), 40, 40],
    ['half-way, half of the loss', heap({ days: 50 }), 26, 40],
    ['once it is stable, all of the loss', heap({ days: 100 }), 12, 40],
    ['no less after that', heap({ days: 4000 }), 12, 40],
    ['come fresh, it has shrunk for certain', heap({ ageMonths: 2 }), 12, 28],
    ['at three months it may have done with that', heap({ ageMonths: 3 }), 12, 40],
    ['just under a year', heap({ ageMonths: 11 }), 12, 40],
    ['rotted for a year, it only settles', heap({ ageMonths: 12 }), 28, 40],
    ['compost settles', heap({ kind: 'compost' }), 28, 40],
    ['straw in the rain may be spoilt', heap({ kind: 'bedding' }), 0, 40],
    ['one load, rounded each its own way', heap({ loads: 1, ageMonths: 2, days: 1 }), 0, 1],
    ['nothing', heap({ loads: 0 }), 0, 0],
  ])('%s', (_, known, leastLoads, mostLoads) => {
    expect(leftOnHeap(known)).toEqual({ leastLoads, mostLoads });
  });

  it.each([
    heap({ loads: -1 }),
    heap({ loads: 1.5 }),
    heap({ days: -1 }),
    heap({ ageMonths: -1 }),
    heap({ loads: NaN }),
  ])('refuses %o', (known) => {
    expect(() => leftOnHeap(known)).toThrow(RangeError);
  });

  it('is reckoned by one row, whatever the material and its age', () => {
    for (const { kind } of materials)
      for (const ageMonths of [null, 0, 2, 3, 11, 12, 300]) {
        const row = shrinkageOf(kind, ageMonths);
        expect(shrinkages.filter(({ key }) => key === row.key)).toEqual([row]);
        expect(0 <= row.leastLossPercent && row.leastLossPercent <= row.mostLossPercent).toBe(true);
        expect(row.mostLossPercent).toBeLessThanOrEqual(100);
      }
  });

  const known = fc.record({
    loads: fc.nat(5000),
    days: fc.nat(400),
    kind: fc.constantFrom('manure' as const, 'compost' as const, 'bedding' as const),
    ageMonths: fc.option(fc.nat(40)),
  });

  it('is never more than lay there, and never grows as days pass', () => {
    fc.assert(
      fc.property(known, fc.nat(400), (then, more) => {
        const now = leftOnHeap(then);
        const later = leftOnHeap({ ...then, days: then.days + more });
        expect(0 <= now.leastLoads && now.leastLoads <= now.mostLoads && now.mostLoads <= then.loads).toBe(true);
        expect(later.leastLoads <= now.leastLoads && later.mostLoads <= now.mostLoads).toBe(true);
      }),
    );
  });

  it('is no less on a larger heap', () => {
    fc.assert(
      fc.property(known, fc.nat(50), (then, more) => {
        const [small, large] = [leftOnHeap(then), leftOnHeap({ ...then, loads: then.loads + more })];
        expect(large.leastLoads >= small.leastLoads && large.mostLoads >= small.mostLoads).toBe(true);
      }),
    );
  });
});
