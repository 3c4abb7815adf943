import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AmountUnit, formatMass, loadsIn } from './load';

describe('loadsIn', () => {
  test.each<[number, AmountUnit, number]>([
    [0, 'm3', 0],
    [2999, 'loads', 2],
    [2999, 'bales', 2],
    [84, 'm3', 0],
    [85, 'm3', 1],
    [1000, 'm3', 11],
    [34, 'tonnes', 1],
    [33, 'tonnes', 0],
    [1000, 'tonnes', 29],
  ])('%s thousandths of %s at 85 L and 400 g/L are %s loads', (thousandths, unit, loads) => {
    expect(loadsIn({ thousandths, unit }, 85, 400)).toBe(loads);
  });

  test('the loads fit in the heap, and one more would not', () => {
    const amount = fc.record({
      thousandths: fc.nat(10_000_000),
      unit: fc.constantFrom<AmountUnit>('loads', 'm3', 'tonnes', 'bales'),
    });
    fc.assert(
      fc.property(
        amount,
        fc.integer({ min: 20, max: 300 }),
        fc.integer({ min: 50, max: 1000 }),
        ({ thousandths, unit }, litres, density) => {
          const heap = BigInt(thousandths) * (unit === 'tonnes' ? 1000n : 1n);
          const load = { loads: 1000n, bales: 1000n, m3: BigInt(litres), tonnes: BigInt(litres * density) }[unit];
          const loads = BigInt(loadsIn({ thousandths, unit }, litres, density));
          expect(loads * load <= heap && (loads + 1n) * load > heap).toBe(true);
        },
      ),
    );
  });

  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 1e308])('%s is refused wherever it stands', (value) => {
    expect(() => loadsIn({ thousandths: value, unit: 'm3' }, 85, 400)).toThrow(RangeError);
    expect(() => loadsIn({ thousandths: 1, unit: 'loads' }, value, 400)).toThrow(RangeError);
    expect(() => loadsIn({ thousandths: 1, unit: 'tonnes' }, 85, value)).toThrow(RangeError);
  });

  test('an empty barrow and a weightless heap are refused', () => {
    expect(() => loadsIn({ thousandths: 1, unit: 'm3' }, 0, 400)).toThrow(RangeError);
    expect(() => loadsIn({ thousandths: 1, unit: 'm3' }, 85, 0)).toThrow(RangeError);
  });
});

test('weights in kilograms and tonnes', () => {
  expect([formatMass(0), formatMass(3450), formatMass(63_750), formatMass(1_250_000)]).toEqual([
    '0 kg',
    '3.5 kg',
    '64 kg',
    '1.25 t',
  ]);
});
