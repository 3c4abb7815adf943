import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestPacks, type PackSize } from './cheapest-packs';
import { societyOrder } from './society-order';

const small = { amount: 100, priceMinor: 150 };
const large = { amount: 250, priceMinor: 290 };

describe('the packs that cover a want', () => {
  it.each([
    [0, [0, 0], 0, 0],
    [1, [1, 0], 150, 99],
    [100, [1, 0], 150, 0],
    [101, [0, 1], 290, 149],
    [300, [1, 1], 440, 50],
    [450, [0, 2], 580, 50],
    [551, [1, 2], 730, 49],
  ])('%i wanted: %j, %i pence, %i over', (wanted, counts, priceMinor, over) =>
    expect(cheapestPacks(wanted, [small, large])).toMatchObject({ counts, priceMinor, over }),
  );

  it('of equal price leave the least over, of equal amount are the fewest', () => {
    expect(
      cheapestPacks(90, [
        { amount: 200, priceMinor: 100 },
        { amount: 90, priceMinor: 100 },
      ]).counts,
    ).toEqual([0, 1]);
    expect(
      cheapestPacks(200, [
        { amount: 100, priceMinor: 100 },
        { amount: 200, priceMinor: 200 },
      ]).counts,
    ).toEqual([0, 1]);
  });

  it('may be free', () =>
    expect(cheapestPacks(5, [{ amount: 10, priceMinor: 0 }])).toEqual({
      counts: [1],
      priceMinor: 0,
      amount: 10,
      over: 5,
    }));

  it('are none of no size, of nothing, of parts', () => {
    expect(() => cheapestPacks(1, [])).toThrow(RangeError);
    expect(() => cheapestPacks(1, [{ amount: 0, priceMinor: 1 }])).toThrow(RangeError);
    expect(() => cheapestPacks(1, [{ amount: 1, priceMinor: 0.5 }])).toThrow(RangeError);
    expect(() => cheapestPacks(-1, [small])).toThrow(RangeError);
    expect(() => cheapestPacks(1_000_001, [{ amount: 1, priceMinor: 1 }])).toThrow(RangeError);
  });

  it('are as cheap as any that trying them all finds', () => {
    const size = fc.record({ amount: fc.integer({ min: 1, max: 12 }), priceMinor: fc.nat(30) });
    fc.assert(
      fc.property(fc.nat(40), fc.array(size, { minLength: 1, maxLength: 3 }), (wanted, sizes) => {
        const best = allCovers(wanted, sizes).reduce((one, other) => {
          const better = one.price - other.price || one.amount - other.amount || one.packs - other.packs;
          return better <= 0 ? one : other;
        });
        const { counts, priceMinor, amount, over } = cheapestPacks(wanted, sizes);
        const packs = counts.reduce((sum, count) => sum + count, 0);
        expect({ price: priceMinor, amount, packs }).toEqual(best);
        expect(over).toBe(amount - wanted);
        expect(counts.reduce((sum, count, at) => sum + count * (sizes[at]?.amount ?? 0), 0)).toBe(amount);
      }),
    );
  });
});

// Slow and obvious: every number of packs of every size, up to what covers it alone.
function allCovers(wanted: number, sizes: readonly PackSize[]): { price: number; amount: number; packs: number }[] {
  const [first, ...others] = sizes;
  if (!first) return wanted <= 0 ? [{ price: 0, amount: 0, packs: 0 }] : [];
  const most = Math.ceil(Math.max(0, wanted) / first.amount);
  return Array.from({ length: most + 1 }, (_, count) => count).flatMap((count) =>
    allCovers(wanted - count * first.amount, others).map(({ price, amount, packs }) => ({
      price: price + count * first.priceMinor,
      amount: amount + count * first.amount,
      packs: packs + count,
    })),
  );
}

describe('the society’s order', () => {
  const wants = (amounts: Record<string, number>) =>
    Object.entries(amounts).map(([holdingId, amount]) => ({ holdingId, amount }));

  it('splits each pack by what each wanted, to the penny', () => {
    const { lines, owed, seedMinor } = societyOrder(
      [{ id: 'leek', sizes: [small], wants: wants({ a: 60, b: 90 }) }],
      ['a', 'b'],
    );
    expect(lines).toMatchObject([{ itemId: 'leek', wanted: 150, packs: { counts: [2], priceMinor: 300, over: 50 } }]);
    expect(owed).toEqual([
      { holdingId: 'a', seedMinor: 120, extraMinor: 0, minor: 120 },
      { holdingId: 'b', seedMinor: 180, extraMinor: 0, minor: 180 },
    ]);
    expect(seedMinor).toBe(300);
  });

  it('adds up what each owes over all items, odd pennies by lot', () => {
    const items = [
      { id: 'leek', sizes: [{ amount: 100, priceMinor: 100 }], wants: wants({ a: 10, b: 10, c: 10 }) },
      { id: 'onion', sizes: [small, large], wants: wants({ c: 250 }) },
      { id: 'kale', sizes: [small], wants: [] },
    ];
    const { lines, owed, seedMinor } = societyOrder(items, ['b', 'c', 'a']);
    expect(owed).toMatchObject([
      { holdingId: 'a', minor: 33 },
      { holdingId: 'b', minor: 34 },
      { holdingId: 'c', minor: 323 },
    ]);
    expect(seedMinor).toBe(390);
    expect(lines[2]).toMatchObject({ wanted: 0, packs: { counts: [0], priceMinor: 0, over: 0 }, shares: [] });
  });

  it('splits postage by what each owes for seed, evenly where all seed is free', () => {
    const leek = { id: 'leek', sizes: [small], wants: wants({ a: 60, b: 90 }) };
    expect(societyOrder([leek], ['b', 'a'], 101)).toMatchObject({
      owed: [
        { holdingId: 'a', seedMinor: 120, extraMinor: 40, minor: 160 },
        { holdingId: 'b', seedMinor: 180, extraMinor: 61, minor: 241 },
      ],
      leftMinor: 0,
    });
    const free = { id: 'gift', sizes: [{ amount: 10, priceMinor: 0 }], wants: wants({ a: 1, b: 19 }) };
    expect(societyOrder([free], ['b', 'a'], 101).owed.map(({ minor }) => minor)).toEqual([50, 51]);
    expect(societyOrder([], [], 101)).toMatchObject({ owed: [], leftMinor: 101 });
  });

  it('is worked out again from what came: shared up to a level, and paid by what each is given', () => {
    const leek = { id: 'leek', sizes: [small, large], wants: wants({ a: 40, b: 150, c: 150 }) };
    const { lines, owed, leftMinor } = societyOrder([{ ...leek, counts: [2, 0] }], ['c', 'b', 'a'], 30);
    expect(lines).toMatchObject([
      {
        wanted: 340,
        level: 80,
        packs: { amount: 200, priceMinor: 300, over: 0 },
        shares: [{ loads: 40 }, { loads: 80 }, { loads: 80 }],
      },
    ]);
    expect(owed.map(({ minor }) => minor)).toEqual([66, 132, 132]);
    expect(leftMinor).toBe(0);
  });

  it('leaves to the society what nobody was given anything for', () => {
    const leek = { id: 'leek', sizes: [small], wants: wants({ a: 40 }) };
    expect(societyOrder([{ ...leek, counts: [0] }], ['a'], 30)).toMatchObject({ owed: [{ minor: 0 }], leftMinor: 30 });
    expect(societyOrder([{ ...leek, wants: [], counts: [1] }], [], 0)).toMatchObject({ owed: [], leftMinor: 150 });
  });

  it('refuses what stands twice, and whoever is not in the lot', () => {
    const item = { id: 'leek', sizes: [small], wants: wants({ a: 1 }) };
    expect(() => societyOrder([item, item], ['a'])).toThrow(RangeError);
    expect(() => societyOrder([item], ['b'])).toThrow(RangeError);
    expect(() => societyOrder([{ ...item, wants: [...item.wants, ...item.wants] }], ['a'])).toThrow(RangeError);
    expect(() => societyOrder([{ ...item, wants: wants({ a: -1 }) }], ['a'])).toThrow(RangeError);
  });

  it('is paid for to the penny, by those who were given some, whatever came of it', () => {
    const members = ['a', 'b', 'c', 'd'];
    const size = fc.record({ amount: fc.integer({ min: 1, max: 50 }), priceMinor: fc.nat(400), came: fc.nat(4) });
    const item = fc.record({
      sizes: fc.array(size, { minLength: 1, maxLength: 3 }),
      amounts: fc.array(fc.nat(80), { minLength: 4, maxLength: 4 }),
      isCounted: fc.boolean(),
    });
    const lot = fc.shuffledSubarray(members, { minLength: 4 });
    fc.assert(
      fc.property(fc.array(item, { maxLength: 5 }), lot, fc.nat(900), (list, lotOrder, extraMinor) => {
        const items = list.map(({ sizes, amounts, isCounted }, at) => ({
          id: `${at}`,
          sizes,
          wants: amounts.map((amount, member) => ({ holdingId: members[member] ?? '', amount })),
          counts: isCounted ? sizes.map(({ came }) => came) : null,
        }));
        const { lines, owed, seedMinor, leftMinor } = societyOrder(items, lotOrder, extraMinor);
        expect(owed.reduce((sum, { minor }) => sum + minor, 0) + leftMinor).toBe(seedMinor + extraMinor);
        for (const [at, { wanted, packs, shares }] of lines.entries()) {
          const given = shares.reduce((sum, { loads }) => sum + loads, 0);
          expect(given).toBe(Math.min(wanted, packs.amount));
          expect(packs.amount - packs.over).toBe(given);
          if (!items[at]?.counts) expect(given).toBe(wanted);
          if (given > 0) expect(shares.reduce((sum, { minor }) => sum + minor, 0)).toBe(packs.priceMinor);
          for (const { loads, minor } of shares) if (loads === 0) expect(minor).toBe(0);
        }
      }),
    );
  });
});
