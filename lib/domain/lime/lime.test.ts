import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, calendarDate } from '../calendar/calendar-date';
import {
  classOfTexture,
  type LimeTexture,
  limeClasses,
  limeSteps,
  limeTargets,
  textureOfSoil,
} from '../catalogue/lime-tables';
import { soils } from '../catalogue/soils';
import { sources } from '../catalogue/sources';
import { limeAndManure, testableFrom } from './lime-and-manure';
import { dressingsOf } from './lime-dressings';
import { limeByBufferPh, limeByClass, limeNeed } from './lime-need';

const textures = Object.keys(classOfTexture) as LimeTexture[];
const day = calendarDate;

describe('lime need', () => {
  test('sums the steps that lie between, by the straight line inside them', () => {
    expect(limeNeed('loam', 45, 65)).toMatchObject({ gPerM2: 350, reasons: [] });
    expect(limeNeed('loam', 58, 65)).toMatchObject({ gPerM2: 140, reasons: ['between-rows'] });
    expect(limeNeed('loam', 50, 60)).toMatchObject({ gPerM2: 75 + 100, reasons: ['between-rows'] });
  });

  test('carries on beyond the table, and says so', () => {
    expect(limeNeed('sand', 55, 72)).toMatchObject({ gPerM2: 128, reasons: ['beyond-table'] });
    expect(limeNeed('sand', 40, 55)).toMatchObject({ gPerM2: 75, reasons: ['beyond-table'] });
    expect(limeNeed('sand', 40, 60).reasons).toEqual(['between-rows', 'beyond-table']);
  });

  test('is nothing at the target and above', () => {
    expect(limeNeed('clay-loam', 65, 65)).toMatchObject({ gPerM2: 0, reasons: ['none-needed'] });
    expect(limeNeed('clay-loam', 90, 30).gPerM2).toBe(0);
    // One source would go on liming: up to pH 7.0 in potassium chloride on heavy soil.
    expect(limeNeed('clay-loam', 75, 65).otherwise.map(({ mostGPerM2 }) => mostGPerM2)).toEqual([0, 536]);
    expect(limeNeed('clay-loam', 90, 65).otherwise.every(({ reasons }) => reasons.includes('none-needed'))).toBe(true);
  });

  test('stands beside other sources’, of which one has a range from pH in water', () => {
    const [slope, classes] = limeNeed('loam', 58, 67).otherwise;
    expect(slope).toEqual({ leastGPerM2: 540, mostGPerM2: 540, source: 'uk-lime-guide', reasons: [] });
    // pH 5.3 to 4.8 in potassium chloride: needed to necessary, 3.0 to 4.5 t CaO/ha.
    expect(classes).toEqual({
      leastGPerM2: 536,
      mostGPerM2: 803,
      source: 'iung-lime',
      reasons: ['own-target', 'ph-lowered-from-memory'],
    });
    expect(limeNeed('loam', 58, 65).otherwise[0]?.reasons).toEqual(['beyond-table']);
  });

  test.each([29, 91, 58.5, Number.NaN])('pH of %s tenths is refused', (tenths) => {
    expect(() => limeNeed('loam', tenths, 65)).toThrow(RangeError);
    expect(() => limeNeed('loam', 55, tenths)).toThrow(RangeError);
    expect(() => limeByBufferPh(tenths)).toThrow(RangeError);
  });

  test('never falls as soil is sourer, the target higher or the texture heavier', () => {
    const ph = fc.integer({ min: 30, max: 90 });
    fc.assert(
      fc.property(ph, ph, fc.integer({ min: 0, max: textures.length - 1 }), (from, to, at) => {
        const texture = textures[at] ?? 'sand';
        const need = limeNeed(texture, from, to).gPerM2;
        if (from > 30) expect(limeNeed(texture, from - 1, to).gPerM2).toBeGreaterThanOrEqual(need);
        if (to < 90) expect(limeNeed(texture, from, to + 1).gPerM2).toBeGreaterThanOrEqual(need);
        expect(limeNeed(textures[at + 1] ?? texture, from, to).gPerM2).toBeGreaterThanOrEqual(need);
      }),
    );
  });

  // The slow way: a tenth of pH at a time, each by the row it lies in.
  test('is the sum of its tenths', () => {
    const ph = fc.integer({ min: 30, max: 90 });
    fc.assert(
      fc.property(ph, ph, fc.constantFrom(...textures), (from, to, texture) => {
        const [low, high] = limeSteps.rows;
        let tenthsOfGram = 0;
        for (let tenth = from; tenth < to; tenth++) tenthsOfGram += (tenth < 55 ? low : high)?.gPerM2[texture] ?? 0;
        expect(limeNeed(texture, from, to).gPerM2).toBe(Math.round(tenthsOfGram / 10));
      }),
    );
  });
});

describe('lime by class and by buffer', () => {
  test('each class to its last tenth', () => {
    expect(limeByClass('very-light', 40)).toMatchObject({ need: 'necessary', oxideGPerM2: 300, mostAtOnceGPerM2: 268 });
    expect(limeByClass('very-light', 41)).toMatchObject({ need: 'needed', oxideGPerM2: 200 });
    expect(limeByClass('very-light', 51)).toMatchObject({ need: null, oxideGPerM2: 0, carbonateGPerM2: 0 });
    expect(limeByClass('heavy', 70)).toMatchObject({ need: 'limited', oxideGPerM2: 150 });
    expect(() => limeByClass('heavy', -1)).toThrow(RangeError);
  });

  test('buffer pH short of the target, and none beyond it', () => {
    expect(limeByBufferPh(66)).toBe(125);
    expect(limeByBufferPh(67)).toBe(0);
    expect(limeByBufferPh(70)).toBe(0);
    expect(limeByBufferPh(60, 65)).toBe(625);
  });
});

describe('dressings', () => {
  test.each([
    [0, []],
    [1, [1]],
    [500, [500]],
    [501, [251, 250]],
    [1500, [750, 750]],
    [1501, [501, 500, 500]],
  ])('%s g/m²', (gPerM2, parts) => expect(dressingsOf(gPerM2)).toEqual(parts));

  test('sum exactly, none above the ceiling, equal within a gram', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), (gPerM2) => {
        const parts = dressingsOf(gPerM2);
        expect(parts.reduce((sum, part) => sum + part, 0)).toBe(gPerM2);
        expect(Math.max(...parts)).toBeLessThanOrEqual(750);
        expect(Math.max(...parts) - Math.min(...parts)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test.each([-1, 0.5, Number.NaN])('%s is refused', (wrong) => expect(() => dressingsOf(wrong)).toThrow(RangeError));
});

describe('lime and manure', () => {
  const apart = (limedOn: string, manuredOn: string) =>
    limeAndManure({ limedOn: day(limedOn), manuredOn: day(manuredOn) });

  test('lime, then manure: three months, six at the other end', () => {
    expect(apart('2026-11-01', '2027-02-01')).toMatchObject({ order: 'lime-first', verdict: 'ok', days: 92 });
    expect(apart('2026-11-01', '2027-01-31')).toMatchObject({
      verdict: 'too-soon',
      days: 91,
      daysWanted: 92,
      earliestOn: '2027-02-01',
      source: 'teagasc-slurry',
    });
    expect(apart('2026-11-01', '2027-02-01').waits.map(({ earliestOn, kept }) => [earliestOn, kept])).toEqual([
      ['2027-02-01', true],
      ['2027-05-01', false],
    ]);
  });

  test('manure, then lime: as long as a test waits; a week is published for slurry', () => {
    expect(apart('2027-01-15', '2026-11-15')).toMatchObject({
      order: 'manure-first',
      verdict: 'too-soon',
      earliestOn: '2027-02-15',
      source: 'rhs-lime',
    });
    expect(apart('2027-02-15', '2026-11-15').verdict).toBe('ok');
    expect(apart('2026-11-22', '2026-11-15').waits[0]).toMatchObject({ code: 'slurry', kept: true });
    expect(apart('2026-11-21', '2026-11-15').waits[0]?.kept).toBe(false);
  });

  test('never together', () => {
    expect(apart('2026-11-15', '2026-11-15')).toMatchObject({ order: 'same-day', verdict: 'too-soon', days: 0 });
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 400 }), (days) => {
        const { verdict, earliestOn } = limeAndManure({
          limedOn: day('2026-06-15'),
          manuredOn: addDays(day('2026-06-15'), days),
        });
        if (Math.abs(days) < 89) expect(verdict).toBe('too-soon');
        if (Math.abs(days) > 92) expect(verdict).toBe('ok');
        expect(earliestOn > (days < 0 ? addDays(day('2026-06-15'), days) : '2026-06-15')).toBe(true);
      }),
    );
  });

  test('a test means something again after three months', () =>
    expect(testableFrom(day('2026-11-30'))).toBe('2027-02-28'));
});

test('the tables run from sour to sweet, each soil has its column, and targets have their sources', () => {
  for (const { doses } of limeClasses.rows) {
    const phs = doses.map(({ toPhTenths }) => toPhTenths);
    expect(phs).toEqual([...phs].sort((a, b) => a - b));
  }
  expect(soils.map(({ key }) => textureOfSoil[key] === null)).toEqual(soils.map(({ key }) => key === 'peaty'));
  for (const target of Object.values(limeTargets))
    if (target) expect(Object.hasOwn(sources, target.source) && target.leastPhTenths <= target.mostPhTenths).toBe(true);
  expect(limeTargets.potatoes).toBeNull();
});
