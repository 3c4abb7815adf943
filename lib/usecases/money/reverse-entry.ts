import 'server-only';
import { lockEntry } from '@/lib/data/ledger';
import { seedOrderOfEntry } from '@/lib/data/seed-order';
import { reversalOf } from '@/lib/domain/ledger/entry';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { reverseInput } from '@/lib/schemas/money/ledger';
import { mutation } from '../operation';
import { NotFound, refuse } from '../refusal';
import { enter } from './enter';

/** Take an entry back by another with every sign turned, and a reason. Nothing in the ledger is changed. */
export const reverseEntry = mutation({
  name: 'reverse-entry',
  allow: canKeepMoney,
  input: reverseInput,
  write: async (context, { entryId, reason }) => {
    const { tx, scope, today, writeId } = context;
    const entry = await lockEntry(tx, scope, entryId);
    if (!entry) throw new NotFound();
    if (entry.kind === 'correction') refuse('is-correction');
    if (entry.reversedBy) refuse('reversed-already');
    if (entry.deliveryId && (entry.kind === 'purchase' || entry.kind === 'charge')) refuse('entry-of-delivery');
    if (await seedOrderOfEntry(tx, scope, entryId)) refuse('entry-of-seed-order');
    const back = reversalOf(entry, today > entry.on ? today : entry.on, writeId);
    return { entryId: await enter(context, { ...back, words: reason, deliveryId: entry.deliveryId }) };
  },
});
