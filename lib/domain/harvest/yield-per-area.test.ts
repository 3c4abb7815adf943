import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HarvestRecord, yieldsPerArea } from './yield-per-area';

const leeks = { id: 'leeks', bedId: 'bed', cropKey: 'leek', season: 2026, areaCm2: 10_000 };
const picked = (amount: number, plantingId = 'leeks', measure: HarvestRecord['measure'] = 'grams') => ({
  plantingId,
  measure,
  amount,
});

describe('what ground yielded', () => {
  it('is all that was picked off it, on a square metre', () =>
    expect(yieldsPerArea([leeks], [picked(1_200), picked(800)])).toEqual([
      {
        bedId: 'bed',
        cropKey: 'leek',
        season: 2026,
        measure: 'grams',
        amount: 2_000,
        areaCm2: 10_000,
        perM2: 2_000,
        harvests: 2,
      },
    ]));

  it('gathers the plantings of one crop on one bed, but for those that nothing was picked from', () => {
    const plantings = [leeks, { ...leeks, id: 'more', areaCm2: 5_000 }, { ...leeks, id: 'unpicked', areaCm2: 90_000 }];
    expect(yieldsPerArea(plantings, [picked(1_200), picked(800, 'more')])).toMatchObject([
      { amount: 2_000, areaCm2: 15_000, perM2: 1_333 },
    ]);
  });

  it('keeps beds, crops, seasons and measures apart, the earliest season first', () => {
    const plantings = [
      leeks,
      { ...leeks, id: 'other-bed', bedId: 'bed-2' },
      { ...leeks, id: 'kale', cropKey: 'kale' },
      { ...leeks, id: 'last-year', season: 2025 },
    ];
    const records = [
      picked(1),
      picked(2, 'other-bed'),
      picked(3, 'kale'),
      picked(4, 'last-year'),
      picked(5, 'leeks', 'pieces'),
    ];
    expect(yieldsPerArea(plantings, records).map(({ amount }) => amount)).toEqual([4, 3, 1, 5, 2]);
  });

  it('is a crop failure where nothing but nothing was picked', () =>
    expect(yieldsPerArea([leeks], [picked(0)])).toMatchObject([{ amount: 0, perM2: 0 }]));

  it('refuses what came from nowhere, and measures that are none', () => {
    expect(() => yieldsPerArea([], [picked(1)])).toThrow(RangeError);
    expect(() => yieldsPerArea([leeks, leeks], [])).toThrow(RangeError);
    expect(() => yieldsPerArea([leeks], [picked(-1)])).toThrow(RangeError);
    expect(() => yieldsPerArea([{ ...leeks, areaCm2: 0 }], [picked(1)])).toThrow(RangeError);
  });

  it('loses nothing, in whatever order it was written down', () => {
    const plantings = ['a', 'b', 'c', 'd'].map((id, at) => ({
      ...leeks,
      id,
      bedId: at % 2 ? 'odd' : 'even',
      areaCm2: 100 + at,
    }));
    const records = fc.array(
      fc.record({
        plantingId: fc.constantFrom('a', 'b', 'c', 'd'),
        measure: fc.constantFrom('grams' as const, 'pieces' as const),
        amount: fc.nat(10_000),
      }),
    );
    fc.assert(
      fc.property(records, (list) => {
        const found = yieldsPerArea(plantings, list);
        for (const measure of ['grams', 'pieces']) {
          const sum = (rows: readonly { measure: string; amount: number }[]) =>
            rows.filter((row) => row.measure === measure).reduce((total, { amount }) => total + amount, 0);
          expect(sum(found)).toBe(sum(list));
        }
        expect(yieldsPerArea([...plantings].reverse(), [...list].reverse())).toEqual(found);
      }),
    );
  });
});
