import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { footprintOfEdges, formatLength, parseLength, type Units } from './length';

const read = (text: string, units: Units) => {
  const typed = parseLength(text, units);
  return typed.ok ? typed.tenthMm : typed.code;
};

describe('parseLength', () => {
  test.each([
    ['3.6 m', 36_000],
    ['3,6 m', 36_000],
    ['3.6', 36_000],
    ['360', 36_000],
    ['360 cm', 36_000],
    ['3600 mm', 36_000],
    ['3m60', 36_000],
    ['3 m 60 cm', 36_000],
    ['3 m 6 cm', 30_600],
    ['3.6 metres', 36_000],
    ['０.５ m', 5000],
    ['19.9', 199_000],
    ['20', 2000],
    ['0', 0],
    ['1000 m', 10_000_000],
    ['12 ft 6 in', 38_100],
  ])('a metric member typing %s', (text, tenthMm) => expect(read(text, 'metric')).toBe(tenthMm));

  test.each([
    ['12 ft 6 in', 38_100],
    ['12\' 6"', 38_100],
    ['12′ 6″', 38_100],
    ['12’6”', 38_100],
    ["12' 6''", 38_100],
    ["12'6", 38_100],
    ['12 6', 38_100],
    ['12ft', 36_576],
    ['12', 36_576],
    ['12.5', 38_100],
    ['12 1/2 ft', 38_100],
    ['12½', 38_100],
    ['12 ft, 6 ins', 38_100],
    ['12\'-6"', 38_100],
    ['12 ft ½ in', 36_703],
    ['6½ in', 1651],
    ['6 ½ in', 1651],
    ['12 ft 6 1/4 in', 38_163.5],
    ['⅛ in', 31.75],
    ['12 6 1/2', 38_227],
    ['3.6 m', 36_000],
    ['0', 0],
  ])('an imperial member typing %s', (text, tenthMm) => expect(read(text, 'imperial')).toBe(tenthMm));

  test.each([
    ['', 'empty'],
    [' \u00a0 ', 'empty'],
    ['wide', 'not-a-length'],
    ['-3 m', 'not-a-length'],
    ['1e308', 'not-a-length'],
    ['NaN', 'not-a-length'],
    ['Infinity m', 'not-a-length'],
    ['3m6', 'not-a-length'],
    ['1,000 m', 'not-a-length'],
    ['3.6 m²', 'not-a-length'],
    ['12 ft 12 in', 'not-a-length'],
    ['=3+3', 'not-a-length'],
    ['٣ m', 'not-a-length'],
    ['m', 'not-a-length'],
    ["'", 'not-a-length'],
    ['1000.01 m', 'too-long'],
    ['9999999 m', 'too-long'],
  ])('%j is refused: %s', (text, code) => {
    expect(read(text, 'metric')).toBe(code);
    expect(read(text, 'imperial')).toBe(code);
  });

  test('two bare numbers are no metric length', () => expect(read('12 6', 'metric')).toBe('not-a-length'));

  test('whatever is typed, it is a length from 0 to 1,000 m or a refusal', () => {
    const typed = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789.,/½¼\'"mftin c-') }));
    fc.assert(
      fc.property(typed, fc.constantFrom<Units>('metric', 'imperial'), (text, units) => {
        const result = parseLength(text, units);
        if (result.ok) expect(result.tenthMm >= 0 && result.tenthMm <= 10_000_000).toBe(true);
      }),
    );
  });

  test('feet and inches to the eighth come out as counted in eighths', () => {
    const eighths = fc.record({ feet: fc.nat(300), inches: fc.nat(11), part: fc.nat(7) });
    fc.assert(
      fc.property(eighths, ({ feet, inches, part }) => {
        expect(read(`${feet} ft ${inches} ${part}/8 in`, 'imperial')).toBe(((feet * 12 + inches) * 8 + part) * 31.75);
      }),
    );
  });
});

describe('formatLength', () => {
  test('metres and feet', () => {
    expect(formatLength(360, 'metric')).toBe('3.60 m');
    expect(formatLength(366, 'imperial')).toBe('12 ft 0 in');
    expect(formatLength(365, 'imperial')).toBe('12 ft 0 in');
    expect(formatLength(0, 'imperial')).toBe('0 ft 0 in');
  });

  test('metres read back as they were', () => {
    fc.assert(
      fc.property(fc.nat(100_000), (lengthCm) => {
        expect(read(formatLength(lengthCm, 'metric'), 'metric')).toBe(lengthCm * 100);
      }),
    );
  });

  test('feet and inches, once printed, stay', () => {
    fc.assert(
      fc.property(fc.nat(30_000), (lengthCm) => {
        const printed = formatLength(lengthCm, 'imperial');
        const again = parseLength(printed, 'imperial');
        expect(again.ok && formatLength(Math.round(again.tenthMm / 100), 'imperial')).toBe(printed);
      }),
    );
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, -1])('%s is no length', (lengthCm) => {
    expect(() => formatLength(lengthCm, 'metric')).toThrow(RangeError);
  });
});

describe('footprintOfEdges', () => {
  test('four-foot beds side by side touch', () => {
    const beds = [0, 4, 8].map((feet) => footprintOfEdges({ x: feet * 3048, y: 0, width: 4 * 3048, length: 38_100 }));
    expect(beds.map(({ xCm, widthCm }) => [xCm, widthCm])).toEqual([
      [0, 122],
      [122, 122],
      [244, 122],
    ]);
  });

  test('beds that touch as typed, to the eighth of an inch, touch on the ground and lose nothing', () => {
    const widths = fc.array(fc.integer({ min: 32, max: 4000 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(widths, (eighths) => {
        let x = 0;
        const beds = eighths.map((count) => {
          const bed = footprintOfEdges({ x, y: 0, width: count * 31.75, length: 1000 });
          x += count * 31.75;
          return bed;
        });
        for (const [at, bed] of beds.entries())
          expect(bed.xCm).toBe(at === 0 ? 0 : (beds[at - 1]?.xCm ?? 0) + (beds[at - 1]?.widthCm ?? 0));
        expect(beds.reduce((sum, { widthCm }) => sum + widthCm, 0)).toBe(Math.round(x / 100));
      }),
    );
  });

  test('a size that rounds to nothing is refused, and the input is left alone', () => {
    const typed = Object.freeze({ x: 0, y: 0, width: 40, length: 1000 });
    expect(() => footprintOfEdges(typed)).toThrow(RangeError);
    expect(() => footprintOfEdges({ ...typed, width: Number.NaN })).toThrow(RangeError);
  });
});
