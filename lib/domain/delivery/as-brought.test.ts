import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asBrought } from './as-brought';

const one = (orderedLoads: number, heapLoads: number) => ({ orderedLoads, heapLoads });

describe('what a supplier brought, beside what was ordered', () => {
  it('is nothing to tell before anything was measured', () => {
    expect(asBrought([])).toBeNull();
  });

  it.each([
    [[one(140, 120), one(60, 64)], -8],
    [[one(100, 100)], 0],
    [[one(100, 109)], 9],
    [[one(200, 199)], -1],
    [[one(201, 200)], 0],
    [[one(10, 0)], -100],
  ])('%o differs by %i percent', (brought, differencePercent) => {
    expect(asBrought(brought)).toMatchObject({ differencePercent, deliveries: brought.length });
  });

  it('refuses what nobody orders', () => {
    for (const bad of [one(0, 5), one(-1, 5), one(5, -1), one(1.5, 1)])
      expect(() => asBrought([bad])).toThrow(RangeError);
  });

  it('is within half a percent, in whatever order they came', () => {
    const brought = fc.array(fc.record({ orderedLoads: fc.integer({ min: 1, max: 900 }), heapLoads: fc.nat(900) }), {
      minLength: 1,
    });
    fc.assert(
      fc.property(brought, (all) => {
        const told = asBrought(all);
        if (!told) throw new Error('something was brought');
        expect(asBrought(all.toReversed())).toEqual(told);
        expect(Math.abs((100 * told.heapLoads) / told.orderedLoads - 100 - told.differencePercent)).toBeLessThanOrEqual(
          0.5 + 1e-9,
        );
      }),
    );
  });
});
