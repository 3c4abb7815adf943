import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadMassG } from './load-mass';

const barrow = { barrowLitres: 85, densityGPerL: 400 };

describe('what a load weighs', () => {
  it('is the barrow’s, or the bale’s own', () => {
    expect(loadMassG(barrow)).toBe(34_000);
    expect(loadMassG({ ...barrow, loadUnit: 'barrow', baleMassG: null })).toBe(34_000);
    expect(loadMassG({ ...barrow, loadUnit: 'bale', baleMassG: 13_000 })).toBe(13_000);
  });

  it('does not ask what a barrow holds where bales come', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900_000 }), fc.integer({ min: 1, max: 300 }), (baleMassG, barrowLitres) => {
        expect(loadMassG({ barrowLitres, densityGPerL: 70, loadUnit: 'bale', baleMassG })).toBe(baleMassG);
        expect(loadMassG({ barrowLitres, densityGPerL: 70, baleMassG })).toBe(70 * barrowLitres);
      }),
    );
  });

  it('refuses a bale without a weight, and a barrow that holds nothing', () => {
    expect(() => loadMassG({ ...barrow, loadUnit: 'bale' })).toThrow(RangeError);
    expect(() => loadMassG({ ...barrow, loadUnit: 'bale', baleMassG: 0.5 })).toThrow(RangeError);
    expect(() => loadMassG({ ...barrow, barrowLitres: 0 })).toThrow(RangeError);
  });
});
