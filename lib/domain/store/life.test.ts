import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goneOver, storeLot } from '@/tests/fixtures/store-lots';
import { keepings } from '../catalogue/keepings';
import { type LifeBelief, lifeDaysAt, lifePosterior } from './life-posterior';
import { lifePrior } from './life-prior';
import { type LossSeen, lossesSeen } from './losses-seen';
import { soundShare } from './sound-share';

const days = (prior: Parameters<typeof lifePosterior>[0], seen: readonly LossSeen[] = []) =>
  [0.1, 0.5, 0.9].map((share) => Math.round(lifeDaysAt(lifePosterior(prior, seen), share)));

describe('what is sound of a lot', () => {
  it('is all of it at first, seven tenths at the end of its life, and ever less', () => {
    expect(soundShare(0, 105)).toBe(1);
    expect(soundShare(105, 105)).toBeCloseTo(0.7, 12);
    expect(soundShare(1e6, 105)).toBe(0);
  });

  it('falls faster the longer it stands', () => {
    const lost = [0, 50, 100, 150].map((age) => 1 - soundShare(age, 200));
    const steps = lost.slice(1).map((one, at) => one - (lost[at] ?? 0));
    expect(steps).toEqual([...steps].sort((one, other) => one - other));
  });

  it.each([
    [-1, 100],
    [Number.NaN, 100],
    [10, 0],
    [10, Number.POSITIVE_INFINITY],
  ])('is nothing at %d days of a life of %d', (age, life) => expect(() => soundShare(age, life)).toThrow(RangeError));
});

describe('the life that a kind is held to have', () => {
  it('runs between the printed ends where it is kept as they want', () => {
    expect(lifePrior('butternut', 'sound', 110)).toMatchObject({ leastDays: 61, mostDays: 91, reasons: [] });
    expect(lifePrior('squash', 'sound', 140)).toMatchObject({ leastDays: 61, mostDays: 183 });
  });

  it('may be half as long elsewhere, or where nobody knows how warm it is', () => {
    for (const place of [null, 20, 200])
      expect(lifePrior('butternut', 'sound', place)).toMatchObject({
        leastDays: 30.5,
        mostDays: 91,
        reasons: ['elsewhere'],
      });
    // The account of garlic is of a common store.
    expect(lifePrior('garlic', 'sound', null)).toMatchObject({ leastDays: 91, mostDays: 122, reasons: [] });
  });

  it('takes one figure, and an open end, for a range', () => {
    const artichokes = lifePrior('jerusalem-artichoke', 'sound', 0);
    expect(artichokes).toMatchObject({ reasons: ['one-figure'] });
    expect([artichokes.leastDays, artichokes.mostDays].map(Math.round)).toEqual([81, 183]);
    expect(lifePrior('dry-bean', 'sound', 50)).toMatchObject({ leastDays: 365, reasons: ['no-end'] });
  });

  it('is shorter for what was put away in a bad state', () => {
    expect(lifePrior('butternut', 'damaged', 110)).toMatchObject({
      leastDays: 15.25,
      mostDays: 45.5,
      reasons: ['damaged'],
    });
    expect(lifePrior('butternut', 'unripe', 110)).toMatchObject({ leastDays: 30.5, mostDays: 91, reasons: ['unripe'] });
  });

  it('is known of every kind, and of nothing else', () => {
    for (const { key } of keepings) {
      const { leastDays, mostDays, logSd } = lifePrior(key, 'sound', null);
      expect([key, leastDays > 0, mostDays > leastDays, logSd > 0]).toEqual([key, true, true, true]);
    }
    expect(() => lifePrior('nobody-knows', 'sound', null)).toThrow(RangeError);
  });
});

describe('the life of a lot', () => {
  const prior = lifePrior('butternut', 'sound', 110);

  it('is its kind’s while nobody has gone over it', () => expect(days(prior)).toEqual([61, 75, 91]));

  it('is longer where more is sound than was to be expected, and shorter where less', () => {
    const [, usual = 0] = days(prior);
    const round = { fromAgeDays: 0, toAgeDays: 60, usedPieces: 0 };
    const [, good = 0] = days(prior, [{ ...round, badPieces: 0, soundPieces: 30 }]);
    const [, poor = 0] = days(prior, [{ ...round, badPieces: 20, soundPieces: 10 }]);
    expect(good).toBeGreaterThan(usual);
    expect(poor).toBeLessThan(usual);
  });

  it('hardly hangs on its kind once thousands of pieces are counted', () => {
    // Of a life of 120 days: in each fortnight what the curve takes, of ten thousand.
    const seen = Array.from({ length: 8 }, (_, at): LossSeen => {
      const [from, to] = [14 * at, 14 * at + 14];
      const [before, after] = [10_000 * soundShare(from, 120), 10_000 * soundShare(to, 120)];
      return { fromAgeDays: from, toAgeDays: to, badPieces: before - after, usedPieces: 0, soundPieces: after };
    });
    for (const kind of [prior, lifePrior('onion', 'sound', 0), lifePrior('fresh-chilli', 'sound', 80)])
      for (const day of days(kind, seen)) expect(Math.abs(day - 120)).toBeLessThanOrEqual(2);
  });

  const counts = fc.array(fc.record({ bad: fc.nat(20), sound: fc.nat(60), used: fc.nat(20) }), {
    minLength: 1,
    maxLength: 8,
  });
  const seenOf = (rounds: readonly { bad: number; sound: number; used: number }[]) =>
    rounds.map(
      ({ bad, sound, used }, at): LossSeen => ({
        fromAgeDays: 14 * at,
        toAgeDays: 14 * at + 14,
        badPieces: bad,
        soundPieces: sound,
        usedPieces: used,
      }),
    );

  it('is never longer for one more gone bad instead of sound, at any share', () => {
    fc.assert(
      fc.property(
        counts,
        fc.nat(7),
        fc.constantFrom('onion', 'butternut', 'garlic', 'fresh-chilli'),
        (rounds, at, kind) => {
          const worse = rounds.map((round, index) =>
            index === at % rounds.length
              ? { ...round, bad: round.bad + 1, sound: Math.max(0, round.sound - 1) }
              : round,
          );
          const [one, other] = [rounds, worse].map(
            (list): LifeBelief => lifePosterior(lifePrior(kind, 'sound', null), seenOf(list)),
          ) as [LifeBelief, LifeBelief];
          for (const share of [0.01, 0.1, 0.5, 0.9, 0.99])
            expect(lifeDaysAt(other, share)).toBeLessThanOrEqual(lifeDaysAt(one, share) * (1 + 1e-4));
        },
      ),
    );
  });

  it('agrees with adding up the belief over a fine ruler of lives', () => {
    fc.assert(
      fc.property(counts, (rounds) => {
        const seen = seenOf(rounds);
        const logLikely = (life: number) =>
          seen.reduce(
            (sum, { fromAgeDays, toAgeDays, badPieces, usedPieces, soundPieces }) => {
              const kept = soundShare(toAgeDays, life) / soundShare(fromAgeDays, life);
              return (
                sum + (badPieces && badPieces * Math.log(1 - kept)) + (soundPieces + usedPieces / 2) * Math.log(kept)
              );
            },
            -(((Math.log(life) - prior.logMean) / prior.logSd) ** 2) / 2,
          ) - Math.log(life);
        const lives = Array.from({ length: 4_000 }, (_, at) => 8 + at / 10);
        const logs = lives.map(logLikely);
        const most = Math.max(...logs);
        const weights = logs.map((log) => Math.exp(log - most));
        const all = weights.reduce((sum, weight) => sum + weight, 0);
        let sum = 0;
        const median = lives.find((_, at) => (sum += weights[at] ?? 0) >= all / 2) ?? 0;
        expect(Math.abs(lifeDaysAt(lifePosterior(prior, seen), 0.5) - median)).toBeLessThan(0.2);
      }),
      { numRuns: 40 },
    );
  });

  it('is a number of days, rising with the share, whatever was counted', () => {
    const any = fc.record({ bad: fc.nat(100_000), sound: fc.nat(100_000), used: fc.nat(100_000) });
    const kinds = fc.constantFrom(...keepings.map(({ key }) => key));
    fc.assert(
      fc.property(fc.array(any, { maxLength: 6 }), kinds, fc.constantFrom(1, 100, 3_000), (rounds, kind, stretch) => {
        const seen = seenOf(rounds).map((one) => ({
          ...one,
          fromAgeDays: one.fromAgeDays * stretch,
          toAgeDays: one.toAgeDays * stretch,
        }));
        const belief = lifePosterior(lifePrior(kind, 'damaged', null), seen);
        const found = [0.001, 0.1, 0.5, 0.9, 0.999].map((share) => lifeDaysAt(belief, share));
        expect(found.every((one) => Number.isFinite(one) && one > 0)).toBe(true);
        expect([...found].sort((one, other) => one - other)).toEqual(found);
      }),
    );
  });

  it('refuses shares and counts that are none', () => {
    expect(() => lifeDaysAt(lifePosterior(prior, []), 1)).toThrow(RangeError);
    expect(() => lifePosterior(prior, seenOf([{ bad: -1, sound: 1, used: 0 }]))).toThrow(RangeError);
  });
});

describe('what goings over tell', () => {
  it('is from each to the next, in pieces', () =>
    expect(lossesSeen(goneOver(storeLot(), ['2026-09-15', 5, 2], ['2026-09-29', 6, 0]))).toEqual([
      { fromAgeDays: 0, toAgeDays: 14, badPieces: 2, usedPieces: 5, soundPieces: 53 },
      { fromAgeDays: 14, toAgeDays: 28, badPieces: 0, usedPieces: 6, soundPieces: 47 },
    ]));

  it('is by the weight of a piece where a lot is weighed', () => {
    const bag = storeLot({ keepingKey: 'potato', measure: 'grams', putIn: 12_000 });
    expect(lossesSeen(goneOver(bag, ['2026-10-01', 1_200, 240]))).toEqual([
      { fromAgeDays: 0, toAgeDays: 30, badPieces: 2, usedPieces: 10, soundPieces: 88 },
    ]);
    expect(lossesSeen(goneOver({ ...bag, pieceG: 240 }, ['2026-10-01', 1_200, 240]))[0]?.badPieces).toBe(1);
  });

  it('of two on one day is half a day apart', () =>
    expect(
      lossesSeen(goneOver(storeLot(), ['2026-09-01', 0, 1], ['2026-09-01', 0, 1])).map(({ toAgeDays }) => toAgeDays),
    ).toEqual([0.5, 1]));

  it('is nothing for an unknown kind or a weightless piece', () => {
    expect(() => lossesSeen(storeLot({ keepingKey: 'nobody-knows' }))).toThrow(RangeError);
    expect(() => lossesSeen(storeLot({ measure: 'grams', pieceG: 0 }))).toThrow(RangeError);
  });
});
