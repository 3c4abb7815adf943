import { type Account, accountKind } from '@/lib/domain/ledger/account';
import type { EntryKind } from '@/lib/domain/ledger/entry';
import { societyAccount, suppliersAccount } from '@/lib/domain/ledger/own-accounts';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import type { PriceReason } from '@/lib/domain/ledger/split-price';
import { loadsWords } from './delivery-words';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';

/** What stands on one's own account, in words. */
export function balanceWords(minor: number): string {
  if (minor === 0) return 'Nothing is owed';
  return minor > 0 ? `You owe ${formatPounds(minor)}` : `You are ${formatPounds(-minor)} in credit`;
}

/** The same of somebody else's. */
export function standsWords(minor: number): string {
  if (minor === 0) return 'nothing owed';
  return minor > 0 ? `owes ${formatPounds(minor)}` : `${formatPounds(-minor)} in credit`;
}

/** What an account is called; `name` is what the society calls it, or the plots of its holding. */
export function accountWords(account: Account, name: string | null | undefined): string {
  if (account === suppliersAccount) return 'suppliers';
  if (account === societyAccount) return 'the society’s own funds';
  const kind = accountKind(account);
  if (kind === 'bank' || kind === 'cash') return kind;
  if (kind === 'holding') return name ? `plot ${name}` : 'a holding with no plot';
  return kind === 'purchases' ? `purchases of “${name ?? 'a delivery'}”` : (name ?? account.slice('other:'.length));
}

export const kindWords: Readonly<Record<EntryKind, string>> = {
  purchase: 'bought',
  charge: 'charged',
  payment: 'payment',
  transfer: 'moved',
  correction: 'taken back',
};

export type ShareOfPrice = {
  readonly priceMinor: number;
  readonly loads: number;
  readonly allLoads: number;
  readonly loadUnit: LoadUnit;
  readonly minor: number;
  readonly reason: PriceReason;
};

/** Why a part of a price is what it is: the sum, and how the odd pennies fell. */
export function shareWords({ priceMinor, loads, allLoads, loadUnit, minor, reason }: ShareOfPrice): string {
  if (reason.code === 'nothing-taken') return 'No load was taken, so nothing is paid.';
  const sum = `${formatPounds(priceMinor)} × ${loads} of ${loadsWords(allLoads, loadUnit)}`;
  if (reason.code === 'exact') return `${sum} is ${formatPounds(minor)} exactly.`;
  const { wholeMinor, over, overOf, odd } = reason;
  const part = `${sum} is ${formatPounds(wholeMinor)} and ${over}/${overOf} of a penny.`;
  const lot =
    odd === 1 ? 'One odd penny was left and went by the lot' : `${odd} odd pennies were left and went by the lot`;
  return `${part} ${lot}: ${reason.code === 'odd-penny' ? 'one fell here' : 'none fell here'}.`;
}
