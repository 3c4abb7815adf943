import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitPrice } from '@/lib/domain/ledger/split-price';
import { census1790 } from '../fixtures/census-1790';

// Mathematical Excursions, 4th ed., section 4.1, exercise 2: 105 seats between the fifteen states of 1790. Seats stand for
// pennies here and people for loads. Printed for the first six: the quota, cut off after three decimals, and the seats.
const printed = [
  { quota: 6.877, seats: 7 },
  { quota: 1.612, seats: 2 },
  { quota: 2.056, seats: 2 },
  { quota: 8.087, seats: 8 },
  { quota: 13.802, seats: 14 },
  { quota: 1.995, seats: 2 },
];
const seats = 105;
const states = census1790.map((loads, at) => ({ id: `state-${at}`, loads }));
const ids = states.map(({ id }) => id);

describe('105 seats of 1790, as pennies', () => {
  // Hamilton’s method gives the odd seats by the largest part of one. With that order for a lot, the split is his.
  test('in the order of the largest parts: the seats that are printed', () => {
    const people = census1790.reduce((sum, count) => sum + count, 0);
    const partOf = (loads: number) => (seats * loads) % people;
    const order = states.toSorted((one, other) => partOf(other.loads) - partOf(one.loads)).map(({ id }) => id);
    const { shares } = splitPrice(seats, states, order);
    expect(shares.slice(0, 6).map(({ minor }) => minor)).toEqual(printed.map((state) => state.seats));
  });

  // The quota rule, as after M. Balinski and H. Young: nobody gets less than the quota rounded down, or more than rounded up.
  test('in any order: the printed quotas rounded down or up', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(ids, { minLength: ids.length }), (order) => {
        const { shares } = splitPrice(seats, states, order);
        for (const [at, { quota }] of printed.entries())
          expect([Math.floor(quota), Math.ceil(quota)]).toContain(shares[at]?.minor);
        expect(shares.reduce((sum, { minor }) => sum + minor, 0)).toBe(seats);
      }),
    );
  });

  // What the split says of each part is the printed quota.
  test('the parts that are told are the printed quotas', () => {
    const { shares } = splitPrice(seats, states, ids);
    const told = shares.slice(0, 6).map(({ reason }) => {
      if (reason.code !== 'odd-penny' && reason.code !== 'odd-penny-spared') throw new Error(reason.code);
      return reason.wholeMinor + Math.floor((1000 * reason.over) / reason.overOf) / 1000;
    });
    expect(told).toEqual(printed.map(({ quota }) => quota));
  });
});
