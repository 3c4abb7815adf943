import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stillWanted, suggestedOrder } from './suggested-order';

const t = 1_000_000;

describe('what is still wanted', () => {
  it.each([
    ['less what lies there and what is coming', 10, 1, 3, 4, 3, 5],
    ['all of it, where there is nothing', 10, 0, 0, 0, 10, 10],
    ['nothing, where enough is coming', 10, 0, 0, 10, 0, 0],
    ['never below nothing', 10, 0, 5, 9, 0, 1],
    ['nothing is needed', 0, 1, 2, 3, 0, 0],
  ])('is %s', (_, need, least, most, order, leastT, mostT) => {
    const asked = { needG: need * t, leftLeastG: least * t, leftMostG: most * t, onOrderG: order * t };
    expect(stillWanted(asked)).toEqual({ leastG: leastT * t, mostG: mostT * t });
  });

  it('refuses what is no mass, and a range upside down', () => {
    const asked = { needG: 10, leftLeastG: 1, leftMostG: 2, onOrderG: 0 };
    for (const bad of [{ needG: -1 }, { onOrderG: 0.5 }, { leftLeastG: 3 }, { leftMostG: NaN }])
      expect(() => stillWanted({ ...asked, ...bad })).toThrow(RangeError);
  });
});

describe('a suggested order', () => {
  const trailer = { unitG: 2_400_000, priceMinor: 6000, barrowLoadG: 34_000 };

  it('is in whole units, rounded up, with what is over, price and cost by the load', () => {
    expect(suggestedOrder({ leastG: 9 * t, mostG: 11 * t }, trailer)).toEqual({
      ...{ leastUnits: 4, mostUnits: 5, massG: 12 * t, overG: t },
      ...{ loads: 352, priceMinor: 30_000, loadMinor: 85 },
    });
  });

  it('is exact where it comes out even, and one more for a gram', () => {
    expect(suggestedOrder({ leastG: 0, mostG: 4_800_000 }, trailer)).toMatchObject({ mostUnits: 2, overG: 0 });
    expect(suggestedOrder({ leastG: 1, mostG: 4_800_001 }, trailer)).toMatchObject({ leastUnits: 1, mostUnits: 3 });
  });

  it('is nothing where nothing is wanted', () => {
    const none = suggestedOrder({ leastG: 0, mostG: 0 }, { ...trailer, priceMinor: null });
    expect(none).toMatchObject({ leastUnits: 0, mostUnits: 0, loads: 0, priceMinor: null, loadMinor: null });
  });

  it('refuses what is no mass, no unit and no price', () => {
    for (const bad of [{ unitG: 0 }, { barrowLoadG: 0 }, { priceMinor: -1 }, { priceMinor: 0.5 }])
      expect(() => suggestedOrder({ leastG: 1, mostG: 2 }, { ...trailer, ...bad })).toThrow(RangeError);
    expect(() => suggestedOrder({ leastG: 2, mostG: 1 }, trailer)).toThrow(RangeError);
  });

  it('covers what is wanted with not a unit to spare, and counts no load that is not there', () => {
    const mass = fc.nat(40 * t);
    const unit = fc.record({
      unitG: fc.integer({ min: 1, max: 9 * t }),
      priceMinor: fc.option(fc.nat(50_000)),
      barrowLoadG: fc.integer({ min: 1, max: 90_000 }),
    });
    fc.assert(
      fc.property(mass, mass, unit, (a, b, one) => {
        const wanted = { leastG: Math.min(a, b), mostG: Math.max(a, b) };
        const order = suggestedOrder(wanted, one);
        const [least, most] = [wanted.leastG, wanted.mostG].map(BigInt);
        expect(order.leastUnits).toBe(slowly(least ?? 0n, BigInt(one.unitG)));
        expect(order.mostUnits).toBe(slowly(most ?? 0n, BigInt(one.unitG)));
        expect(order.overG).toBeLessThan(one.unitG);
        expect(order.massG - order.overG).toBe(wanted.mostG);
        expect(order.loads * one.barrowLoadG).toBeLessThanOrEqual(order.massG);
        expect((order.loads + 1) * one.barrowLoadG).toBeGreaterThan(order.massG);
      }),
    );
  });
});

// As whole numbers of any length.
function slowly(massG: bigint, unitG: bigint): number {
  const whole = massG / unitG;
  return Number(whole * unitG === massG ? whole : whole + 1n);
}
