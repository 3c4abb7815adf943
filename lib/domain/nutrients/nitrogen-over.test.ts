import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type CalendarDate, calendarDate } from '../calendar/calendar-date';
import { areaCm2, type Footprint, footprint, overlap } from '../ground/footprint';
import { type NitrogenDressing, nitrogenOver } from './nitrogen-over';

const day = calendarDate;
const bed = footprint(0, 0, 100, 200);
const top = footprint(0, 0, 100, 80);
const bottom = footprint(0, 60, 100, 140);
const dressed = (nitrogenMgPerM2: number | null, on = '2026-11-15', ground = bed): NitrogenDressing => ({
  footprint: ground,
  on: day(on),
  nitrogenMgPerM2,
});

describe('nitrogen over twelve months', () => {
  test('nothing on record: nothing over', () =>
    expect(nitrogenOver(bed, [], 3)).toMatchObject({
      worstMgPerM2: 0,
      timesLimit: 0,
      bedMeanMgPerM2: 0,
      overCm2: 0,
      unknownCm2: 0,
      withinCm2: 20_000,
      pieces: [{ from: null, through: null, unknown: false }],
    }));

  test('the limit itself is kept, a milligram more is over', () => {
    expect(nitrogenOver(bed, [dressed(25_000)], 3)).toMatchObject({ overCm2: 0, timesLimit: 1 });
    expect(nitrogenOver(bed, [dressed(25_001)], 3)).toMatchObject({ overCm2: 20_000, withinCm2: 0 });
  });

  test('several times over, and the mean over the rotation', () =>
    expect(nitrogenOver(bed, [dressed(60_000)], 3)).toMatchObject({
      timesLimit: 2.4,
      worstMeanMgPerM2: 20_000,
      bedMeanMgPerM2: 20_000,
    }));

  test('two dressings meet where their ground does', () => {
    const two = nitrogenOver(bed, [dressed(15_000, '2026-11-15', top), dressed(15_000, '2027-03-01', bottom)], 3);
    expect(two).toMatchObject({ worstMgPerM2: 30_000, overCm2: 2000, withinCm2: 18_000 });
    expect(two.pieces.find(({ mgPerM2 }) => mgPerM2 === 30_000)).toMatchObject({
      footprint: footprint(0, 60, 100, 20),
      from: '2026-11-15',
      through: '2027-03-01',
    });
    // (15 × 60 + 30 × 20 + 15 × 120) ÷ 200, over three years.
    expect(two.bedMeanMgPerM2).toBe(5500);
  });

  test.each([
    ['2027-11-14', 30_000],
    ['2027-11-15', 15_000],
  ])('a year begun on 15 November 2026 ends before %s or not', (second, worst) =>
    expect(nitrogenOver(bed, [dressed(15_000), dressed(15_000, second)], 3).worstMgPerM2).toBe(worst),
  );

  test('what nobody knows is not within, and over all the same where the rest is', () => {
    const some = nitrogenOver(bed, [dressed(null, '2026-11-15', top), dressed(30_000, '2027-01-01', bottom)], 3);
    expect(some).toMatchObject({ overCm2: 14_000, unknownCm2: 6000, withinCm2: 0 });
    expect(some.pieces.map(({ unknown }) => unknown)).toEqual([true, true, false]);
  });

  test('ground elsewhere changes nothing', () =>
    expect(nitrogenOver(bed, [dressed(90_000, '2026-11-15', footprint(100, 0, 50, 50))], 3).worstMgPerM2).toBe(0));

  test('what will not do is refused', () => {
    expect(() => nitrogenOver(bed, [], 0)).toThrow(RangeError);
    expect(() => nitrogenOver(bed, [], 3, 0)).toThrow(RangeError);
    for (const wrong of [-1, 0.5, Number.NaN]) expect(() => nitrogenOver(bed, [dressed(wrong)], 3)).toThrow(RangeError);
  });
});

const ground = footprint(0, 0, 6, 5);
const start = day('2026-01-15');
const some = fc.record({
  x: fc.integer({ min: -2, max: 5 }),
  y: fc.integer({ min: -2, max: 4 }),
  width: fc.integer({ min: 1, max: 6 }),
  length: fc.integer({ min: 1, max: 6 }),
  days: fc.integer({ min: 0, max: 800 }),
  mg: fc.option(fc.integer({ min: 0, max: 30_000 })),
});
const dressings = fc.array(some, { maxLength: 5 }).map((rows) =>
  rows.map(({ x, y, width, length, days, mg }) => ({
    footprint: footprint(x, y, width, length),
    on: addDays(start, days),
    nitrogenMgPerM2: mg,
  })),
);

const twelveMonths = Array.from({ length: 1201 }, (_, at) => {
  const first = addDays(start, at - 400);
  return { first, last: addDays(nextYear(first), -1) };
});

/** The slow way: every square centimetre, and twelve months from every single day. */
function slowly(records: readonly NitrogenDressing[]): number[] {
  const points = Array.from({ length: 30 }, (_, at) => footprint(at % 6, Math.floor(at / 6), 1, 1));
  return points.map((point) => {
    const here = records.filter((one) => overlap(point, one.footprint));
    const sums = twelveMonths.map(({ first, last }) =>
      here
        .filter(({ on }) => on >= first && on <= last)
        .reduce((total, { nitrogenMgPerM2 }) => total + (nitrogenMgPerM2 ?? 0), 0),
    );
    return Math.max(...sums);
  });
}

function nextYear(from: CalendarDate): CalendarDate {
  return from.endsWith('-02-29')
    ? day(`${Number(from.slice(0, 4)) + 1}-03-01`)
    : day(`${Number(from.slice(0, 4)) + 1}${from.slice(4)}`);
}

const total = (pieces: readonly { readonly footprint: Footprint }[]) =>
  pieces.reduce((sum, piece) => sum + areaCm2(piece.footprint), 0);

test('agrees with every point and every day, tried one by one', () => {
  fc.assert(
    fc.property(dressings, (records) => {
      const result = nitrogenOver(ground, records, 3);
      const slow = slowly(records);
      expect(result.worstMgPerM2).toBe(Math.max(...slow));
      expect(result.overCm2).toBe(slow.filter((mg) => mg > 25_000).length);
      expect(result.overCm2 + result.unknownCm2 + result.withinCm2).toBe(30);
      expect(total(result.pieces)).toBe(30);
    }),
    { numRuns: 50 },
  );
});

test('cutting a dressing’s ground in two changes no area and no figure; nor does their order', () => {
  fc.assert(
    fc.property(dressings, fc.integer({ min: 1, max: 5 }), (records, at) => {
      const before = structuredClone(records);
      const cut = records.flatMap((one) => {
        const { xCm, yCm, widthCm, lengthCm } = one.footprint;
        if (at >= lengthCm) return [one];
        return [
          { ...one, footprint: footprint(xCm, yCm, widthCm, at) },
          { ...one, footprint: footprint(xCm, yCm + at, widthCm, lengthCm - at) },
        ];
      });
      const { pieces: _, ...whole } = nitrogenOver(ground, records, 3);
      const { pieces: more, ...parts } = nitrogenOver(ground, [...cut].reverse(), 3);
      expect(parts).toEqual(whole);
      expect(total(more)).toBe(30);
      expect(records).toEqual(before);
    }),
  );
});

test('over one year the mean is the worst, and over more it is never higher', () => {
  fc.assert(
    fc.property(dressings, (records) => {
      const means = [1, 2, 3, 4].map((years) => nitrogenOver(ground, records, years).worstMeanMgPerM2);
      expect(means[0]).toBe(nitrogenOver(ground, records, 1).worstMgPerM2);
      for (const mean of means) expect(mean).toBeLessThanOrEqual(means[0] ?? 0);
    }),
  );
});
