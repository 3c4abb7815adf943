import { type Account, isAccount } from './account';

/** What is owed to those who bring manure and straw, until they are paid. */
export const suppliersAccount = 'other:suppliers' satisfies Account;

/** The society's own funds: where balances open, and what is written off ends. */
export const societyAccount = 'other:society' satisfies Account;

/** The accounts that every society has beside bank and cash; it adds others of its own. */
export const builtInAccounts = [suppliersAccount, societyAccount] as const;

/**
 * The key of an account that a society adds, from its name: lower case, whatever is no letter or figure as one hyphen; of a
 * name that has neither, the numbers of its characters.
 *
 * @param name  with something to be seen in it
 * @returns     the account, which may be one that is there already
 * @throws RangeError on an empty name
 * @example     ownAccount('Seed & sets') → 'other:seed-sets'
 */
export function ownAccount(name: string): `other:${string}` {
  const key = name
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '');
  const account = `other:${key || [...name].map((one) => one.codePointAt(0)?.toString(16)).join('-')}` as const;
  if (!isAccount(account)) throw new RangeError(`no name for an account: ${JSON.stringify(name)}`);
  return account;
}
