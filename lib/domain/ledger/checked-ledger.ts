import { checkedEntry, type Entry } from './entry';

/**
 * A ledger that may be added up: every entry balances, and what was taken back was taken back once, in full.
 *
 * @param entries  n ≥ 0, in any order
 * @returns        the same entries
 * @throws RangeError as `checkedEntry`; on an id that stands twice; on a correction of what is not there or was taken back
 *                    already, of a correction, on an earlier day, or by other amounts
 * @source         double entry
 * @example        a charge and its reversal → both
 */
export function checkedLedger(entries: readonly Entry[]): readonly Entry[] {
  const byId = new Map(entries.map((entry) => [entry.id, checkedEntry(entry)]));
  if (byId.size < entries.length) throw new RangeError('an entry stands twice');
  const taken = new Set<string>();
  for (const entry of entries) {
    if (entry.reverses === undefined) continue;
    const earlier = byId.get(entry.reverses);
    if (!earlier) throw new RangeError(`entry ${entry.id} takes back what is not there: ${entry.reverses}`);
    if (taken.has(earlier.id)) throw new RangeError(`entry ${earlier.id} was taken back twice`);
    taken.add(earlier.id);
    if (!takesBack(entry, earlier))
      throw new RangeError(`entry ${entry.id} does not take ${earlier.id} back as it stands`);
  }
  return entries;
}

function takesBack(correction: Entry, earlier: Entry): boolean {
  if (earlier.kind === 'correction' || correction.on < earlier.on) return false;
  const amounts = new Map(earlier.lines.map(({ account, minor }) => [account, minor]));
  return (
    correction.lines.length === earlier.lines.length &&
    correction.lines.every(({ account, minor }) => amounts.get(account) === -minor)
  );
}
