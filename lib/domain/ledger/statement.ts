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

/** A line without what stands after it. */
export type StatementMove = Omit<StatementLine, 'balanceMinor'>;

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
  const reversedBy = new Map(checkedLedger(entries).map(({ id, reverses }) => [reverses, id]));
  const moves = entries
    .flatMap((entry) => entry.lines.filter((line) => line.account === account).map(({ minor }) => ({ entry, minor })))
    .sort((one, other) => (one.entry.on < other.entry.on ? -1 : Number(one.entry.on > other.entry.on)))
    .map(({ entry: { id, on, kind, reverses }, minor }) => ({
      entryId: id,
      on,
      kind,
      reverses: reverses ?? null,
      reversedBy: reversedBy.get(id) ?? null,
      minor,
    }));
  const openingMinor = moves.filter(({ on }) => on < from).reduce((sum, { minor }) => addedUp(sum, minor), 0);
  return runningStatement(account, from, to, {
    openingMinor,
    moves: moves.filter(({ on }) => on >= from && on <= to),
  });
}

/**
 * A statement from what was before it and the lines of its days: for who has not the whole ledger at hand.
 *
 * @param openingMinor  what stood on the account before the first day; whole number [pence]
 * @param moves         lines of the account within the days, by day; of one day, in the order in which they were written
 * @returns             the moves, each with what stands on the account after it
 * @throws RangeError on days that run backwards, a move that is out of order or of another day, amounts that are not whole or 0
 * @source              double entry
 * @example             opening 300, then −200 → closing 100
 */
export function runningStatement<Move extends StatementMove>(
  account: Account,
  from: CalendarDate,
  to: CalendarDate,
  { openingMinor, moves }: { readonly openingMinor: number; readonly moves: readonly Move[] },
): Omit<Statement, 'lines'> & { readonly lines: readonly (Move & Pick<StatementLine, 'balanceMinor'>)[] } {
  accountKind(account);
  if (from > to) throw new RangeError(`a statement goes from a day to a later one: ${from} to ${to}`);
  let balanceMinor = addedUp(openingMinor, 0);
  let day = from;
  const lines = moves.map((move) => {
    if (move.on < day || move.on > to || move.minor === 0) throw new RangeError(`out of its place: ${move.entryId}`);
    day = move.on;
    balanceMinor = addedUp(balanceMinor, move.minor);
    return { ...move, balanceMinor };
  });
  return { account, from, to, openingMinor, lines, closingMinor: balanceMinor };
}
