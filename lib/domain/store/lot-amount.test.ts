import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAmount, readAmount } from './lot-amount';

describe('an amount as it is typed', () => {
  it.each([
    ['60', 'pieces', 'metric', 60],
    [' 0 ', 'pieces', 'imperial', 0],
    ['100000', 'pieces', 'metric', 100_000],
    ['100001', 'pieces', 'metric', null],
    ['2.5', 'pieces', 'metric', null],
    ['2 kg', 'pieces', 'metric', null],
    ['-1', 'pieces', 'metric', null],
    ['', 'pieces', 'metric', null],
    ['12,5', 'grams', 'metric', 12_500],
    ['12.5', 'grams', 'imperial', 5_670],
    ['12 lb 4 oz', 'grams', 'metric', 5_557],
    ['10 t', 'grams', 'metric', 10_000_000],
    ['10.001 t', 'grams', 'metric', null],
    ['a sack', 'grams', 'metric', null],
  ] as const)('%s, %s, %s → %s', (text, measure, units, amount) =>
    expect(readAmount(text, measure, units)).toBe(amount),
  );

  it.each([
    [1_200, 'pieces', 'imperial', '1,200'],
    [12_500, 'grams', 'metric', '12.5 kg'],
    [12_534, 'grams', 'metric', '12.53 kg'],
    [999, 'grams', 'metric', '999 g'],
    [0, 'grams', 'metric', '0 g'],
    [0, 'grams', 'imperial', '0 oz'],
    [12_701, 'grams', 'imperial', '28 lb'],
    [12_500, 'grams', 'imperial', '27 lb 9 oz'],
    [60_000, 'grams', 'metric', '60 kg'],
  ] as const)('%i %s, %s, is told as %s', (amount, measure, units, words) =>
    expect(formatAmount(amount, measure, units)).toBe(words),
  );

  it('is whole, and not less than nothing', () => {
    expect(() => formatAmount(-1, 'pieces', 'metric')).toThrow(RangeError);
    expect(() => formatAmount(0.5, 'grams', 'metric')).toThrow(RangeError);
  });

  it('is read back from what is told, but for the comma of thousands and what is finer than the scales', () => {
    const given = fc.tuple(
      fc.constantFrom('metric' as const, 'imperial' as const),
      fc.constantFrom('grams' as const, 'pieces' as const),
      fc.nat(50_000),
    );
    fc.assert(
      fc.property(given, ([units, measure, amount]) => {
        const read = readAmount(formatAmount(amount, measure, units).replace(',', ''), measure, units);
        const finest = measure === 'pieces' ? 0 : units === 'metric' ? 5 : 15;
        expect(Math.abs((read ?? Number.NaN) - amount)).toBeLessThanOrEqual(finest);
      }),
    );
  });
});
