import { describe, expect, it } from 'vitest';
import { massPutG } from './mass-put';

const loads = (count: number) => massPutG({ by: 'loads', loads: count, barrowLitres: 85, densityGPerL: 400 });
const rate = (rateGPerM2: number, areaCm2 = 120_000) => massPutG({ by: 'rate', rateGPerM2, areaCm2 });

describe('the weight put on ground', () => {
  it('by loads, by weight and by rate', () => {
    expect([loads(0), loads(1), loads(9999)]).toEqual([0, 34_000, 339_966_000]);
    expect(massPutG({ by: 'weight', massG: 510 })).toBe(510);
    expect([rate(0), rate(5000), rate(1, 4999), rate(1, 5000)]).toEqual([0, 60_000, 0, 1]);
  });

  it('is refused where it is none', () => {
    const nothing = { by: 'loads' as const, loads: 1, barrowLitres: 85, densityGPerL: 400 };
    for (const wrong of [{ loads: -1 }, { loads: 0.5 }, { barrowLitres: 0 }, { densityGPerL: 0 }])
      expect(() => massPutG({ ...nothing, ...wrong })).toThrow(RangeError);
    expect(() => massPutG({ by: 'weight', massG: Number.NaN })).toThrow(RangeError);
    expect(() => rate(5000, 0)).toThrow(RangeError);
    expect(() => rate(Number.MAX_SAFE_INTEGER, Number.MAX_SAFE_INTEGER)).toThrow(RangeError);
  });
});
