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

test.each(['', '   ', '—', '::', '🌱'])('%j names none', (name) => expect(ownAccount(name)).toBeNull());

test('names an account, the same for the same name in capitals', () => {
  for (const account of builtInAccounts) expect(isAccount(account)).toBe(true);
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (name) => {
      const account = ownAccount(name);
      expect(account === null || isAccount(account)).toBe(true);
    }),
  );
});
