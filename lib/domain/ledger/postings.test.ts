import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { balancesOf } from './balances';
import { checkedEntry, type Entry, reversalOf } from './entry';
import { boughtFor, chargeOf, moved, type Posting, purchaseOf } from './postings';
import { splitPrice } from './split-price';
import { statementOf } from './statement';

const on = calendarDate('2026-05-04');
const entry = (posting: Posting, id = 'e'): Entry => checkedEntry({ id, on, ...posting });
const minorsOf = ({ lines }: Posting) => Object.fromEntries(lines.map(({ account, minor }) => [account, minor]));

describe('what is posted', () => {
  test('a purchase is owed to suppliers', () =>
    expect(minorsOf(entry(purchaseOf('d1', 900)))).toEqual({ 'purchases:d1': 900, 'other:suppliers': -900 }));
  test('a charge of several holdings is one entry; who pays nothing has no line', () => {
    const parts = [
      { holdingId: 'h1', minor: 300 },
      { holdingId: 'h2', minor: 0 },
      { holdingId: 'h3', minor: 601 },
    ];
    const posting = chargeOf('purchases:d1', parts);
    expect(posting && minorsOf(entry(posting))).toEqual({ 'holding:h1': 300, 'holding:h3': 601, 'purchases:d1': -901 });
  });
  test('a charge of nothing is none', () => {
    expect(chargeOf('other:seed', [])).toBeNull();
    expect(chargeOf('other:seed', [{ holdingId: 'h1', minor: 0 }])).toBeNull();
  });
  test('what is bought and charged on at once is owed by those it was bought for; the society bears the rest', () => {
    const parts = [
      { holdingId: 'h1', minor: 250 },
      { holdingId: 'h2', minor: 0 },
    ];
    const read = (leftMinor: number, of = parts) => {
      const posting = boughtFor(of, leftMinor);
      return posting && minorsOf(entry(posting));
    };
    expect(read(0)).toEqual({ 'holding:h1': 250, 'other:suppliers': -250 });
    expect(read(40)).toEqual({ 'holding:h1': 250, 'other:society': 40, 'other:suppliers': -290 });
    expect(read(40, [])).toEqual({ 'other:society': 40, 'other:suppliers': -40 });
    expect(read(0, [])).toBeNull();
    expect(() => boughtFor(parts, -1)).toThrow(RangeError);
  });
  test('a charge below nothing is refused', () =>
    expect(() => chargeOf('other:seed', [{ holdingId: 'h1', minor: -1 }])).toThrow(RangeError));
  test.each([
    ['holding:h1', 'bank', 'payment'],
    ['bank', 'holding:h1', 'payment'],
    ['cash', 'other:suppliers', 'payment'],
    ['bank', 'cash', 'transfer'],
    ['other:society', 'bank', 'transfer'],
    ['purchases:d1', 'other:society', 'transfer'],
  ] as const)('off %s on to %s is a %s', (from, to, kind) => {
    const posting = moved(from, to, 735);
    expect(posting.kind).toBe(kind);
    expect(minorsOf(entry(posting))).toEqual({ [to]: 735, [from]: -735 });
  });
});

// A season as a treasurer keeps it: deliveries bought and charged on, payments, moves, and any of them taken back.
const step = fc.oneof(
  fc.record({
    what: fc.constant('delivery' as const),
    price: fc.nat(50_000),
    loads: fc.array(fc.nat(9), { minLength: 1, maxLength: 6 }),
  }),
  fc.record({ what: fc.constant('pay' as const), holding: fc.nat(5), minor: fc.integer({ min: 1, max: 9999 }) }),
  fc.record({ what: fc.constant('seed' as const), each: fc.integer({ min: 1, max: 999 }) }),
  fc.record({ what: fc.constant('bank' as const), minor: fc.integer({ min: 1, max: 99_999 }) }),
  fc.record({ what: fc.constant('back' as const), nth: fc.nat(40) }),
);
type Step = typeof step extends fc.Arbitrary<infer S> ? S : never;

const holdings = ['h0', 'h1', 'h2', 'h3', 'h4', 'h5'];

function postingsOf(one: Exclude<Step, { what: 'back' }>, nth: number): Posting[] {
  if (one.what === 'pay') return [moved(`holding:${holdings[one.holding] ?? ''}`, 'bank', one.minor)];
  if (one.what === 'bank') return [moved('bank', 'cash', one.minor)];
  const each = one.what === 'seed' ? one.each : 0;
  if (one.what === 'seed')
    return [
      chargeOf(
        'other:seed',
        holdings.map((holdingId) => ({ holdingId, minor: each })),
      ),
    ].filter((p) => p !== null);
  if (one.price === 0) return [];
  const taken = one.loads.map((loads, at) => ({ id: holdings[at] ?? '', loads }));
  const { shares } = splitPrice(one.price, taken, holdings.toReversed());
  const charge = chargeOf(
    `purchases:d${nth}`,
    shares.map(({ id, minor }) => ({ holdingId: id, minor })),
  );
  return [purchaseOf(`d${nth}`, one.price), ...(charge ? [charge] : [])];
}

function keep(steps: readonly Step[]): Entry[] {
  const book: Entry[] = [];
  const back = new Set<string>();
  for (const [nth, one] of steps.entries()) {
    if (one.what !== 'back') {
      for (const posting of postingsOf(one, nth)) book.push(entry(posting, `e${book.length}`));
      continue;
    }
    const earlier = book.filter(({ id, kind }) => kind !== 'correction' && !back.has(id)).at(one.nth);
    if (!earlier) continue;
    back.add(earlier.id);
    book.push(reversalOf(earlier, on, `e${book.length}`));
  }
  return book;
}

test('whatever a treasurer does, all balances sum to nothing, and each statement closes with its balance', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
      const book = keep(steps);
      const balances = balancesOf(book);
      expect(balances.reduce((sum, { minor }) => sum + minor, 0)).toBe(0);
      for (const { account, minor } of balances) {
        const { closingMinor, lines } = statementOf(account, book, on, on);
        expect(closingMinor).toBe(minor);
        expect(lines.at(-1)?.balanceMinor ?? 0).toBe(minor);
      }
    }),
  );
});

test('a delivery that anybody took of is charged on in full, to the penny', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 100_000 }),
      fc.array(fc.nat(9), { minLength: 1, maxLength: 6 }),
      (price, loads) => {
        const left = balancesOf(keep([{ what: 'delivery', price, loads }]));
        const rest = left.find(({ account }) => account === 'purchases:d0')?.minor;
        expect(rest).toBe(loads.some((one) => one > 0) ? 0 : price);
      },
    ),
  );
});
