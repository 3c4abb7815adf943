import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaCm2, footprint } from '../ground/footprint';
import { dueGround, type Manuring, type PlannedGround } from './turn';
import { turnsAhead } from './turns-ahead';

const ground = footprint(0, 0, 100, 300);
const given = {
  ground,
  plannedIn: (): readonly PlannedGround[] => [],
  firstSeason: 2027,
  seasons: 4,
  intervalYears: 3,
};
const due = (manurings: readonly Manuring[], change: Partial<typeof given> = {}) =>
  turnsAhead({ ...given, ...change, manurings }).map(({ dueCm2 }) => dueCm2);

describe('turns ahead', () => {
  it('come round again after the interval, once what is due was manured', () => {
    expect(due([{ footprint: ground, season: 2024 }])).toEqual([30_000, 0, 0, 30_000]);
    expect(due([{ footprint: ground, season: 2026 }])).toEqual([0, 0, 30_000, 0]);
    expect(due([{ footprint: ground, season: 2026 }], { intervalYears: 1 })).toEqual([30_000, 30_000, 30_000, 30_000]);
  });

  it('wait while a crop takes none, by area', () => {
    const half = { footprint: footprint(0, 0, 100, 150), takesManure: false };
    const plannedIn = (season = 0) => (season < 2029 ? [half] : []);
    expect(due([{ footprint: ground, season: 2020 }], { plannedIn })).toEqual([15_000, 0, 15_000, 15_000]);
  });

  it('leave ground without a record as it is', () => {
    const turns = turnsAhead({ ...given, manurings: [] });
    expect(turns.map(({ unloggedCm2, dueCm2 }) => [unloggedCm2, dueCm2])).toEqual(Array(4).fill([30_000, 0]));
  });

  it('are none for no seasons, and change nothing that they were given', () => {
    const manurings = Object.freeze([{ footprint: ground, season: 2020 }]);
    expect(due(manurings, { seasons: 0 })).toEqual([]);
    expect(due(manurings)).toHaveLength(4);
    expect(() => due(manurings, { intervalYears: 0 })).toThrow(RangeError);
  });

  // Slow and obvious: every square of ten centimetres by itself, remembering when it was last manured.
  it('agree with a square-by-square diary', () => {
    const strip = fc
      .tuple(fc.nat(29), fc.integer({ min: 1, max: 30 }))
      .map(([from, long]) => footprint(0, from * 10, 100, Math.min(long, 30 - from) * 10));
    const done = fc.record({ footprint: strip, season: fc.integer({ min: 2020, max: 2026 }) });
    const plan = fc.record({
      footprint: strip,
      takesManure: fc.boolean(),
      season: fc.integer({ min: 2027, max: 2030 }),
    });
    fc.assert(
      fc.property(
        fc.array(done, { maxLength: 4 }),
        fc.array(plan, { maxLength: 4 }),
        fc.integer({ min: 1, max: 4 }),
        (manurings, plans, intervalYears) => {
          const inRow = (row: number, { yCm, lengthCm }: { yCm: number; lengthCm: number }) =>
            row * 10 >= yCm && row * 10 < yCm + lengthCm;
          const last = Array.from({ length: 30 }, (_, row) =>
            Math.max(0, ...manurings.filter((one) => inRow(row, one.footprint)).map(({ season }) => season)),
          );
          const diary = [2027, 2028, 2029, 2030].map((season) => {
            const refusing = plans.filter((one) => one.season === season && !one.takesManure);
            let rows = 0;
            last.forEach((manured, row) => {
              if (manured === 0 || manured > season - intervalYears) return;
              if (refusing.some((one) => inRow(row, one.footprint))) return;
              last[row] = season;
              rows++;
            });
            return rows * 1000;
          });
          const plannedIn = (season = 0) => plans.filter((one) => one.season === season);
          expect(due(manurings, { intervalYears, plannedIn })).toEqual(diary);
        },
      ),
    );
  });
});

describe('the due pieces of a bed', () => {
  it('sum to what is due', () => {
    const manurings = [
      { footprint: ground, season: 2020 },
      { footprint: footprint(0, 100, 50, 50), season: 2026 },
    ];
    const pieces = dueGround({ ground, manurings, planned: [], season: 2027, intervalYears: 3 });
    expect(pieces.reduce((sum, piece) => sum + areaCm2(piece), 0)).toBe(27_500);
  });
});
