import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faringOf } from './faring-of';
import { accountOfSeason, type Faring, type SeasonLine } from './season-account';
import { nothingCounted, type SeasonCounts } from './season-counts';

type Line = SeasonLine & { readonly fared: Faring };

const line = (deliveryId: string, holdingId: string, counts: Partial<SeasonCounts>, fared: Faring = null): Line => ({
  ...nothingCounted,
  ...counts,
  deliveryId,
  holdingId,
  fared,
});
const heap = (id: string, heapLoads: number | null, priceMinor = 0) => ({ id, orderedLoads: 6, heapLoads, priceMinor });

describe('the account of a season', () => {
  test('by delivery and by holding', () => {
    const account = accountOfSeason(
      [heap('d1', 6, 1000), heap('d2', null)],
      [
        line('d1', 'h1', { asked: 4, need: 2, share: 4, collected: 3, givenUp: 1 }, 'gaveUp'),
        line(
          'd1',
          'h2',
          { asked: 3, share: 2, collected: 2, chargedMinor: 400, paidMinor: 150, outstandingMinor: 250 },
          'short',
        ),
        line('d2', 'h1', { asked: 5 }),
      ],
    );
    expect(account.deliveries).toMatchObject([
      { id: 'd1', asked: 7, share: 6, collected: 5, givenUp: 1, leftLoads: 1, metInFull: 0, short: 1, gaveUp: 1 },
      { id: 'd2', asked: 5, share: 0, leftLoads: null, chargedMinor: 0 },
    ]);
    expect(account.holdings).toMatchObject([
      { id: 'h1', asked: 9, need: 2, collected: 3 },
      { id: 'h2', asked: 3, collected: 2, chargedMinor: 400, paidMinor: 150, outstandingMinor: 250 },
    ]);
    expect(account.total).toMatchObject({ orderedLoads: 12, heapLoads: 6, leftLoads: 1, asked: 12, priceMinor: 1000 });
  });

  test('of nothing', () =>
    expect(accountOfSeason([], [])).toEqual({
      deliveries: [],
      holdings: [],
      total: {
        ...nothingCounted,
        ...{ metInFull: 0, short: 0, gaveUp: 0, orderedLoads: 0, heapLoads: 0, leftLoads: 0, priceMinor: 0 },
      },
    }));

  test.each<[string, Parameters<typeof accountOfSeason>]>([
    ['a delivery twice', [[heap('d', 1), heap('d', 2)], []]],
    ['a line of another delivery', [[heap('d', 1)], [line('e', 'h', {})]]],
    ['a holding twice', [[heap('d', 1)], [line('d', 'h', {}), line('d', 'h', {})]]],
    ['more collected than measured', [[heap('d', 1)], [line('d', 'h', { collected: 2 })]]],
    ['collected and never measured', [[heap('d', null)], [line('d', 'h', { collected: 1 })]]],
    ['part of a load', [[heap('d', 1)], [line('d', 'h', { share: 0.5 })]]],
    ['less than nothing', [[heap('d', 1)], [line('d', 'h', { asked: -1 })]]],
    ['a heap of no number', [[heap('d', Number.NaN)], []]],
    ['money that is not as charged', [[heap('d', 1)], [line('d', 'h', { chargedMinor: 3, paidMinor: 1 })]]],
  ])('refused: %s', (_, [deliveries, lines]) => expect(() => accountOfSeason(deliveries, lines)).toThrow(RangeError));
});

const counts = fc
  .record({
    collected: fc.nat(9),
    rest: fc.nat(9),
    asked: fc.nat(20),
    need: fc.nat(9),
    paid: fc.nat(999),
    owed: fc.nat(999),
  })
  .map(
    ({ collected, rest, asked, need, paid, owed }): SeasonCounts => ({
      ...{ asked, need, collected, beyond: 0, share: collected + rest, givenUp: rest },
      ...{ chargedMinor: paid + owed, paidMinor: paid, outstandingMinor: owed },
    }),
  );
const faring = fc.constantFrom<Faring>('metInFull', 'short', 'gaveUp', null);
const season = fc
  .uniqueArray(fc.tuple(fc.nat(4), fc.nat(6), counts, faring), { selector: ([d, h]) => `${d} ${h}`, maxLength: 30 })
  .map((all) => all.map(([d, h, each, fared]) => line(`d${d}`, `h${h}`, each, fared)));
const deliveries = Array.from({ length: 5 }, (_, nth) => heap(`d${nth}`, 500, nth * 100));

test('every count is the same by delivery, by holding and in all', () => {
  const keys = [...(Object.keys(nothingCounted) as (keyof SeasonCounts)[]), 'metInFull', 'short', 'gaveUp'] as const;
  fc.assert(
    fc.property(season, (lines) => {
      const before = structuredClone(lines);
      const account = accountOfSeason(deliveries, lines);
      for (const key of keys) {
        const sum = (rows: readonly Record<typeof key, number>[]) => rows.reduce((all, row) => all + row[key], 0);
        expect([key, sum(account.deliveries), sum(account.holdings)]).toEqual([
          key,
          account.total[key],
          account.total[key],
        ]);
      }
      expect(account.total.collected + account.total.leftLoads).toBe(account.total.heapLoads);
      expect(account.total.collected).toBe(lines.reduce((all, one) => all + one.collected, 0));
      expect(lines).toEqual(before);
    }),
  );
});

test.each<[Parameters<typeof faringOf>[0], Faring]>([
  [{ asked: 5, share: 5, gaveUp: false }, 'metInFull'],
  [{ asked: 5, share: 6, gaveUp: false }, 'metInFull'],
  [{ asked: 5, share: 4, gaveUp: false }, 'short'],
  [{ asked: 5, share: 0, gaveUp: false }, 'short'],
  [{ asked: 0, share: 0, gaveUp: false }, 'metInFull'],
  [{ asked: 5, share: 3, gaveUp: true }, 'gaveUp'],
  [{ asked: 5, share: null, gaveUp: false }, null],
])('%j fared %s', (claim, fared) => expect(faringOf(claim)).toBe(fared));
