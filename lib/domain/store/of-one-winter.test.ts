import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goneOver, storeLot } from '@/tests/fixtures/store-lots';
import { addDays, type CalendarDate } from '../calendar/calendar-date';
import { lotNow } from './go-over';
import { daysToCover, ofOneWinter } from './of-one-winter';

const day = (text: string) => text as CalendarDate;
const put = (id: string, putInOn: string) => storeLot({ id, putInOn: day(putInOn) });
const usedUp = (id: string, putInOn: string) => goneOver(put(id, putInOn), [addDays(day(putInOn), 20), 60, 0]);
const idsOf = (lots: readonly { id: string }[]) => lots.map(({ id }) => id);

describe('the lots of one winter', () => {
  const today = day('2026-11-28');

  it('are those put in since the first of July, used up or not', () => {
    const lots = [usedUp('spring', '2026-06-30'), put('first', '2026-07-01'), usedUp('gone', '2026-09-01')];
    expect(idsOf(ofOneWinter(lots, today))).toEqual(['first', 'gone']);
  });

  it('reach back to the winter of what is still held, and take all of that winter', () => {
    const lots = [
      usedUp('long gone', '2025-06-01'),
      usedUp('its neighbour', '2025-08-01'),
      put('left over', '2026-02-01'),
      put('new', '2026-09-01'),
    ];
    expect(idsOf(ofOneWinter(lots, today))).toEqual(['its neighbour', 'left over', 'new']);
  });

  it('are none where nothing was put in', () => expect(ofOneWinter([], today)).toEqual([]));

  it('never lack what is held, whenever it was put in', () => {
    const ago = fc.integer({ min: 0, max: 1500 });
    fc.assert(
      fc.property(fc.array(fc.tuple(ago, fc.boolean())), (given) => {
        const lots = given.map(([days, used], at) => {
          const on = addDays(today, -days - 20);
          return used ? usedUp(String(at), on) : put(String(at), on);
        });
        const found = new Set(ofOneWinter(lots, today));
        for (const lot of lots) if (lotNow(lot).sound > 0) expect(found).toContain(lot);
      }),
    );
  });
});

describe('how long a store has to last', () => {
  it.each([
    ['2026-09-01', '07-20', 322],
    ['2026-07-20', '07-20', 365],
    ['2027-07-20', '07-20', 366],
    ['2026-07-19', '07-20', 1],
  ])('put in on %s, the new crop on %s: %i days', (putInOn, newCrop, days) =>
    expect(daysToCover([put('later', '2028-01-01'), put('first', putInOn)], newCrop)).toBe(days),
  );

  it('is not known of nothing', () => expect(() => daysToCover([], '07-20')).toThrow(RangeError));
});
