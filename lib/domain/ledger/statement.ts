import type { CalendarDate } from '../calendar/calendar-date';
import { type Account, accountKind } from './account';
import { addedUp } from './balances';
import { checkedLedger } from './checked-ledger';
import type { Entry, EntryKind } from './entry';

export type StatementLine = {
  readonly entryId: string;
  readonly on: CalendarDate;
  readonly kind: EntryKind;
  /** The entry that this one takes back, or null. */
  readonly reverses: string | null;
  /** The entry that takes this one back, whenever it does, or null. */
  readonly reversedBy: string | null;
  readonly minor: number;
  /** What stands on the account after this line. */
  readonly balanceMinor: number;
};

export type Statement = {
  readonly account: Account;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly openingMinor: number;
  readonly lines: readonly StatementLine[];
  readonly closingMinor: number;
};

/**
 * The statement of one account from one day to another, both included.
 *
 * @param entries  of the whole ledger; of one day, in the order in which they were written
 * @returns        lines by day; opening and lines sum exactly to closing, which is the opening of the day after
 * @throws RangeError as `checkedLedger`; on an account that is none; on days that run backwards
 * @source         double entry
 * @example        300 charged in May and 200 paid in June, from June on → opening 300, −200, closing 100
 */
export function statementOf(
  account: Account,
  entries: readonly Entry[],
  from: CalendarDate,
  to: CalendarDate,
): Statement {
  accountKind(account);
  if (from > to) throw new RangeError(`a statement goes from a day to a later one: ${from} to ${to}`);
  const reversedBy = new Map(checkedLedger(entries).map(({ id, reverses }) => [reverses, id]));
  const moves = entries
    .flatMap((entry) => entry.lines.filter((line) => line.account === account).map(({ minor }) => ({ entry, minor })))
    .sort((one, other) => (one.entry.on < other.entry.on ? -1 : Number(one.entry.on > other.entry.on)));
  let balanceMinor = 0;
  for (const { minor } of moves.filter(({ entry }) => entry.on < from)) balanceMinor = addedUp(balanceMinor, minor);
  const openingMinor = balanceMinor;
  const lines = moves
    .filter(({ entry }) => entry.on >= from && entry.on <= to)
    .map(({ entry: { id, on, kind, reverses }, minor }) => {
      balanceMinor = addedUp(balanceMinor, minor);
      return {
        entryId: id,
        on,
        kind,
        reverses: reverses ?? null,
        reversedBy: reversedBy.get(id) ?? null,
        minor,
        balanceMinor,
      };
    });
  return { account, from, to, openingMinor, lines, closingMinor: balanceMinor };
}
