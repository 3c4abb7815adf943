import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apartShown, apartTyped } from './apart-typed';

describe('how far apart', () => {
  it.each([
    ['30', 'metric', 30],
    ['2,5', 'metric', 3],
    ['12 in', 'metric', 30],
    ['6', 'imperial', 15],
    ['1 ½', 'imperial', 4],
    ['1 ft', 'imperial', 30],
    ['15 cm', 'imperial', 15],
    ['500', 'metric', 500],
  ] as const)('%s in %s is %d cm', (typed, units, apartCm) => expect(apartTyped(typed, units)).toBe(apartCm));

  it.each(['', '0', '-5', '501', 'wide', '6 m', '1e3'])('%s is none', (typed) =>
    expect(apartTyped(typed, 'metric')).toBeNull(),
  );

  it('comes back as it was typed, in whole centimetres or half inches', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (apartCm) => {
        expect(apartTyped(apartShown(apartCm, 'metric'), 'metric')).toBe(apartCm);
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 390 }), (halves) => {
        const typed = String(halves / 2);
        expect(apartShown(apartTyped(typed, 'imperial') ?? 0, 'imperial')).toBe(typed);
      }),
    );
  });
});
