import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isAccount } from './account';
import { builtInAccounts, ownAccount } from './own-accounts';

test.each([
  ['Seed & sets', 'other:seed-sets'],
  ['  Rents  ', 'other:rents'],
  ['Key deposits, 2026', 'other:key-deposits-2026'],
  ['Wasser für alle', 'other:wasser-für-alle'],
  ['Suppliers', 'other:suppliers'],
  ['７号', 'other:7号'],
])('%j', (name, account) => expect(ownAccount(name)).toBe(account));

test('a name without letters and figures has a key too', () => {
  expect(ownAccount('🌱')).toBe('other:1f331');
  expect(ownAccount('—:')).toBe('other:2014-3a');
  expect(() => ownAccount('')).toThrow(RangeError);
});

test('whatever the name, it is an account', () => {
  for (const account of builtInAccounts) expect(isAccount(account)).toBe(true);
  fc.assert(
    fc.property(fc.string({ unit: 'binary', minLength: 1 }), (name) => {
      expect(isAccount(ownAccount(name))).toBe(true);
    }),
  );
});
