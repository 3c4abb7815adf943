import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { storeLot } from '@/tests/fixtures/store-lots';
import { householdUse } from './household-use';
import { wantedArea } from './wanted-area';

type Asked = Parameters<typeof wantedArea>[0];
const saidUse = (keepingKey: string, said: number) => {
  const use = householdUse([storeLot({ keepingKey })], said);
  if (!use) throw new Error('a use that was said is known');
  return use;
};
const asked = (overrides: Partial<Asked> = {}) =>
  wantedArea({
    keepingKey: 'onion',
    use: saidUse('onion', 7),
    days: 200,
    pieceG: 100,
    placeTenthC: 0,
    yieldsGPerM2: [2_500],
    ...overrides,
  });
const wanted = (overrides: Partial<Asked> = {}) => {
  const found = asked(overrides);
  if (found.code !== 'wanted') throw new Error(found.code);
  return found;
};

describe('how much to grow', () => {
  it('is the use and what goes bad meanwhile, as a range', () => {
    // One onion a day of 100 g for 200 days is 20 kg.
    const { massG } = wanted();
    expect(massG.median).toBeGreaterThan(20_000);
    expect(massG.median).toBeLessThan(24_000);
    expect(massG.least < massG.median && massG.median < massG.most).toBe(true);
  });

  it('is ground by what it yielded, and none without', () => {
    const { massG, areaCm2 } = wanted();
    expect(Math.abs((areaCm2?.median ?? 0) / (massG.median * 4) - 1)).toBeLessThan(0.05);
    expect(wanted({ yieldsGPerM2: [] }).areaCm2).toBeNull();
  });

  it('is surer with several years of yields alike, and less sure where they differ', () => {
    const width = (yieldsGPerM2: readonly number[]) => {
      const { areaCm2 } = wanted({ yieldsGPerM2 });
      return (areaCm2?.most ?? 0) / (areaCm2?.least ?? 1);
    };
    expect(width([2_500, 2_500, 2_500, 2_500])).toBeLessThan(width([2_500]));
    expect(width([500, 5_000, 1_000, 8_000])).toBeGreaterThan(width([2_500]));
  });

  it('is more for a longer winter, and no answer for one that outlasts the crop', () => {
    expect(wanted({ days: 250 }).massG.median).toBeGreaterThan(wanted().massG.median);
    expect(asked({ keepingKey: 'fresh-chilli', use: saidUse('fresh-chilli', 7), days: 120 })).toMatchObject({
      code: 'does-not-keep-so-long',
    });
  });

  it('is about as much as what lasts so long', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 20, max: 250 }), (said, days) => {
        const { massG } = wanted({ use: saidUse('onion', said), days });
        const plain = (said / 7) * days * 100;
        expect(massG.median).toBeGreaterThan(0.9 * plain);
        expect(massG.least).toBeLessThanOrEqual(massG.median);
        expect(massG.most).toBeGreaterThanOrEqual(massG.median);
      }),
      { numRuns: 40 },
    );
  });

  it.each([
    { days: 0 },
    { days: 1.5 },
    { days: 1_097 },
    { pieceG: 0 },
    { yieldsGPerM2: [0] },
    { keepingKey: 'nobody-knows' },
  ])('refuses %j', (overrides) => expect(() => asked(overrides)).toThrow(RangeError));
});
