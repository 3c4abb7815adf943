import type { Account } from './account';
import { addedUp } from './balances';
import type { Entry, EntryLine } from './entry';
import { societyAccount, suppliersAccount } from './own-accounts';

/** What an entry says, before it has its day and its id. */
export type Posting = Pick<Entry, 'kind' | 'lines'>;

/**
 * A delivery bought: what it cost stands on its purchases, and is owed to whoever brought it until they are paid.
 *
 * @param priceMinor  whole number above 0 [pence]
 * @example           purchaseOf('d1', 900) → purchases:d1 +900, other:suppliers −900
 */
export function purchaseOf(deliveryId: string, priceMinor: number): Posting {
  return { ...moved(suppliersAccount, `purchases:${deliveryId}`, priceMinor), kind: 'purchase' };
}

/**
 * One charge to several holdings, off one account: a delivery's purchases, seed, rents.
 *
 * @param parts  unique holdings, each with what it is to pay: whole numbers ≥ 0 [pence]; who pays nothing has no line
 * @returns      one entry for all of them; null where nobody pays anything
 * @throws RangeError on a part below nothing, and on more than adds up exactly
 * @example      chargeOf('other:seed', [{ holdingId: 'h1', minor: 250 }]) → holding:h1 +250, other:seed −250
 */
export function chargeOf(
  from: Account,
  parts: readonly { readonly holdingId: string; readonly minor: number }[],
): Posting | null {
  const below = parts.find(({ minor }) => minor < 0);
  if (below) throw new RangeError(`nobody is charged less than nothing: ${below.minor}`);
  const lines = parts
    .filter(({ minor }) => minor > 0)
    .map(({ holdingId, minor }) => ({ account: `holding:${holdingId}` as const, minor }));
  if (lines.length === 0) return null;
  const total = lines.reduce((sum, { minor }) => addedUp(sum, minor), 0);
  return { kind: 'charge', lines: [...lines, { account: from, minor: -total }] };
}

/**
 * Something bought and charged on in one entry: owed to whoever sold it, by those whom it was bought for.
 *
 * @param parts      as for `chargeOf`
 * @param leftMinor  what nobody pays, and the society's own funds bear; whole number ≥ 0 [pence]
 * @returns          one entry for all of them; null where it cost nothing
 * @throws RangeError as `chargeOf`
 * @example          boughtFor([{ holdingId: 'h1', minor: 250 }], 0) → holding:h1 +250, other:suppliers −250
 */
export function boughtFor(
  parts: readonly { readonly holdingId: string; readonly minor: number }[],
  leftMinor: number,
): Posting | null {
  if (leftMinor < 0) throw new RangeError(`the society bears no less than nothing: ${leftMinor}`);
  const charge = chargeOf(suppliersAccount, parts);
  if (leftMinor === 0) return charge;
  const charged = charge?.lines.filter(({ minor }) => minor > 0) ?? [];
  const total = charged.reduce((sum, { minor }) => addedUp(sum, minor), leftMinor);
  const rest: readonly EntryLine[] = [
    { account: societyAccount, minor: leftMinor },
    { account: suppliersAccount, minor: -total },
  ];
  return { kind: 'charge', lines: [...charged, ...rest] };
}

/**
 * Money moved off one account on to another: a payment where a holding pays or suppliers are paid, otherwise a transfer.
 *
 * @param minor  whole number above 0 [pence]
 * @example      moved('holding:h1', 'bank', 735) → bank +735, holding:h1 −735, a payment
 */
export function moved(from: Account, to: Account, minor: number): Posting {
  const isPaid = [from, to].some((account) => account.startsWith('holding:') || account === suppliersAccount);
  return {
    kind: isPaid ? 'payment' : 'transfer',
    lines: [
      { account: to, minor },
      { account: from, minor: -minor },
    ],
  };
}
