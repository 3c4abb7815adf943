import type { CalendarDate } from '../calendar/calendar-date';
import { type Account, isAccount } from './account';

/** What an entry is for. */
export const entryKinds = ['purchase', 'charge', 'payment', 'transfer', 'correction'] as const;
export type EntryKind = (typeof entryKinds)[number];

/** So much on to an account, or off it where it is below nothing [minor units, pence]. */
export type EntryLine = { readonly account: Account; readonly minor: number };

/** One happening in money. It is written once and never changed; what was wrong in it is taken back by another. */
export type Entry = {
  readonly id: string;
  readonly on: CalendarDate;
  readonly kind: EntryKind;
  readonly lines: readonly EntryLine[];
  /** The entry that a correction takes back. */
  readonly reverses?: string;
};

// A million million: thousands of such lines still add up exactly.
const mostMinor = 1_000_000_000_000;

/**
 * An entry that may be written: it moves money from some accounts on to others, and makes or loses none.
 *
 * @param entry  two lines or more on different accounts; whole minor units other than 0, summing to 0
 * @returns      the same entry
 * @throws RangeError on lines that do not sum to zero, on fewer than two, on an amount that is 0, not whole or beyond a million
 *                    million, on an account named twice or that is none, on a correction of nothing, or other kinds of something
 * @source       double entry
 * @example      a charge: holding:h1 +300, purchases:d1 −300
 */
export function checkedEntry(entry: Entry): Entry {
  const { id, kind, lines, reverses } = entry;
  const wrong = (what: string) => new RangeError(`entry ${id}: ${what}`);
  if (!id) throw wrong('it has no id');
  if (lines.length < 2) throw wrong('money goes from one account to another');
  for (const { account, minor } of lines) {
    if (!isAccount(account)) throw wrong(`no such account: ${JSON.stringify(account)}`);
    if (!Number.isSafeInteger(minor) || minor === 0 || Math.abs(minor) > mostMinor)
      throw wrong(`an amount is in whole pence and not nothing: ${minor}`);
  }
  if (new Set(lines.map(({ account }) => account)).size < lines.length) throw wrong('an account is named twice');
  if (sumOf(lines) !== 0) throw wrong(`its lines sum to ${sumOf(lines)}, not to nothing`);
  if ((kind === 'correction') !== (reverses !== undefined))
    throw wrong('a correction, and nothing else, takes an entry back');
  if (reverses === id) throw wrong('it takes itself back');
  return entry;
}

/**
 * The entry that takes another back: the same lines with their signs turned. What is right is then entered anew.
 *
 * @param id  of the new entry
 * @param on  no day before the entry's own
 * @returns   a correction; with it every account stands as if neither had been written
 * @throws RangeError on a correction, which stands, on a day before, and as `checkedEntry`
 * @source    common practice: nothing in the book is changed
 * @example   holding:h1 +300, purchases:d1 −300 → holding:h1 −300, purchases:d1 +300
 */
export function reversalOf(entry: Entry, on: CalendarDate, id: string): Entry {
  const { kind, lines, on: before } = checkedEntry(entry);
  if (kind === 'correction') throw new RangeError(`entry ${entry.id} is a correction: what is right is entered anew`);
  if (on < before) throw new RangeError(`entry ${entry.id} was not yet written on ${on}`);
  return checkedEntry({
    id,
    on,
    kind: 'correction',
    lines: lines.map(({ account, minor }) => ({ account, minor: -minor })),
    reverses: entry.id,
  });
}

function sumOf(lines: readonly EntryLine[]): number {
  return lines.reduce((sum, { minor }) => sum + minor, 0);
}
