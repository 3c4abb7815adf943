import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readArea } from './area';
import { gPerM2Of } from './area-rate';
import { type Amount, areaInEveryUnit, lengthInEveryUnit, massInEveryUnit, rateInEveryUnit } from './in-every-unit';
import { parseLength } from './length';
import { readMass } from './mass';

const said = (amounts: readonly Amount[]) =>
  Object.fromEntries(amounts.map(({ unit, amount }) => [unit, Number(amount.toPrecision(6))]));

describe('in every unit', () => {
  test('a rod, ten square rods, a hundredweight and a dressing', () => {
    expect(said(lengthInEveryUnit(50_292))).toEqual({
      m: 5.0292,
      cm: 502.92,
      mm: 5029.2,
      ft: 16.5,
      in: 198,
      yd: 5.5,
      rods: 1,
    });
    expect(said(areaInEveryUnit(2_529_285.264))).toEqual({
      'm²': 252.929,
      ha: 0.0252929,
      'sq ft': 2722.5,
      'sq yd': 302.5,
      'sq rods': 10,
      acres: 0.0625,
    });
    expect(said(massInEveryUnit(50_802.34544))).toMatchObject({ kg: 50.8023, oz: 1792, lb: 112, cwt: 1, tons: 0.05 });
    expect(said(rateInEveryUnit(5000))).toMatchObject({ 'g/m²': 5000, 'kg/m²': 5, 'kg/ha': 50_000, 't/ha': 50 });
  });

  test('nothing is nothing in every unit', () => {
    for (const all of [lengthInEveryUnit(0), areaInEveryUnit(0), massInEveryUnit(0)])
      expect(new Set(all.map(({ amount }) => amount))).toEqual(new Set([0]));
  });

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY, 2e15])('%s is refused', (value) => {
    for (const inEvery of [lengthInEveryUnit, areaInEveryUnit, massInEveryUnit, rateInEveryUnit])
      expect(() => inEvery(value)).toThrow(RangeError);
  });

  test('what a unit says is read as the same measure', () => {
    const near = (read: number | null, value: number, within: number) =>
      expect(Math.abs((read ?? Number.NaN) - value)).toBeLessThanOrEqual(within);
    const text = ({ amount, unit }: Amount) => `${amount.toFixed(3)} ${unit}`;
    fc.assert(
      fc.property(fc.integer({ min: 10_000, max: 9_000_000 }), (value) => {
        for (const one of lengthInEveryUnit(value).filter(({ unit }) => ['m', 'cm', 'mm', 'ft'].includes(unit))) {
          const typed = parseLength(text(one), 'metric');
          near(typed.ok ? typed.tenthMm : null, value, 7);
        }
        for (const one of areaInEveryUnit(value).filter(({ unit }) => ['m²', 'sq ft', 'sq yd'].includes(unit)))
          near(readArea(text(one), 'metric'), value, 6);
        for (const one of massInEveryUnit(value).filter(({ unit }) => ['g', 'kg', 'lb', 'oz'].includes(unit)))
          near(readMass(text(one), 'metric'), value, 1);
        for (const { amount, unit } of rateInEveryUnit(value)) expect(gPerM2Of(amount, unit) / value).toBeCloseTo(1, 9);
      }),
    );
  });
});
