import { describe, expect, test } from 'vitest';
import { accountWords, balanceWords, shareWords, standsWords } from './money-words';

describe('a balance', () => {
  test.each([
    [1240, 'You owe £12.40', 'owes £12.40'],
    [0, 'Nothing is owed', 'nothing owed'],
    [-300, 'You are £3.00 in credit', '£3.00 in credit'],
  ])('of %d', (minor, own, other) => {
    expect(balanceWords(minor)).toBe(own);
    expect(standsWords(minor)).toBe(other);
  });
});

test.each([
  ['bank', null, 'bank'],
  ['cash', undefined, 'cash'],
  ['holding:h1', 'A4, B4', 'plot A4, B4'],
  ['holding:h1', '', 'a holding with no plot'],
  ['purchases:d1', 'Stable load', 'purchases of “Stable load”'],
  ['other:suppliers', null, 'suppliers'],
  ['other:society', null, 'the society’s own funds'],
  ['other:seed', 'Seed', 'Seed'],
] as const)('%s is called', (account, name, words) => expect(accountWords(account, name)).toBe(words));

describe('a share of a price', () => {
  const share = { priceMinor: 10_000, loads: 5, allLoads: 70, loadUnit: 'barrow' as const, minor: 714 };
  const parts = { wholeMinor: 714, over: 20, overOf: 70, odd: 3 };
  test('to the penny, and who had an odd one', () => {
    expect(shareWords({ ...share, reason: { code: 'odd-penny-spared', ...parts } })).toBe(
      '£100.00 × 5 of 70 loads is £7.14 and 20/70 of a penny. 3 odd pennies were left and went by the lot: none fell here.',
    );
    expect(shareWords({ ...share, minor: 715, reason: { code: 'odd-penny', ...parts, odd: 1 } })).toContain(
      'One odd penny was left and went by the lot: one fell here.',
    );
  });
  test('exactly, or of nothing', () => {
    expect(shareWords({ ...share, loads: 7, minor: 1000, reason: { code: 'exact' } })).toBe(
      '£100.00 × 7 of 70 loads is £10.00 exactly.',
    );
    expect(shareWords({ ...share, loads: 0, minor: 0, reason: { code: 'nothing-taken' } })).toContain(
      'nothing is paid',
    );
  });
});
