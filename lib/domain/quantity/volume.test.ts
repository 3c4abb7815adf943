import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gallonL, readVolumeMl } from './volume';

describe('readVolumeMl', () => {
  test.each<[string, 'l' | 'ml', number | null]>([
    ['20', 'l', 20_000],
    [' 20 L ', 'ml', 20_000],
    ['12,5 litres', 'l', 12_500],
    ['1 litre', 'l', 1000],
    ['370', 'ml', 370],
    ['370 ml', 'l', 370],
    ['370 millilitres', 'l', 370],
    ['1 gal', 'l', 4546],
    ['2 Gallons', 'l', 9092],
    ['1 pint', 'ml', 568],
    ['2 pts', 'l', 1137],
    ['0', 'l', 0],
    ['1000000', 'l', 1_000_000_000],
    ['1000001', 'l', null],
    ['-1', 'l', null],
    ['1e3', 'l', null],
    ['3 cups', 'l', null],
    ['', 'l', null],
    ['7️⃣', 'l', null],
    ['1.2345', 'l', null],
  ])('%s (%s) → %s', (text, bare, volumeMl) => {
    expect(readVolumeMl(text, bare)).toBe(volumeMl);
  });

  test('eight pints are a gallon, to the millilitre that each is rounded to', () => {
    fc.assert(
      fc.property(fc.nat(100_000), (gallons) => {
        const [asGallons, asPints] = [readVolumeMl(`${gallons} gal`, 'l'), readVolumeMl(`${gallons * 8} pt`, 'l')];
        expect(asPints).toBe(asGallons);
        expect(Math.abs((asGallons ?? 0) - gallons * gallonL * 1000)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
    );
  });

  test('a number of millilitres reads back', () => {
    fc.assert(
      fc.property(fc.nat(9_999_999), (volumeMl) => {
        expect(readVolumeMl(String(volumeMl), 'ml')).toBe(volumeMl);
      }),
    );
  });
});
