import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FoundTrouble, troublesOfSeason } from './troubles-of-season';

const rot = (foundSeason: number, change: Partial<FoundTrouble> = {}): FoundTrouble => ({
  troubleKey: 'white-rot',
  frameId: 'f',
  footprint: { xCm: 0, yCm: 0, widthCm: 200, lengthCm: 200 },
  foundSeason,
  breakYears: 8,
  ...change,
});
const footprint = fc.record({
  xCm: fc.nat({ max: 8 }),
  yCm: fc.nat({ max: 8 }),
  widthCm: fc.integer({ min: 1, max: 8 }),
  lengthCm: fc.integer({ min: 1, max: 8 }),
});

describe('the troubles of a season', () => {
  it('are found in it, or wait out their break', () => {
    const waiting = { troubleKey: 'white-rot', found: 0, waitingCm2: 40_000, breakYears: 8 };
    expect(troublesOfSeason([rot(2024)], 2024)).toEqual([{ ...waiting, found: 1 }]);
    expect(troublesOfSeason([rot(2024)], 2026)).toEqual([waiting]);
    expect(troublesOfSeason([rot(2024)], 2032)).toEqual([waiting]);
    expect(troublesOfSeason([rot(2024)], 2033)).toEqual([]);
    expect(troublesOfSeason([rot(2024)], 2023)).toEqual([]);
    expect(troublesOfSeason([rot(1990, { breakYears: null })], 2026)).toMatchObject([{ breakYears: null }]);
  });

  it('cover ground once for a kind, whoever records it again; each kind by itself, each frame by itself', () => {
    expect(troublesOfSeason([rot(2025), rot(2026)], 2026)).toMatchObject([{ found: 1, waitingCm2: 40_000 }]);
    expect(troublesOfSeason([rot(2025), rot(2026, { frameId: 'g' })], 2026)).toMatchObject([{ waitingCm2: 80_000 }]);
    expect(
      troublesOfSeason([rot(2026), rot(2026, { troubleKey: 'clubroot' })], 2026).map(({ waitingCm2 }) => waitingCm2),
    ).toEqual([40_000, 40_000]);
  });

  it('cover as many square centimetres as are counted one by one', () => {
    fc.assert(
      fc.property(fc.array(footprint, { minLength: 1, maxLength: 5 }), (footprints) => {
        const squares = new Set<string>();
        for (const { xCm, yCm, widthCm, lengthCm } of footprints)
          for (let x = xCm; x < xCm + widthCm; x++) for (let y = yCm; y < yCm + lengthCm; y++) squares.add(`${x} ${y}`);
        const [told] = troublesOfSeason(
          footprints.map((one) => rot(2026, { footprint: one })),
          2026,
        );
        expect(told?.waitingCm2).toBe(squares.size);
      }),
    );
  });
});
