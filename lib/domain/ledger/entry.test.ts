import { describe, expect, test } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { type Account, accountKind, isAccount } from './account';
import { checkedEntry, type Entry, entryKinds, type EntryLine, reversalOf } from './entry';

const may = calendarDate('2026-05-04');
const charge: Entry = {
  id: 'e1',
  on: may,
  kind: 'charge',
  lines: [
    { account: 'holding:h1', minor: 300 },
    { account: 'purchases:d1', minor: -300 },
  ],
};
const withLines = (...lines: readonly (readonly [string, number])[]): Entry => ({
  ...charge,
  lines: lines.map(([account, minor]): EntryLine => ({ account: account as Account, minor })),
});

describe('accounts', () => {
  test.each([
    ['holding:0190', 'holding'],
    ['purchases:d1', 'purchases'],
    ['other:seed', 'other'],
    ['bank', 'bank'],
    ['cash', 'cash'],
  ] as const)('%s', (account, kind) => {
    expect(isAccount(account)).toBe(true);
    expect(accountKind(account)).toBe(kind);
  });
  test.each(['', 'holding', 'holding:', 'holding:a b', 'holding:a:b', 'bank:1', 'till', 'bank\n'])(
    '%j is none',
    (text) => {
      expect(isAccount(text)).toBe(false);
      expect(() => accountKind(text as Account)).toThrow(RangeError);
    },
  );
});

describe('an entry', () => {
  test('that balances stands as it was given', () => {
    expect(checkedEntry(charge)).toBe(charge);
    const three = withLines(['holding:h1', 100], ['holding:h2', 200], ['purchases:d1', -300]);
    expect(checkedEntry(three)).toBe(three);
  });
  test('of the greatest amount there may be', () => {
    const most = 1_000_000_000_000;
    expect(() => checkedEntry(withLines(['bank', most], ['cash', -most]))).not.toThrow();
    expect(() => checkedEntry(withLines(['bank', most + 1], ['cash', -most - 1]))).toThrow(RangeError);
  });
  test.each(entryKinds.filter((kind) => kind !== 'correction'))('a %s takes nothing back', (kind) => {
    expect(() => checkedEntry({ ...charge, kind })).not.toThrow();
    expect(() => checkedEntry({ ...charge, kind, reverses: 'e0' })).toThrow(RangeError);
  });
  test.each([
    ['a penny too much', withLines(['holding:h1', 301], ['purchases:d1', -300])],
    ['a penny too little', withLines(['holding:h1', 299], ['purchases:d1', -300])],
    ['no lines', withLines()],
    ['one line', withLines(['bank', 1])],
    ['a line of nothing', withLines(['bank', 1], ['cash', -1], ['other:seed', 0])],
    ['two lines of nothing', withLines(['bank', 0], ['cash', 0])],
    ['half a penny', withLines(['bank', 0.5], ['cash', -0.5])],
    ['no number', withLines(['bank', Number.NaN], ['cash', 1])],
    ['endless money', withLines(['bank', Number.POSITIVE_INFINITY], ['cash', Number.NEGATIVE_INFINITY])],
    ['an account named twice', withLines(['bank', 1], ['bank', -1])],
    ['an account that is none', withLines(['till', 1], ['bank', -1])],
    ['no id', { ...charge, id: '' }],
    ['a correction of nothing', { ...charge, kind: 'correction' as const }],
    ['a correction of itself', { ...charge, kind: 'correction' as const, reverses: 'e1' }],
  ])('%s is refused', (_, wrong) => expect(() => checkedEntry(wrong)).toThrow(RangeError));
});

describe('a reversal', () => {
  test('has the same lines with their signs turned', () =>
    expect(reversalOf(charge, calendarDate('2026-06-01'), 'e2')).toEqual({
      id: 'e2',
      on: '2026-06-01',
      kind: 'correction',
      lines: [
        { account: 'holding:h1', minor: -300 },
        { account: 'purchases:d1', minor: 300 },
      ],
      reverses: 'e1',
    }));
  test('on the same day, and no day before', () => {
    expect(reversalOf(charge, may, 'e2').on).toBe(may);
    expect(() => reversalOf(charge, calendarDate('2026-05-03'), 'e2')).toThrow(RangeError);
  });
  test('of a reversal, under its own id, or of what does not balance, is refused', () => {
    expect(() => reversalOf(reversalOf(charge, may, 'e2'), may, 'e3')).toThrow(RangeError);
    expect(() => reversalOf(charge, may, 'e1')).toThrow(RangeError);
    expect(() => reversalOf(withLines(['bank', 1]), may, 'e2')).toThrow(RangeError);
  });
  test('leaves the entry as it was', () => {
    const before = structuredClone(charge);
    reversalOf(charge, may, 'e2');
    expect(charge).toEqual(before);
  });
});
