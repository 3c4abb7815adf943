import type { Account } from './account';
import { checkedLedger } from './checked-ledger';
import type { Entry } from './entry';

export type Balance = { readonly account: Account; readonly minor: number };

/**
 * What stands on every account.
 *
 * @param entries  n ≥ 0, in any order
 * @returns        one row for each account that was ever touched, by name; whole minor units, summing to exactly zero
 * @throws RangeError as `checkedLedger`, and on more than adds up exactly
 * @source         double entry
 * @example        a charge of 300 and 200 paid at the bank → bank 200, holding:h1 100, purchases:d1 −300
 */
export function balancesOf(entries: readonly Entry[]): Balance[] {
  const minorOn = new Map<Account, number>();
  for (const { account, minor } of checkedLedger(entries).flatMap(({ lines }) => lines))
    minorOn.set(account, addedUp(minorOn.get(account) ?? 0, minor));
  return [...minorOn]
    .map(([account, minor]) => ({ account, minor }))
    .sort((one, other) => (one.account < other.account ? -1 : 1));
}

/**
 * Balances that were added up elsewhere, such as by the database.
 *
 * @returns the same, which sum to exactly zero
 * @throws RangeError where they do not, or are not whole
 * @source  double entry
 */
export function checkedBalances(balances: readonly Balance[]): readonly Balance[] {
  const sum = balances.reduce((before, { minor }) => addedUp(before, minor), 0);
  if (sum !== 0) throw new RangeError(`the ledger is out by ${sum}`);
  return balances;
}

/** @throws RangeError on a sum that is no longer exact */
export function addedUp(before: number, minor: number): number {
  const sum = before + minor;
  if (!Number.isSafeInteger(sum)) throw new RangeError(`beyond what adds up exactly: ${sum}`);
  return sum;
}
