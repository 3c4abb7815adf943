import 'server-only';
import { holdingOf, type NewEntry, postEntries } from '@/lib/data/ledger';
import type { WriteContext } from '../operation';
import { refuseDayToCome } from './open-account';

/** Write one entry into the ledger, and note it in the book by its amounts; its words stand in the ledger alone. */
export async function enter(context: WriteContext, entry: NewEntry): Promise<string> {
  const { tx, scope, now, note } = context;
  refuseDayToCome(context, entry.on);
  const [entryId = ''] = await postEntries(tx, scope, [entry], now);
  const holdings = entry.lines.flatMap(({ account }) => holdingOf(account) ?? []);
  note({
    verb: entry.reverses ? 'taken back' : 'entered',
    thing: 'ledger entry',
    thingId: entryId,
    ...(holdings.length === 1 ? { forHoldingId: holdings[0] ?? null } : {}),
    after: {
      kind: entry.kind,
      on: entry.on,
      minor: entry.lines.reduce((sum, { minor }) => sum + Math.max(0, minor), 0),
      lines: entry.lines.length,
      ...(entry.reverses ? { reverses: entry.reverses } : {}),
    },
  });
  return entryId;
}
