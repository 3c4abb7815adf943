import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, calendarDate } from '../calendar/calendar-date';
import type { Dated } from './dated';
import { feedTold, type Told } from './feed-told';

const today = calendarDate('2026-11-28');
const on = (key: string, days: number, facts: Dated['facts'] = {}): Dated => ({
  ...{ key, code: 'round', facts },
  from: addDays(today, days),
  to: addDays(today, days),
});
const told = (dated: Dated, change: Partial<Told> = {}): Told => ({
  ...{ dated, sequence: 0, changedAtMs: 1, cancelled: false },
  ...change,
});
const one = (before: readonly Told[], now: readonly Dated[]) => feedTold(before, now, today, 9)[0];

describe('what a calendar is told', () => {
  it('of something new begins at 0', () => expect(one([], [on('a', 3)])).toEqual(told(on('a', 3), { changedAtMs: 9 })));

  it('stays the same while nothing changes, whatever the order of its facts', () => {
    const before = told(on('a', 3, { x: 1, y: 'two' }));
    expect(one([before], [on('a', 3, { y: 'two', x: 1 })])).toBe(before);
  });

  it('rises when it changes', () =>
    expect(one([told(on('a', 3), { sequence: 4 })], [on('a', 4)])).toEqual(
      told(on('a', 4), { sequence: 5, changedAtMs: 9 }),
    ));

  it('is called off once when it is gone, and back on when it comes back', () => {
    const off = one([told(on('a', 3))], []);
    expect(off).toEqual(told(on('a', 3), { sequence: 1, changedAtMs: 9, cancelled: true }));
    expect(off && feedTold([off], [], today, 10)[0]).toBe(off);
    expect(off && feedTold([off], [on('a', 3)], today, 10)[0]).toMatchObject({ sequence: 2, cancelled: false });
  });

  it('leaves what is over as it was, for 60 days', () => {
    const over = told(on('a', -1));
    expect(one([over], [])).toBe(over);
    expect(one([told(on('a', -60))], [])).toBeDefined();
    expect(one([told(on('a', -61))], [])).toBeUndefined();
    expect(one([told(on('a', -61), { cancelled: true })], [])).toBeUndefined();
  });

  it('refuses a key that stands twice', () =>
    expect(() => feedTold([], [on('a', 1), on('a', 2)], today, 9)).toThrow(RangeError));

  it('never forgets what is to come, never goes back, and says of each thing what is so', () => {
    const days = fc.uniqueArray(fc.tuple(fc.constantFrom('a', 'b', 'c', 'd'), fc.integer({ min: -70, max: 70 })), {
      selector: ([key]) => key,
    });
    fc.assert(
      fc.property(fc.array(days, { minLength: 1, maxLength: 8 }), (rounds) => {
        let before: readonly Told[] = [];
        for (const [at, round] of rounds.entries()) {
          const now = round.map(([key, day]) => on(key, day));
          const next = feedTold(before, now, today, at + 2);
          for (const dated of now)
            expect(next.find((told) => told.dated.key === dated.key)).toMatchObject({ dated, cancelled: false });
          for (const was of before) {
            const is = next.find((told) => told.dated.key === was.dated.key);
            if (is) expect(is.sequence).toBeGreaterThanOrEqual(was.sequence);
            else expect(was.dated.to < addDays(today, -60)).toBe(true);
            if (is && is !== was) expect(is.sequence).toBe(was.sequence + 1);
            if (is && is !== was) expect(is.changedAtMs).toBe(at + 2);
          }
          before = next;
        }
      }),
    );
  });
});
