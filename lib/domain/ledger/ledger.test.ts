import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, calendarDate } from '../calendar/calendar-date';
import type { Account } from './account';
import { balancesOf, checkedBalances } from './balances';
import { checkedLedger } from './checked-ledger';
import { type Entry, type EntryKind, reversalOf } from './entry';
import { runningStatement, statementOf } from './statement';

const day = (text: string) => calendarDate(text);
const entry = (id: string, on: string, kind: EntryKind, lines: Record<string, number>): Entry => ({
  id,
  on: day(on),
  kind,
  lines: Object.entries(lines).map(([account, minor]) => ({ account: account as Account, minor })),
});

// A delivery bought, charged on to two holdings, one of them wrongly, taken back and charged anew, and paid.
const wrong = entry('charge-2', '2026-05-04', 'charge', { 'holding:h2': 500, 'purchases:d1': -500 });
const book: readonly Entry[] = [
  entry('bought', '2026-05-02', 'purchase', { 'purchases:d1': 900, bank: -900 }),
  entry('charge-1', '2026-05-04', 'charge', { 'holding:h1': 300, 'purchases:d1': -300 }),
  wrong,
  reversalOf(wrong, day('2026-05-09'), 'back-2'),
  entry('charge-3', '2026-05-09', 'charge', { 'holding:h2': 600, 'purchases:d1': -600 }),
  entry('paid', '2026-06-01', 'payment', { cash: 250, 'holding:h1': -250 }),
];

describe('balances', () => {
  test('of a delivery that is charged on in full', () =>
    expect(balancesOf(book)).toEqual([
      { account: 'bank', minor: -900 },
      { account: 'cash', minor: 250 },
      { account: 'holding:h1', minor: 50 },
      { account: 'holding:h2', minor: 600 },
      { account: 'purchases:d1', minor: 0 },
    ]));
  test('of nothing', () => expect(balancesOf([])).toEqual([]));
});

describe('a statement', () => {
  test('opens with what was before, and ends with what is then', () =>
    expect(statementOf('holding:h1', book, day('2026-06-01'), day('2026-06-30'))).toEqual({
      account: 'holding:h1',
      from: '2026-06-01',
      to: '2026-06-30',
      openingMinor: 300,
      lines: [
        {
          entryId: 'paid',
          on: '2026-06-01',
          kind: 'payment',
          reverses: null,
          reversedBy: null,
          minor: -250,
          balanceMinor: 50,
        },
      ],
      closingMinor: 50,
    }));
  test('shows what was taken back, by what, and does not hide it', () => {
    const { lines, openingMinor, closingMinor } = statementOf('holding:h2', book, day('2026-05-04'), day('2026-05-09'));
    expect(
      lines.map(({ entryId, minor, balanceMinor, reverses, reversedBy }) => [
        entryId,
        minor,
        balanceMinor,
        reverses,
        reversedBy,
      ]),
    ).toEqual([
      ['charge-2', 500, 500, null, 'back-2'],
      ['back-2', -500, 0, 'charge-2', null],
      ['charge-3', 600, 600, null, null],
    ]);
    expect([openingMinor, closingMinor]).toEqual([0, 600]);
  });
  test('both days are in it, the days around them are not', () => {
    const ids = (from: string, to: string) =>
      statementOf('purchases:d1', book, day(from), day(to)).lines.map(({ entryId }) => entryId);
    expect(ids('2026-05-02', '2026-05-04')).toEqual(['bought', 'charge-1', 'charge-2']);
    expect(ids('2026-05-03', '2026-05-03')).toEqual([]);
    expect(ids('2026-05-02', '2026-05-02')).toEqual(['bought']);
  });
  test('says who took an entry back even where that came later', () =>
    expect(statementOf('holding:h2', book, day('2026-05-04'), day('2026-05-04')).lines[0]?.reversedBy).toBe('back-2'));
  test('of an account that was never touched', () =>
    expect(statementOf('other:seed', book, day('2026-01-01'), day('2026-12-31'))).toMatchObject({
      openingMinor: 0,
      lines: [],
      closingMinor: 0,
    }));
  test('days that run backwards, and an account that is none, are refused', () => {
    expect(() => statementOf('bank', book, day('2026-05-02'), day('2026-05-01'))).toThrow(RangeError);
    expect(() => statementOf('till' as Account, book, day('2026-05-01'), day('2026-05-02'))).toThrow(RangeError);
  });
});

describe('what was added up elsewhere', () => {
  const move = (entryId: string, on: string, minor: number) => ({
    ...{ entryId, minor, on: day(on), reverses: null, reversedBy: null },
    kind: 'charge' as const,
  });
  const may = [day('2026-05-01'), day('2026-05-31')] as const;
  test('balances that sum to nothing stand; others are refused', () => {
    expect(checkedBalances(balancesOf(book))).toEqual(balancesOf(book));
    expect(checkedBalances([])).toEqual([]);
    expect(() => checkedBalances([{ account: 'bank', minor: 1 }])).toThrow(RangeError);
    expect(() => checkedBalances([{ account: 'bank', minor: Number.NaN }])).toThrow(RangeError);
  });
  test('a statement runs on from its opening', () => {
    const moves = [move('a', '2026-05-01', 300), move('b', '2026-05-01', -50), move('c', '2026-05-31', 7)];
    const { lines, closingMinor } = runningStatement('bank', ...may, { openingMinor: 100, moves });
    expect(lines.map(({ balanceMinor }) => balanceMinor)).toEqual([400, 350, 357]);
    expect(closingMinor).toBe(357);
  });
  test.each([
    ['out of order', [move('a', '2026-05-09', 1), move('b', '2026-05-08', 1)]],
    ['before the first day', [move('a', '2026-04-30', 1)]],
    ['after the last', [move('a', '2026-06-01', 1)]],
    ['of nothing', [move('a', '2026-05-09', 0)]],
    ['of half a penny', [move('a', '2026-05-09', 0.5)]],
  ])('a line %s is refused', (_, moves) =>
    expect(() => runningStatement('bank', ...may, { openingMinor: 0, moves })).toThrow(RangeError),
  );
});

describe('a ledger is refused', () => {
  const back = reversalOf(wrong, day('2026-05-09'), 'back-2');
  test.each([
    ['with an entry twice', [wrong, wrong]],
    ['with an entry that does not balance', [entry('e', '2026-05-01', 'charge', { bank: 1, cash: 1 })]],
    ['with a correction of what is not there', [back]],
    ['with an entry taken back twice', [wrong, back, { ...back, id: 'again' }]],
    [
      'with an entry taken back in part',
      [wrong, { ...back, lines: entry('', '2026-05-01', 'charge', { 'holding:h2': -499, 'purchases:d1': 499 }).lines }],
    ],
    [
      'with an entry taken back from another',
      [wrong, { ...back, lines: entry('', '2026-05-01', 'charge', { 'holding:h1': -500, 'purchases:d1': 500 }).lines }],
    ],
    [
      'with an entry taken back, and something else besides',
      [wrong, { ...back, lines: [...back.lines, ...entry('', '2026-05-01', 'charge', { bank: 1, cash: -1 }).lines] }],
    ],
    ['with an entry taken back before it was written', [wrong, { ...back, on: day('2026-05-03') }]],
    [
      'with a correction of a correction',
      [wrong, back, { ...back, id: 'third', lines: wrong.lines, reverses: 'back-2' }],
    ],
  ])('%s', (_, entries) => {
    expect(() => checkedLedger(entries)).toThrow(RangeError);
    expect(() => balancesOf(entries)).toThrow(RangeError);
    expect(() => statementOf('bank', entries, day('2026-05-01'), day('2026-05-02'))).toThrow(RangeError);
  });
});

const accounts: readonly Account[] = ['bank', 'cash', 'holding:h1', 'holding:h2', 'purchases:d1', 'other:seed'];
const firstDay = day('2026-01-01');

/** Entries over a few days, each between two accounts or three, some of them taken back later. */
const anyLedger = fc
  .array(
    fc.record({
      days: fc.nat(12),
      between: fc.shuffledSubarray([...accounts], { minLength: 2, maxLength: 3 }),
      amounts: fc.tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 9999 })),
      takenBack: fc.option(fc.nat(5)),
    }),
    { maxLength: 25 },
  )
  .map((rows) =>
    rows.flatMap(({ days, between, amounts, takenBack }, at): Entry[] => {
      const [last = 'bank', ...rest] = between;
      const lines = rest.map((account, nth) => ({ account, minor: amounts[nth] ?? 1 }));
      const total = lines.reduce((sum, { minor }) => sum + minor, 0);
      const made: Entry = {
        id: `e${at}`,
        on: addDays(firstDay, days),
        kind: 'charge',
        lines: [...lines, { account: last, minor: -total }],
      };
      return takenBack === null ? [made] : [made, reversalOf(made, addDays(made.on, takenBack), `back${at}`)];
    }),
  );
const total = (numbers: readonly number[]) => numbers.reduce((sum, value) => sum + value, 0);

test('balances sum to exactly zero, and the order of the entries changes nothing', () => {
  fc.assert(
    fc.property(anyLedger, (entries) => {
      const balances = balancesOf(entries);
      expect(total(balances.map(({ minor }) => minor))).toBe(0);
      expect(balancesOf(entries.toReversed())).toEqual(balances);
    }),
  );
});

test('what was taken back is as if it had never been written', () => {
  fc.assert(
    fc.property(anyLedger, (entries) => {
      const takenBack = new Set(entries.flatMap(({ id, reverses }) => (reverses ? [id, reverses] : [])));
      const left = balancesOf(entries.filter(({ id }) => !takenBack.has(id)));
      expect(balancesOf(entries).filter(({ minor }) => minor !== 0)).toEqual(left.filter(({ minor }) => minor !== 0));
    }),
  );
});

test('opening and lines sum to closing; statements of following days join; the last closes with the balance', () => {
  fc.assert(
    fc.property(anyLedger, fc.constantFrom(...accounts), fc.nat(20), (entries, account, cut) => {
      const [from, middle, to] = [firstDay, addDays(firstDay, cut), addDays(firstDay, 40)];
      const one = statementOf(account, entries, from, middle);
      const other = statementOf(account, entries, addDays(middle, 1), to);
      for (const { openingMinor, lines, closingMinor } of [one, other]) {
        expect(openingMinor + total(lines.map(({ minor }) => minor))).toBe(closingMinor);
        expect(lines.at(-1)?.balanceMinor ?? openingMinor).toBe(closingMinor);
        expect(lines.map(({ on }) => on)).toEqual(lines.map(({ on }) => on).sort());
      }
      expect(one.openingMinor).toBe(0);
      expect(other.openingMinor).toBe(one.closingMinor);
      const balance = balancesOf(entries).find((row) => row.account === account)?.minor ?? 0;
      expect(other.closingMinor).toBe(balance);
    }),
  );
});

test('what was given is left as it was', () => {
  const before = structuredClone(book);
  statementOf('bank', book, day('2026-05-01'), day('2026-06-01'));
  balancesOf(book.toReversed());
  expect(book).toEqual(before);
});
