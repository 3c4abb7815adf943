import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goneOver, storeLot } from '@/tests/fixtures/store-lots';
import { addDays, calendarDate } from '../calendar/calendar-date';
import { goOver, lotNow } from './go-over';

const on = calendarDate('2026-09-15');
const found = { on, used: 5, bad: 2, badWhy: 'mould', sound: null } as const;

describe('a lot that is gone over', () => {
  it('keeps what is neither used nor bad', () => {
    const lot = goOver(storeLot(), found);
    expect(lot.goingsOver).toEqual([{ ...found, sound: 53 }]);
    expect(lotNow(lot)).toEqual({ sound: 53, used: 5, bad: 2, dried: 0 });
  });

  it('may be counted, and then balances to the piece', () => {
    expect(goOver(storeLot(), { ...found, sound: 53 }).goingsOver[0]?.sound).toBe(53);
    expect(() => goOver(storeLot(), { ...found, sound: 52 })).toThrow(RangeError);
    expect(() => goOver(storeLot(), { ...found, sound: 54 })).toThrow(RangeError);
  });

  it('may weigh less than it did: the rest dried away, and never more', () => {
    const bag = storeLot({ keepingKey: 'potato', measure: 'grams', putIn: 20_000 });
    const lot = goOver(bag, { ...found, used: 1_500, bad: 240, sound: 17_900 });
    expect(lotNow(lot)).toEqual({ sound: 17_900, used: 1_500, bad: 240, dried: 360 });
    expect(() => goOver(bag, { ...found, used: 1_500, bad: 240, sound: 18_261 })).toThrow(RangeError);
  });

  it('may be used up, and then has nothing more to give', () => {
    const gone = goneOver(storeLot(), ['2026-09-15', 58, 2]);
    expect(lotNow(gone).sound).toBe(0);
    expect(() => goneOver(gone, ['2026-09-16', 1, 0])).toThrow(RangeError);
    expect(lotNow(goneOver(gone, ['2026-09-16', 0, 0])).sound).toBe(0);
  });

  it('may be gone over twice on one day, and on the day it was put in, but not before', () => {
    expect(lotNow(goneOver(storeLot(), ['2026-09-01', 0, 3], ['2026-09-01', 1, 0])).sound).toBe(56);
    expect(() => goneOver(storeLot(), ['2026-08-31', 0, 0])).toThrow(RangeError);
    expect(() => goneOver(storeLot(), ['2026-09-15', 0, 0], ['2026-09-14', 0, 0])).toThrow(RangeError);
  });

  it.each([-1, 0.5, Number.NaN, 61])('does not take %d for what was used or bad', (amount) => {
    expect(() => goOver(storeLot(), { ...found, used: amount })).toThrow(RangeError);
    expect(() => goOver(storeLot(), { ...found, bad: amount })).toThrow(RangeError);
  });

  it('is left as it was', () => {
    const lot = Object.freeze({ ...storeLot(), goingsOver: Object.freeze([]) });
    expect(goOver(lot, found)).not.toBe(lot);
    expect(lot.goingsOver).toEqual([]);
  });

  it('balances exactly, however often', () => {
    const rounds = fc.array(fc.tuple(fc.nat(400), fc.nat(60), fc.nat(50)), { maxLength: 12 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5_000 }), rounds, (putIn, parts) => {
        let lot = storeLot({ keepingKey: 'potato', measure: 'grams', putIn });
        parts.forEach(([used, bad, dried], at) => {
          const left = lotNow(lot).sound - used - bad;
          const tried = { ...found, on: addDays(on, at), used, bad, sound: left - dried };
          if (left - dried < 0) expect(() => goOver(lot, tried)).toThrow(RangeError);
          else lot = goOver(lot, tried);
        });
        const { sound, used, bad, dried } = lotNow(lot);
        expect(sound + used + bad + dried).toBe(putIn);
      }),
    );
  });
});

it('records that do not balance are no lot', () => {
  const record = { ...found, sound: 60 };
  expect(() => lotNow(storeLot({ goingsOver: [record] }))).toThrow(RangeError);
  expect(() => lotNow(storeLot({ putIn: 0 }))).toThrow(RangeError);
});
