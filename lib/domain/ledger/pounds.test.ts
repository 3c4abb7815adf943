import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatPounds, plainPounds } from './pounds';

describe('money in words', () => {
  test.each([
    [0, '£0.00', '0.00'],
    [1, '£0.01', '0.01'],
    [99, '£0.99', '0.99'],
    [735, '£7.35', '7.35'],
    [123_456, '£1,234.56', '1234.56'],
    [-300, '−£3.00', '-3.00'],
    [-1, '−£0.01', '-0.01'],
    [1_000_000_000_000, '£10,000,000,000.00', '10000000000.00'],
  ])('%d pence', (minor, words, plain) => {
    expect(formatPounds(minor)).toBe(words);
    expect(plainPounds(minor)).toBe(plain);
  });
  test.each([0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])('%d is no amount', (minor) => {
    expect(() => formatPounds(minor)).toThrow(RangeError);
    expect(() => plainPounds(minor)).toThrow(RangeError);
  });
  test('says every penny', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), (minor) => {
        expect(BigInt(plainPounds(minor).replace('.', ''))).toBe(BigInt(minor));
        expect(formatPounds(minor).replaceAll(/[£,]/g, '').replace('−', '-')).toBe(plainPounds(minor));
      }),
    );
  });
});
