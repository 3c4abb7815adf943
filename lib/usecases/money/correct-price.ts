import 'server-only';
import { type DeliveryRecord, lockDelivery, moveDelivery } from '@/lib/data/delivery';
import { type LedgerRecord, postEntries, standingOf } from '@/lib/data/ledger';
import { balancesOn } from '@/lib/data/ledger-sums';
import { reversalOf } from '@/lib/domain/ledger/entry';
import { societyAccount } from '@/lib/domain/ledger/own-accounts';
import { moved } from '@/lib/domain/ledger/postings';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { correctPriceInput, writeOffInput } from '@/lib/schemas/money/ledger';
import { tellBookers } from '../deliveries/open-delivery';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { enter } from './enter';
import { postPrice, tellCharged } from './post-price';

/**
 * Put the price of a settled delivery right: what was entered of it is taken back, and the right price is split anew by the
 * same loads and the same lot, in one transaction.
 */
export const correctPrice = mutation({
  name: 'correct-price',
  allow: canKeepMoney,
  input: correctPriceInput,
  write: async (context, { deliveryId, price, reason }) => {
    const { tx, scope, now, note } = context;
    const delivery = await lockSettled(context, deliveryId);
    const standing = (await standingOf(tx, scope, [deliveryId])).filter(({ kind }) => kind !== 'payment');
    const before = costOf(standing);
    if (before === price) refuse('price-unchanged', { field: 'price', numbers: { minor: price } });
    await postEntries(tx, scope, backOf(context, standing, reason), now);
    await moveDelivery(tx, scope, deliveryId, { priceMinor: price });
    note({
      verb: 'price put right',
      thing: 'delivery',
      thingId: deliveryId,
      before: { priceMinor: before },
      after: { priceMinor: price, takenBack: standing.length },
    });
    // What is written later is later in the book.
    const later = { ...context, now: new Date(now.getTime() + standing.length) };
    await tellCharged(context, delivery, await postPrice(later, delivery, price), true);
    if (price === 0)
      await tellBookers(
        context,
        delivery,
        `nothing is owed for ${delivery.name}`,
        `“${delivery.name}” costs nothing after all. What was charged for it is taken back; what you paid stands to your credit.`,
      );
    return { minor: price };
  },
});

function costOf(standing: readonly LedgerRecord[]): number {
  const lines = standing.filter(({ kind }) => kind === 'purchase').flatMap((entry) => entry.lines);
  return lines.reduce((sum, { minor }) => sum + Math.max(0, minor), 0);
}

function backOf({ today, writeId }: WriteContext, standing: readonly LedgerRecord[], words: string) {
  return standing.map((entry) => {
    const back = reversalOf(entry, today > entry.on ? today : entry.on, writeId);
    return { ...back, words, deliveryId: entry.deliveryId };
  });
}

/** Write off what nobody took of a delivery, to the society's own funds. */
export const writeOff = mutation({
  name: 'write-off',
  allow: canKeepMoney,
  input: writeOffInput,
  write: async (context, { deliveryId, reason }) => {
    const { tx, scope, today } = context;
    await lockSettled(context, deliveryId);
    const account = `purchases:${deliveryId}` as const;
    const left = (await balancesOn(tx, scope, [account])).get(account) ?? 0;
    if (left <= 0) refuse('nothing-left-over');
    const entry = { ...moved(account, societyAccount, left), on: today, words: reason, deliveryId };
    return { entryId: await enter(context, entry), minor: left };
  },
});

// Whoever settles takes the same lock, so that a price is entered and put right one after the other.
async function lockSettled({ tx, scope, now }: WriteContext, deliveryId: string): Promise<DeliveryRecord> {
  const delivery = await lockDelivery(tx, scope, deliveryId, now, 'alone');
  if (!delivery) throw new NotFound();
  if (delivery.state !== 'settled') refuse('step-not-now', { numbers: { state: delivery.state } });
  return delivery;
}
