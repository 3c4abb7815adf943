import { addDays, type CalendarDate } from '../calendar/calendar-date';
import type { Dated } from './dated';

/** A thing as a calendar was last told of it. */
export type Told = {
  readonly dated: Dated;
  /** Rises with every change, so that a calendar takes the newer; from 0. */
  readonly sequence: number;
  /** Milliseconds since 1970 at which that was first told. */
  readonly changedAtMs: number;
  /** It is off: told once more, so that a calendar takes it out. */
  readonly cancelled: boolean;
};

/** Days that what is off or over is still told. */
const keptDays = 60;

/**
 * What a calendar is told now, from what it was told before and how things stand.
 *
 * Method: by key. What is new begins at 0; what has changed, or has come back, is one further; what is gone while its last day is still to
 * come is one further and off. What is over and gone stays as it was. Both are dropped after 60 days.
 *
 * @param before  as last told, each key once
 * @param now     as things stand, each key once
 * @param today   the member's day
 * @param nowMs   the instant [ms]
 * @returns       everything that is told, by key; what did not change is the very object of before
 * @throws RangeError where a key stands twice
 * @source        RFC 5545, 3.8.7.4 (sequence number) and 3.8.1.11 (status)
 * @example       a round moved by a day → its sequence 1, the rest as before
 */
export function feedTold(
  before: readonly Told[],
  now: readonly Dated[],
  today: CalendarDate,
  nowMs: number,
): readonly Told[] {
  const told = byKey(before, ({ dated }) => dated.key);
  const standing = byKey(now, ({ key }) => key);
  const kept = [...told.values()].flatMap((one): Told[] => {
    const dated = standing.get(one.dated.key);
    if (dated) return [isSame(one, dated) ? one : changed(one, { dated, cancelled: false })];
    if (one.dated.to < addDays(today, -keptDays)) return [];
    if (one.cancelled || one.dated.to < today) return [one];
    return [changed(one, { cancelled: true })];
  });
  const begun = [...standing.values()]
    .filter(({ key }) => !told.has(key))
    .map((dated): Told => ({ dated, sequence: 0, changedAtMs: nowMs, cancelled: false }));
  return [...kept, ...begun].sort((one, other) => (one.dated.key < other.dated.key ? -1 : 1));

  function changed(one: Told, change: Partial<Told>): Told {
    return { ...one, ...change, sequence: one.sequence + 1, changedAtMs: nowMs };
  }
}

function isSame({ dated, cancelled }: Told, now: Dated): boolean {
  return !cancelled && canonical(dated) === canonical(now);
}

// A database may give the facts back in another order.
function canonical({ code, from, to, facts }: Dated): string {
  return JSON.stringify([code, from, to, Object.entries(facts).sort(([one], [other]) => (one < other ? -1 : 1))]);
}

function byKey<T>(all: readonly T[], keyOf: (one: T) => string): ReadonlyMap<string, T> {
  const map = new Map(all.map((one) => [keyOf(one), one]));
  if (map.size < all.length) throw new RangeError('a key stands twice');
  return map;
}
