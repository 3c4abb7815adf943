import { describe, expect, it } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { footprint } from '../ground/footprint';
import { bedBalances } from './bed-balance';
import { dressingOn, type FeedingWork } from './dressing-on';

const ground = footprint(0, 0, 300, 400);
const half = footprint(0, 0, 300, 200);
const manure: FeedingWork = {
  id: 'manure',
  footprint: ground,
  season: 2027,
  doneOn: calendarDate('2026-11-10'),
  materialKey: 'horse-manure',
  massG: 60_000,
  ageMonths: 8,
  incorporated: true,
};
const on = (change: Partial<FeedingWork> = {}) => dressingOn({ ...manure, ...change }, 'medium-heavy');
const leeks = [{ footprint: ground, cropKey: 'leek' }];

describe('a logged dressing', () => {
  it('is its weight over its ground', () => {
    expect(on()).toMatchObject({ rateGPerM2: 5000, on: '2026-11-10', reasons: [] });
    expect(on().supply?.nitrogen?.mgPerM2).toBe(25_000);
    expect(on({ footprint: half }).rateGPerM2).toBe(10_000);
    expect(on({ massG: 0 }).supply?.nitrogen?.mgPerM2).toBe(0);
  });

  it('says what was not on record, and leaves it open', () => {
    expect(on({ massG: null })).toMatchObject({ rateGPerM2: null, supply: null, reasons: ['amount-not-known'] });
    expect(on({ materialKey: null })).toMatchObject({ supply: null, reasons: ['material-not-known'] });
    expect(on({ materialKey: 'gravel' })).toMatchObject({ supply: null, reasons: ['material-not-known'] });
    expect(on({ doneOn: null, ageMonths: null })).toMatchObject({
      on: '2026-11-01',
      reasons: ['day-assumed', 'age-assumed'],
    });
    expect(on({ materialKey: 'hoof-and-horn', ageMonths: null }).reasons).toEqual([]);
  });

  it('is fresh under three months, which tells in spring', () => {
    const inMarch = (ageMonths: number | null) =>
      on({ doneOn: calendarDate('2027-03-10'), ageMonths }).supply?.firstYear?.mgPerM2;
    expect([inMarch(2), inMarch(3), inMarch(null)]).toEqual([3750, 2500, 2500]);
  });

  it('takes no weight and no age that is none', () => {
    expect(() => on({ massG: -1 })).toThrow(RangeError);
    expect(() => on({ massG: 1.5 })).toThrow(RangeError);
    expect(() => on({ ageMonths: -1 })).toThrow(RangeError);
  });
});

describe('what feeds a bed', () => {
  const balances = (dressings: ReturnType<typeof on>[], crops = leeks) =>
    bedBalances({ ground, season: 2027, dressings, crops });

  it('stands beside what its crop demands', () => {
    const [piece, ...others] = balances([on()]);
    expect(others).toEqual([]);
    expect(piece).toMatchObject({ areaCm2: 120_000, cropKey: 'leek', workIds: ['manure'] });
    expect(piece?.balance.nitrogen).toEqual({ mgPerM2: 2500, leastMgPerM2: 2500, mostMgPerM2: 6250 });
    expect(piece?.balance.demands[0]?.totalNitrogenMgPerM2).toBe(25_000);
  });

  it('is told by area where only part was dressed', () => {
    const pieces = balances([on({ footprint: half, massG: 30_000 })]);
    expect(pieces.map(({ areaCm2, workIds }) => [areaCm2, workIds])).toEqual([
      [60_000, ['manure']],
      [60_000, []],
    ]);
    expect(pieces[1]?.balance.nitrogen?.mgPerM2).toBe(0);
  });

  it('gathers what is alike, however it is cut', () => {
    const middle = { footprint: footprint(100, 0, 100, 400), cropKey: 'leek' };
    const around = [footprint(0, 0, 100, 400), footprint(200, 0, 100, 400)];
    const pieces = balances([on()], [middle, ...around.map((one) => ({ footprint: one, cropKey: 'kale' }))]);
    expect(pieces.map(({ areaCm2, cropKey }) => [areaCm2, cropKey])).toEqual([
      [80_000, 'kale'],
      [40_000, 'leek'],
    ]);
  });

  it('has a line for each of two crops on the same ground, and one for none', () => {
    expect(balances([], [...leeks, { footprint: ground, cropKey: 'spinach' }]).map(({ cropKey }) => cropKey)).toEqual([
      'leek',
      'spinach',
    ]);
    expect(balances([], [])).toMatchObject([{ cropKey: null, areaCm2: 120_000, balance: { demands: [] } }]);
  });

  it('carries over a tenth of last year’s, as far as anybody knows', () => {
    const lastYear = (change: Partial<FeedingWork>) => balances([on({ season: 2026, ...change })])[0]?.balance;
    expect(lastYear({})).toMatchObject({ lastYearMgPerM2: 2500, nitrogen: { mgPerM2: 2500 } });
    expect(lastYear({ season: 2025 })).toMatchObject({ lastYearMgPerM2: 0 });
    expect(lastYear({ massG: null })).toMatchObject({ lastYearMgPerM2: null });
    expect(balances([on()])[0]?.balance.lastYearMgPerM2).toBeNull();
    expect(balances([on({ season: 2028 })])[0]).toMatchObject({ workIds: [], balance: { lastYearMgPerM2: null } });
  });

  it('is not known where a dressing is not', () => {
    expect(balances([on(), on({ id: 'more', materialKey: null })])[0]?.balance).toMatchObject({
      nitrogen: null,
      phosphate: null,
    });
  });
});
