import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { addDays, calendarDate, daysBetween } from '../calendar/calendar-date';
import { isMonthDay } from '../calendar/month-day';
import { crops } from '../catalogue/crops';
import { referenceFrosts, windows } from '../catalogue/windows';
import { sowingState } from './sowing-state';
import { type Frosts, takesGround, windowsOf } from './windows-of';

const day = calendarDate;
const anyCrop = fc.constantFrom(...crops.map(({ key }) => key));
const anySeason = fc.integer({ min: 1990, max: 2090 });
const monthDayFrom = (from: string, days: number) =>
  fc.integer({ min: 0, max: days }).map((on) => addDays(day(`2027-${from}`), on).slice(5));
const anyFrosts: fc.Arbitrary<Frosts> = fc.record({
  lastFrost: monthDayFrom('02-01', 149),
  firstFrost: monthDayFrom('08-01', 152),
});

describe('the catalogue’s windows', () => {
  it('tell of every crop, and how each way takes its ground', () => {
    for (const { key, stands } of crops) {
      const ways = windowsOf(key, 2027, referenceFrosts);
      expect([key, ways.length > 0]).toEqual([key, true]);
      for (const { windows: own } of ways) {
        expect([key, own.some(({ step }) => takesGround(step))]).toEqual([key, true]);
        if (!stands) expect([key, own.filter(({ step }) => step === 'clear').length]).toEqual([key, 1]);
      }
    }
  });

  it('tell of no crop that there is not, and of days that there are in every year', () => {
    const keys = new Set(crops.map(({ key }) => key));
    for (const { cropKeys, from, to } of windows) {
      expect(cropKeys.filter((key) => !keys.has(key))).toEqual([]);
      expect([from, to].every(isMonthDay)).toBe(true);
    }
  });
});

describe('windowsOf', () => {
  const garlic = windowsOf('garlic', 2027, { lastFrost: '06-01', firstFrost: '09-20' });

  test('garlic stays where it is, whatever the frosts', () =>
    expect(garlic.map(({ way, windows: own }) => [way, ...own.map(({ from, to }) => `${from} ${to}`)])).toEqual([
      ['autumn', '2026-10-01 2026-11-30', '2027-07-01 2027-07-31'],
      ['spring', '2027-02-01 2027-03-15', '2027-07-15 2027-08-15'],
    ]));

  test('courgettes move with both frosts', () => {
    const [way] = windowsOf('courgette', 2027, { lastFrost: '05-11', firstFrost: '10-10' });
    expect(way?.windows.map(({ step, from, to, movedDays }) => [step, from, to, movedDays])).toEqual([
      ['under-cover', '2027-04-20', '2027-05-25', 10],
      ['in-place', '2027-05-30', '2027-06-30', 10],
      ['plant-out', '2027-05-30', '2027-06-30', 10],
      ['clear', '2027-06-21', '2027-10-21', -10],
    ]);
  });

  test('what stands over the winter ends in the next year', () =>
    expect(windowsOf('parsnip', 2027, referenceFrosts)[0]?.windows.at(-1)).toMatchObject({
      from: '2027-11-01',
      to: '2028-03-31',
    }));

  test('where the frosts leave no time, it says by how much', () => {
    const at = (lastFrost: string, firstFrost: string) => windowsOf('winter-squash', 2027, { lastFrost, firstFrost });
    // 20 May to 31 October are 164 days, 15 June to 31 October 138: 26 to spare.
    expect(at('05-14', '10-07')[0]?.shortDays).toBe(0);
    expect(at('05-14', '10-06')[0]?.shortDays).toBe(1);
    expect(at('06-10', '09-20')[0]?.shortDays).toBe(44);
  });

  test('a crop that nobody knows has none', () => expect(windowsOf('triffid', 2027, referenceFrosts)).toEqual([]));

  test.each(['02-29', '', '5-1'])('%j is no frost', (lastFrost) =>
    expect(() => windowsOf('garlic', 2027, { ...referenceFrosts, lastFrost })).toThrow(RangeError),
  );

  it('moves what hangs on a frost by as many days as the frost, and nothing else', () => {
    fc.assert(
      fc.property(anyCrop, anySeason, anyFrosts, (cropKey, season, frosts) => {
        const apart = (frost: keyof Frosts) =>
          daysBetween(day(`2027-${referenceFrosts[frost]}`), day(`2027-${frosts[frost]}`));
        const moves = { 'last-frost': apart('lastFrost'), 'first-frost': apart('firstFrost'), calendar: 0 };
        const [printed, own] = [referenceFrosts, frosts].map((one) =>
          windowsOf(cropKey, season, one).flatMap((way) => way.windows),
        );
        own?.forEach((window, at) => {
          const before = printed?.[at];
          if (!before) throw new Error('a window too many');
          expect(window.movedDays).toBe(moves[window.hangsOn]);
          expect(daysBetween(before.from, window.from)).toBe(moves[window.hangsOn]);
          expect(daysBetween(before.to, window.to)).toBe(moves[window.hangsOn]);
        });
        expect(own?.length).toBe(printed?.length);
      }),
    );
  });

  it('keeps sowing before planting and planting before the end of clearing, where the season is long enough', () => {
    fc.assert(
      fc.property(anyCrop, anySeason, anyFrosts, (cropKey, season, frosts) => {
        for (const { windows: own, shortDays } of windowsOf(cropKey, season, frosts)) {
          for (const { from, to } of own) expect(from <= to).toBe(true);
          const sown = own.filter(({ step }) => step === 'under-cover' || step === 'seedbed');
          const into = own.filter(({ step }) => takesGround(step));
          const cleared = own.find(({ step }) => step === 'clear');
          for (const seed of sown.filter(({ hangsOn }) => into.every((one) => one.hangsOn === hangsOn)))
            expect(into.filter(({ step }) => step === 'plant-out').every(({ from }) => seed.from <= from)).toBe(true);
          if (shortDays === 0 && cleared) expect(into.some(({ from }) => from <= cleared.to)).toBe(true);
        }
      }),
    );
  });

  it('is short of nothing at the reference frosts', () => {
    for (const { key } of crops)
      for (const { shortDays } of windowsOf(key, 2027, referenceFrosts)) expect([key, shortDays]).toEqual([key, 0]);
  });
});

describe('sowingState', () => {
  const window = { from: day('2027-01-01'), to: day('2027-01-31') };

  test.each([
    ['2026-12-31', { code: 'opens', inDays: 1 }],
    ['2027-01-01', { code: 'open', daysLeft: 30 }],
    ['2027-01-31', { code: 'open', daysLeft: 0 }],
    ['2027-02-01', { code: 'closed', daysAgo: 1 }],
  ])('%s', (today, state) => expect(sowingState(window, day(today))).toEqual(state));

  test('a window that ends before it begins is none', () =>
    expect(() => sowingState({ from: window.to, to: window.from }, window.from)).toThrow(RangeError));
});
