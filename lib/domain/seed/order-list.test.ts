import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderList, type SeedPacket } from './order-list';
import { packetState } from './packet-state';

describe('a packet in the tin', () => {
  it.each([
    ['leek', 2025, 2025, 'sound', 0],
    ['leek', 2025, 2026, 'sound', 1],
    ['leek', 2025, 2027, 'test-first', 2],
    ['leek', 2025, 2028, 'past', 3],
    ['leek', null, 2026, 'year-unknown', null],
    ['oca', 2026, 2026, 'life-unknown', 0],
  ] as const)('of %s packed in %s is, in %i, %s', (crop, packed, season, code, ageYears) =>
    expect(packetState(crop, packed, season)).toMatchObject({ code, ageYears }),
  );

  it('was packed by then, in a year', () => {
    expect(() => packetState('leek', 2027, 2026)).toThrow(RangeError);
    expect(() => packetState('leek', 2025.5, 2026)).toThrow(RangeError);
  });
});

const packet = (id: string, overrides: Partial<SeedPacket> = {}): SeedPacket => ({
  id,
  cropKey: 'onion',
  variety: null,
  seeds: 100,
  packedYear: 2026,
  ...overrides,
});
const need = (seeds: number, variety: string | null = null, cropKey = 'onion') => ({ cropKey, variety, seeds });
const told = (needs: Parameters<typeof orderList>[0], ...packets: readonly SeedPacket[]) =>
  orderList(needs, packets, 2026).map(({ cropKey, variety, needed, inHand, toOrder }) => [
    cropKey,
    variety,
    needed,
    inHand,
    toOrder,
  ]);

describe('the order list', () => {
  it('is what is needed less what is sound', () => {
    const [line, ...others] = orderList(
      [need(258)],
      [packet('new'), packet('old', { seeds: 500, packedYear: 2023 })],
      2026,
    );
    expect(others).toEqual([]);
    expect(line).toMatchObject({ needed: 258, inHand: 100, toOrder: 158 });
    expect(line?.packets.map(({ id, state }) => [id, state.code])).toEqual([
      ['new', 'sound'],
      ['old', 'past'],
    ]);
  });

  it('counts seed in its last year, and none of which nobody knows the year or the life', () => {
    expect(told([need(50)], packet('a', { packedYear: 2025 }))).toEqual([['onion', null, 50, 50, 0]]);
    expect(told([need(50)], packet('a', { packedYear: null }))).toEqual([['onion', null, 50, 0, 50]]);
    expect(told([need(50, null, 'oca')], packet('a', { cropKey: 'oca' }))).toEqual([['oca', null, 50, 0, 50]]);
  });

  it('counts tested seed by what came up, however old, and never for more than there is', () => {
    // At least 70 of a hundred onion seeds must germinate for them to be sold.
    const tested = (testedPercent: number, packedYear: number | null = 2019) =>
      told([need(100)], packet('a', { packedYear, testedPercent }));
    expect(tested(35)).toEqual([['onion', null, 100, 50, 50]]);
    expect(tested(35, null)).toEqual([['onion', null, 100, 50, 50]]);
    expect(tested(100)).toEqual([['onion', null, 100, 100, 0]]);
    expect(tested(0)).toEqual([['onion', null, 100, 0, 100]]);
    expect(() => tested(101)).toThrow(RangeError);
  });

  it('serves a named variety by its own seed alone, and any by what is left', () => {
    const tin = [packet('red', { variety: 'Red', seeds: 80 }), packet('plain', { seeds: 30 })];
    expect(told([need(60, 'Red'), need(100), need(10, 'White')], ...tin)).toEqual([
      ['onion', 'Red', 60, 60, 0],
      ['onion', 'White', 10, 0, 10],
      ['onion', null, 100, 50, 50],
    ]);
  });

  it('sums what several beds need, and lists nothing that nobody needs', () => {
    expect(told([need(60), need(70)], packet('leeks', { cropKey: 'leek' }))).toEqual([['onion', null, 130, 0, 130]]);
    expect(told([], packet('a'))).toEqual([]);
  });

  it('refuses numbers that are none and packets that stand twice', () => {
    expect(() => told([need(-1)])).toThrow(RangeError);
    expect(() => told([], packet('a', { seeds: 0.5 }))).toThrow(RangeError);
    expect(() => told([], packet('a'), packet('a'))).toThrow(RangeError);
  });

  it('orders just what is missing, serves no seed twice, and hangs on no order', () => {
    const variety = fc.constantFrom('Red', 'White', null);
    const crop = fc.constantFrom('onion', 'leek');
    const needs = fc.array(fc.record({ cropKey: crop, variety, seeds: fc.nat(200) }), { maxLength: 8 });
    const tins = fc.array(
      fc.record({ cropKey: crop, variety, seeds: fc.nat(200), packedYear: fc.constantFrom(2026, 2024, 2020, null) }),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(needs, tins, (list, tin) => {
        const packets = tin.map((one, at) => ({ ...one, id: `${at}` }));
        const lines = orderList(list, packets, 2026);
        for (const cropKey of ['onion', 'leek']) {
          const sum = (rows: readonly { cropKey: string; seeds: number }[]) =>
            rows.filter((row) => row.cropKey === cropKey).reduce((total, { seeds }) => total + seeds, 0);
          const mine = lines.filter((line) => line.cropKey === cropKey);
          expect(mine.reduce((total, { needed }) => total + needed, 0)).toBe(sum(list));
          const sound = packets.filter((one) =>
            ['sound', 'test-first'].includes(packetState(one.cropKey, one.packedYear, 2026).code),
          );
          expect(mine.reduce((total, { inHand }) => total + inHand, 0)).toBeLessThanOrEqual(sum(sound));
        }
        for (const { needed, inHand, toOrder } of lines) expect(inHand >= 0 && toOrder === needed - inHand).toBe(true);
        const amounts = (rows: typeof lines) => rows.map(({ packets: _, ...line }) => line);
        expect(amounts(orderList([...list].reverse(), [...packets].reverse(), 2026))).toEqual(amounts(lines));
      }),
    );
  });
});
