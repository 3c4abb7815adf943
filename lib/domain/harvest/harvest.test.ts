import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { lastSeasonOf } from '../calendar/last-season-of';
import { seasonsOf } from '../calendar/season-of';
import { pieceWeightG } from './piece-weight';
import { yieldsSaidOf } from './published-yield';
import { type PickedPlanting, type Picking, seasonYields } from './season-yields';
import { begunOn, harvestSeason, hasGrown, isPickedOut, standsOn } from './standing-crop';
import { yieldsToPlanBy } from './yields-to-plan-by';

const day = calendarDate;
const leeks: PickedPlanting = {
  id: 'leeks',
  bedId: 'bed',
  cropKey: 'leek',
  areaCm2: 20_000,
  firstSeason: 2026,
  lastSeason: 2026,
  sownOn: null,
  plantedOn: null,
  clearedOn: null,
};
const rhubarb = { ...leeks, id: 'rhubarb', cropKey: 'rhubarb', firstSeason: 2021, lastSeason: 2200 };
const onions = { ...leeks, id: 'onions', cropKey: 'onion', clearedOn: day('2026-08-20') };
const weighed = (amount: number, on: string, plantingId = 'leeks'): Picking => ({
  plantingId,
  amount,
  measure: 'grams',
  on: day(on),
});
const counted = (amount: number, on: string, plantingId = 'onions'): Picking => ({
  ...weighed(amount, on, plantingId),
  measure: 'pieces',
});

describe('what stands', () => {
  it('begins with its first day, or with its season where no day is on record', () => {
    const dated = { ...leeks, sownOn: day('2026-03-10'), plantedOn: day('2026-06-01') };
    expect(begunOn(dated)).toBe('2026-03-10');
    expect(begunOn(leeks)).toBeNull();
    expect([hasGrown(dated, day('2026-03-09')), hasGrown(dated, day('2026-03-10'))]).toEqual([false, true]);
    expect([hasGrown(leeks, day('2025-12-31')), hasGrown(leeks, day('2026-01-01'))]).toEqual([false, true]);
    expect(hasGrown({ ...leeks, cropKey: 'bare' }, day('2026-07-01'))).toBe(false);
  });

  it('ends with the day it was cleared, or when the next season’s window opens', () => {
    const on = (text: string, planting: PickedPlanting = leeks) => standsOn(planting, day(text), '05-01');
    expect([on('2026-01-01'), on('2026-12-31'), on('2027-04-30'), on('2027-05-01')]).toEqual([true, true, true, false]);
    expect([on('2026-08-19', onions), on('2026-08-20', onions)]).toEqual([true, false]);
    expect(on('2030-06-01', rhubarb)).toBe(true);
    // Sown in September for next year, it stands from then on.
    const spinach = { ...leeks, firstSeason: 2027, lastSeason: 2027, sownOn: day('2026-09-10') };
    expect([on('2026-09-09', spinach), on('2026-11-01', spinach)]).toEqual([false, true]);
  });

  it('is picked for the year of the day, within its own seasons', () => {
    expect(harvestSeason(leeks, day('2027-03-01'))).toBe(2026);
    expect(harvestSeason(rhubarb, day('2025-05-01'))).toBe(2025);
    expect(harvestSeason({ firstSeason: 2027, lastSeason: 2027 }, day('2026-11-01'))).toBe(2027);
  });

  it('is picked out once it is cleared, or its year is over', () => {
    expect(isPickedOut(onions, 2026, day('2026-08-19'))).toBe(false);
    expect(isPickedOut(onions, 2026, day('2026-08-20'))).toBe(true);
    expect(isPickedOut(leeks, 2026, day('2026-12-31'))).toBe(false);
    expect(isPickedOut(leeks, 2026, day('2027-01-01'))).toBe(true);
  });
});

describe('the last season of what was cleared', () => {
  const window = { fromMonthDay: '05-01', toMonthDay: '08-31' };

  it('is the last in which it stood within the window', () => {
    expect(lastSeasonOf(2021, day('2026-04-30'), window)).toBe(2025);
    expect(lastSeasonOf(2021, day('2026-05-01'), window)).toBe(2026);
    expect(lastSeasonOf(2026, day('2026-03-01'), window)).toBe(2026);
  });

  it('agrees with that of a planting whose day is on record', () =>
    fc.assert(
      fc.property(fc.integer({ min: 2020, max: 2026 }), fc.integer({ min: 0, max: 2000 }), (year, days) => {
        const sownOn = day(`${year}-05-01`);
        const clearedOn = day(new Date(Date.UTC(year, 4, 1) + days * 86_400_000).toISOString().slice(0, 10));
        const { lastSeason } = seasonsOf({ sownOn, plantedOn: null, clearedOn, window });
        expect(lastSeasonOf(year, clearedOn, window)).toBe(lastSeason);
      }),
    ));
});

describe('the yields of seasons', () => {
  const today = day('2026-11-28');

  it('count what stood for years in each year by itself', () =>
    expect(
      seasonYields(
        [rhubarb],
        [weighed(3_000, '2025-05-02', 'rhubarb'), weighed(4_000, '2026-05-02', 'rhubarb')],
        today,
      ).map(({ season, perM2, isSoFar }) => [season, perM2, isSoFar]),
    ).toEqual([
      [2025, 1_500, false],
      [2026, 2_000, true],
    ]));

  it('say where more may come', () => {
    const soFar = (planting: PickedPlanting) =>
      seasonYields([planting], [weighed(900, '2026-10-01', planting.id)], today)[0]?.isSoFar;
    expect([soFar(leeks), soFar(onions)]).toEqual([true, false]);
  });

  it('refuse what came from nowhere, and what stands twice', () => {
    expect(() => seasonYields([], [weighed(1, '2026-10-01')], today)).toThrow(RangeError);
    expect(() => seasonYields([leeks, leeks], [], today)).toThrow(RangeError);
  });

  it('lose nothing of what was picked, and never more ground than there is for a season', () =>
    fc.assert(
      fc.property(fc.array(fc.record({ amount: fc.nat(9_000), month: fc.integer({ min: 0, max: 70 }) })), (list) => {
        const pickings = list.map(({ amount, month }) =>
          weighed(
            amount,
            `${2021 + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}-15`,
            'rhubarb',
          ),
        );
        const found = seasonYields([rhubarb], pickings, today);
        const sum = (rows: readonly { amount: number }[]) => rows.reduce((total, { amount }) => total + amount, 0);
        expect(sum(found)).toBe(sum(pickings));
        for (const { areaCm2 } of found) expect(areaCm2).toBe(rhubarb.areaCm2);
      }),
    ));
});

describe('the weight of a piece', () => {
  it.each([
    ['onion', 120],
    ['leek', 200],
    ['maincrop-potato', 120],
    ['winter-squash', null],
    ['courgette', null],
    ['pepper', null],
    ['french-bean', null],
    ['lettuce', null],
    ['nobody-knows', null],
  ])('of %s is %s g', (cropKey, grams) => expect(pieceWeightG(cropKey)).toBe(grams));
});

describe('yields to plan by', () => {
  const today = day('2026-11-28');
  const squash = { ...onions, id: 'squash', cropKey: 'winter-squash' };

  it('weigh what was counted, where a piece has a known weight', () => {
    expect(yieldsToPlanBy([onions], [counted(40, '2026-08-20')], today)).toEqual([2_400]);
    expect(
      yieldsToPlanBy([onions], [counted(40, '2026-08-20'), weighed(1_200, '2026-08-19', 'onions')], today),
    ).toEqual([3_000]);
  });

  it('leave out a bed where a count can’t be weighed, though more of it was weighed', () => {
    const part = [counted(3, '2026-08-20', 'squash'), weighed(9_000, '2026-08-20', 'squash')];
    expect(yieldsToPlanBy([squash], part, today)).toEqual([]);
    expect(yieldsToPlanBy([squash], part.slice(1), today)).toEqual([4_500]);
  });

  it('leave out what still stands, a failed crop, and what is older than five seasons', () => {
    expect(yieldsToPlanBy([leeks], [weighed(4_000, '2026-10-01')], today)).toEqual([]);
    expect(yieldsToPlanBy([onions], [weighed(0, '2026-08-20', 'onions')], today)).toEqual([]);
    const years = [2019, 2020, 2021, 2022, 2026];
    const each = years.map((year) => ({ ...leeks, id: String(year), firstSeason: year, lastSeason: year }));
    const picked = years.map((year) => weighed(year, `${year}-10-01`, String(year)));
    expect(yieldsToPlanBy(each, picked, day('2027-02-01'))).toEqual([1_011, 1_013]);
  });

  it('are of one crop at a time, and none of none', () => {
    expect(() => yieldsToPlanBy([leeks, onions], [], today)).toThrow(RangeError);
    expect(yieldsToPlanBy([], [], today)).toEqual([]);
  });
});

describe('what is said of a crop’s yield', () => {
  it('is told of gardens first, then of fields, each the right way round', () => {
    expect(yieldsSaidOf('parsnip').map(({ from, source }) => [from, source])).toEqual([
      ['gardens', 'maine-planting'],
      ['fields', 'ecocrop-parsnip'],
      ['fields', 'duev-vegetables'],
    ]);
    for (const key of ['carrot', 'calabrese', 'tomato', 'leek', 'rhubarb', 'maincrop-potato'])
      for (const { leastGPerM2, mostGPerM2 } of yieldsSaidOf(key)) {
        expect(leastGPerM2).toBeGreaterThan(0);
        expect(mostGPerM2).toBeGreaterThanOrEqual(leastGPerM2);
      }
  });

  it('is nothing where nobody prints any', () => expect(yieldsSaidOf('nobody-knows')).toEqual([]));
});
