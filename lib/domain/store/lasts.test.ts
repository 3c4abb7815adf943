import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goneOver, storeLot } from '@/tests/fixtures/store-lots';
import { addDays, type CalendarDate, calendarDate, daysBetween } from '../calendar/calendar-date';
import { lossModel } from '../catalogue/store-model';
import { enoughTill } from './enough-till';
import { dayOfShare, forecastDays, likelyOn } from './forecast-days';
import { householdUse, piecesPerDayAt } from './household-use';
import { lastsOf } from './lasts';
import { lifePrior } from './life-prior';
import type { StoreLot } from './lot';
import { soundShare } from './sound-share';
import { mustUseBy } from './must-use-by';

const day = calendarDate;
const lasts = (lots: readonly StoreLot[], said: number | null = 5, today = '2026-09-01') =>
  lastsOf({ lots, saidPiecesPerWeek: said, today: day(today) });
const range = (...given: Parameters<typeof lasts>) => {
  const { leastDays, medianDays, mostDays } = lasts(...given).runsOut ?? {};
  return [leastDays, medianDays, mostDays];
};

describe('when a store runs out', () => {
  it('is a range about what the use alone would make of it, cut short by what goes bad', () => {
    // Sixty at five a week are twelve weeks.
    const [least = 0, median = 0, most = 0] = range([storeLot()]);
    expect(median).toBeGreaterThan(0.9 * 84);
    expect(median).toBeLessThan(84);
    expect((least ?? 0) < (median ?? 0) && (median ?? 0) < (most ?? 0)).toBe(true);
  });

  it('is not known where nobody said what is used and nothing was gone over', () => {
    expect(lasts([storeLot()], null)).toMatchObject({ runsOut: null, use: null });
    expect(lasts([goneOver(storeLot(), ['2026-09-15', 10, 0])], null, '2026-09-15').runsOut).not.toBeNull();
  });

  it('is now where all is gone', () =>
    expect(range([goneOver(storeLot(), ['2026-09-15', 60, 0])], 5, '2026-09-15')).toEqual([0, 0, 0]));

  it('is not within three years where it is hardly used and keeps', () => {
    const beans = storeLot({ keepingKey: 'dry-bean', measure: 'grams', putIn: 60_000, placeTenthC: 50 });
    expect(lasts([beans], 20).runsOut?.mostDays).toBeNull();
  });

  it('hangs on all lots of the crop together, and not on how they are parted', () => {
    const [, one = 0] = range([storeLot()]);
    const [, two = 0] = range([storeLot({ putIn: 30 }), storeLot({ id: 'other', putIn: 30 })]);
    const [, more = 0] = range([storeLot(), storeLot({ id: 'other', putIn: 30 })]);
    expect(Math.abs((two ?? 0) - (one ?? 0))).toBeLessThanOrEqual(2);
    expect(more ?? 0).toBeGreaterThan((one ?? 0) * 1.25);
  });

  it('goes on from the last going over, whenever it is asked', () => {
    const lot = goneOver(storeLot(), ['2026-10-01', 20, 1]);
    const [, then = 0] = range([lot], 5, '2026-10-01');
    const [, later = 0] = range([lot], 5, '2026-10-08');
    expect(Math.abs((then ?? 0) - 7 - (later ?? 0))).toBeLessThanOrEqual(1);
  });

  it('takes what was used since the last round off what is left, though some was put in since', () => {
    const bag = storeLot({ id: 'bag', putInOn: day('2026-09-25'), putIn: 40 });
    const before = goneOver(storeLot(), ['2026-09-15', 28, 0]);
    const counted = goneOver(before, ['2026-09-25', 20, 0]);
    const [, guessed = 0] = range([before, bag], 14, '2026-09-25');
    const [, known = 0] = range([counted, bag], 14, '2026-09-25');
    expect(Math.abs((guessed ?? 0) - (known ?? 0))).toBeLessThanOrEqual(2);
  });

  it('follows the use that is seen, whatever was said', () => {
    const rounds = Array.from({ length: 20 }, (_, at) => [addDays(day('2026-09-01'), 7 * at + 7), 42, 0] as const);
    const lot = goneOver(storeLot({ putIn: 1_200 }), ...rounds);
    const today = rounds.at(-1)?.[0] ?? '';
    for (const said of [20, 42, 80, null]) {
      const use = lasts([lot], said, today).use?.meanPiecesPerDay ?? 0;
      expect([said, Math.abs(use - 6) < 0.6]).toEqual([said, true]);
    }
  });

  it('is as the curve has it where thousands are counted and the use is known', () => {
    // A lot that lives as the curve says, 300 days, and a household that takes the same each day.
    const lived = (lot: StoreLot, weeks: number) => {
      let sound = lot.putIn;
      const rounds = Array.from({ length: weeks }, (_, at) => {
        const kept = soundShare(7 * at + 7, 300) / soundShare(7 * at, 300);
        const [used, bad] = [350, Math.round((sound - 175) * (1 - kept))];
        sound -= used + bad;
        return [addDays(lot.putInOn, 7 * at + 7), used, bad] as const;
      });
      return goneOver(lot, ...rounds);
    };
    const start = storeLot({ putIn: 12_000 });
    const lot = lived(start, 20);
    let [sound, age] = [lot.goingsOver.at(-1)?.sound ?? 0, 140];
    for (; sound > 0; age++) sound = (sound - 50) * (soundShare(age + 1, 300) / soundShare(age, 300));
    for (const keepingKey of ['onion', 'carrot', 'potato'])
      for (const found of range([{ ...lot, keepingKey }], 350, lot.goingsOver.at(-1)?.on))
        expect([keepingKey, Math.abs((found ?? 0) / (age - 140) - 1) < 0.12]).toEqual([keepingKey, true]);
  });

  it('refuses no lots, what is not yet, and a use that is none', () => {
    expect(() => lasts([])).toThrow(RangeError);
    expect(() => lasts([storeLot()], 5, '2026-08-31')).toThrow(RangeError);
    expect(() => lasts([storeLot()], 0)).toThrow(RangeError);
    expect(() => lasts([storeLot({ keepingKey: 'nobody-knows' })])).toThrow(RangeError);
  });
});

const rounds = fc.array(fc.record({ used: fc.nat(8), bad: fc.nat(4) }), { maxLength: 5 });
const lotOf = (list: readonly { used: number; bad: number }[], putIn = 70) =>
  goneOver(
    storeLot({ putIn }),
    ...list.map(({ used, bad }, at) => [addDays(day('2026-09-01'), 14 * at + 14), used, bad] as const),
  );
const lastOn = (lot: StoreLot): CalendarDate => lot.goingsOver.at(-1)?.on ?? lot.putInOn;

describe('whatever was recorded', () => {
  it('more loss never makes it last longer', () => {
    fc.assert(
      fc.property(rounds, fc.nat(4), fc.integer({ min: 2, max: 20 }), (list, at, said) => {
        fc.pre(list.length > 0);
        const worse = list.map((one, index) => (index === at % list.length ? { ...one, bad: one.bad + 1 } : one));
        const [one, other] = [list, worse].map((records) => {
          const lot = lotOf(records);
          return lasts([lot], said, lastOn(lot)).likelyLeft;
        });
        for (const share of [0.9, 0.5, 0.1])
          expect(dayOfShare(other ?? [], share) ?? Infinity).toBeLessThanOrEqual(
            (dayOfShare(one ?? [], share) ?? Infinity) + 0.05,
          );
      }),
      { numRuns: 60 },
    );
  });

  it('least comes before median before most, it is never likelier later, and the same is always answered alike', () => {
    fc.assert(
      fc.property(rounds, fc.integer({ min: 1, max: 30 }), (list, said) => {
        const lot = lotOf(list);
        const found = lasts([lot], said, lastOn(lot));
        const { leastDays, medianDays, mostDays } = found.runsOut ?? {};
        expect((leastDays ?? Infinity) <= (medianDays ?? Infinity)).toBe(true);
        expect((medianDays ?? Infinity) <= (mostDays ?? Infinity)).toBe(true);
        found.likelyLeft.forEach((likely, at) =>
          expect(likely).toBeLessThanOrEqual((found.likelyLeft[at - 1] ?? 1) + 1e-12),
        );
        expect(lasts([lot], said, lastOn(lot))).toMatchObject({ runsOut: found.runsOut });
      }),
      { numRuns: 40 },
    );
  });

  it('more put in, and less used, never make it run out sooner', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 200 }), fc.integer({ min: 1, max: 30 }), (putIn, said) => {
        const median = (count: number, use: number) =>
          dayOfShare(lasts([storeLot({ putIn: count })], use).likelyLeft, 0.5);
        expect(median(putIn + 1, said) ?? Infinity).toBeGreaterThanOrEqual(median(putIn, said) ?? Infinity);
        expect(median(putIn, said) ?? Infinity).toBeGreaterThanOrEqual(median(putIn, said + 1) ?? Infinity);
      }),
      { numRuns: 40 },
    );
  });
});

describe('the use of a household', () => {
  it('is what is said, give or take three tenths', () => {
    const use = householdUse([storeLot()], 14);
    expect(use?.meanPiecesPerDay).toBeCloseTo(2, 12);
    const [low = 0, high = 0] = [0.1, 0.9].map((share) => use && piecesPerDayAt(use, share)) as number[];
    expect(low).toBeGreaterThan(1.2);
    expect(low).toBeLessThan(1.35);
    expect(high).toBeGreaterThan(2.7);
    expect(high).toBeLessThan(2.85);
  });

  it('is counted once where lots follow each other', () => {
    const first = goneOver(storeLot(), ['2026-10-31', 60, 0]);
    const second = goneOver(storeLot({ id: 'other' }), ['2026-10-31', 0, 0], ['2026-12-30', 60, 0]);
    expect(householdUse([first, second], null)?.meanPiecesPerDay).toBeCloseTo(121 / 120, 1);
  });
});

describe('the end of a lot’s life', () => {
  it('is its kind’s where nothing was seen, a little wider for what is to come', () => {
    const lot = storeLot({ keepingKey: 'butternut', placeTenthC: 110 });
    const { logMean, logSd } = lifePrior('butternut', 'sound', 110);
    const spread = Math.hypot(logSd, lossModel.aheadSpread.value / lossModel.shape.value);
    const at = (z: number) => Math.exp(logMean + z * spread);
    const { leastDays, medianDays, mostDays } = mustUseBy(lot, lot.putInOn);
    [at(-1.2816) - leastDays, at(0) - medianDays, at(1.2816) - mostDays].forEach((off) =>
      expect(Math.abs(off)).toBeLessThan(1.5),
    );
  });

  it('is now once it is over', () => {
    const lot = storeLot({ keepingKey: 'fresh-chilli', placeTenthC: 80 });
    expect(mustUseBy(lot, day('2027-03-01'))).toEqual({ leastDays: 0, medianDays: 0, mostDays: 0 });
    expect(() => mustUseBy(lot, day('2026-08-31'))).toThrow(RangeError);
  });
});

describe('enough till the new crop', () => {
  const today = day('2026-09-01');
  const asked = (putIn: number, said: number | null, on = '2027-01-01') =>
    enoughTill(lasts([storeLot({ putIn })], said), today, day(on));

  it.each([
    [400, 5, 'yes', 'likely-enough'],
    [40, 5, 'no', 'likely-too-little'],
    [95, 5, 'cannot-tell', 'between'],
    [95, null, 'cannot-tell', 'use-unknown'],
  ] as const)('%i onions, %s a week, till the new year: %s', (putIn, said, answer, reason) =>
    expect(asked(putIn, said)).toMatchObject({ answer, reason }),
  );

  it('is what the forecast has for that day', () => {
    const found = lasts([storeLot()]);
    for (const after of [0, 30, 82, 200])
      expect(enoughTill(found, today, addDays(today, after)).likelyPermille).toBe(
        Math.round(likelyOn(found.likelyLeft, after) * 1000),
      );
  });

  it('is asked for a day of the forecast', () => {
    expect(() => asked(60, 5, '2026-08-31')).toThrow(RangeError);
    expect(() => asked(60, 5, '2030-01-01')).toThrow(RangeError);
  });
});

describe('days between those looked at', () => {
  it('rise to three years', () => {
    expect(forecastDays[0]).toBe(0);
    expect(forecastDays.at(-1)).toBeGreaterThanOrEqual(daysBetween(day('2026-01-01'), day('2028-12-31')));
    expect([...forecastDays].sort((one, other) => one - other)).toEqual(forecastDays);
    expect(new Set(forecastDays).size).toBe(forecastDays.length);
  });

  it('lie on a straight line', () => {
    const likely = forecastDays.map((one) => Math.max(0, 1 - one / 100));
    expect(dayOfShare(likely, 0.5)).toBeCloseTo(50, 9);
    expect(likelyOn(likely, 50)).toBeCloseTo(0.5, 9);
    expect(dayOfShare(likely, 1)).toBe(0);
    expect(
      dayOfShare(
        forecastDays.map(() => 1),
        0.5,
      ),
    ).toBeNull();
    expect(likelyOn(likely, 5_000)).toBe(0);
  });
});
