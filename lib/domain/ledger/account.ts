/**
 * An account of the society's ledger. What stands on it is owed to the society where it is above nothing, and by the society
 * where it is below.
 */
export type Account =
  /** What a holding owes; below nothing it is in credit. */
  | `holding:${string}`
  /** What a delivery cost, less what was charged on for it: nothing once it is all charged on. */
  | `purchases:${string}`
  | 'bank'
  | 'cash'
  /** Whatever else the society keeps apart: seed, rents, its own funds. */
  | `other:${string}`;

export type AccountKind = 'holding' | 'purchases' | 'bank' | 'cash' | 'other';

const shape = /^(?:bank|cash|(holding|purchases|other):[^\s:]+)$/;

/** Whether a text names an account. */
export function isAccount(text: string): text is Account {
  return shape.test(text);
}

/**
 * What kind of account it is.
 *
 * @throws RangeError on a text that names none
 * @example accountKind('holding:h1') → 'holding'
 */
export function accountKind(account: Account): AccountKind {
  if (!isAccount(account)) throw new RangeError(`no such account: ${JSON.stringify(account)}`);
  return account.split(':')[0] as AccountKind;
}
