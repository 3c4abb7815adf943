import 'server-only';
import { accountHolders } from '@/lib/data/account-holder';
import { lockEntry } from '@/lib/data/ledger';
import { moveSeedOrder, type SeedOrderRecord } from '@/lib/data/seed-order';
import { seedWantsOf } from '@/lib/data/seed-want';
import { reversalOf } from '@/lib/domain/ledger/entry';
import { boughtFor } from '@/lib/domain/ledger/postings';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { canKeepMoney } from '@/lib/domain/policy/money';
import type { Owed } from '@/lib/domain/seed/society-order';
import { correctSeedOrderInput, seedOrderInput } from '@/lib/schemas/seed/order';
import { enter } from '../money/enter';
import { mutation, type WriteContext } from '../operation';
import { tellEach } from '../tell';
import { takeSeedStep } from './open-order';
import { pooledOrder } from './pooled-order';

const thing = 'seed order';

/** Settle an order: one entry in the ledger, owed to whoever sold the seed and charged to those who were given some. */
export const settleSeedOrder = mutation({
  name: 'settle-seed-order',
  allow: canKeepMoney,
  input: seedOrderInput,
  write: async (context, { orderId }) => {
    const { tx, scope, today, now, note } = context;
    const order = await takeSeedStep(context, orderId, 'settle');
    const { owed, seedMinor, leftMinor } = pooledOrder(order, await seedWantsOf(tx, scope, [orderId]));
    const posting = boughtFor(owed, leftMinor);
    const entryId = posting && (await enter(context, { ...posting, on: today, words: order.name }));
    await moveSeedOrder(tx, scope, orderId, { state: 'settled', settledAt: now, entryId });
    const minor = seedMinor + order.extraMinor;
    note({ verb: 'settled', thing, thingId: orderId, after: { minor, holdings: owed.length, leftMinor } });
    await tellOwed(context, order, owed);
    return { minor, holdings: owed.filter((one) => one.minor > 0).length };
  },
});

async function tellOwed(context: WriteContext, { name }: SeedOrderRecord, owed: readonly Owed[]): Promise<void> {
  const charged = owed.filter(({ minor }) => minor > 0);
  const holdingIds = charged.map(({ holdingId }) => holdingId);
  const holders = await accountHolders(context.tx, context.scope, context.today, { holdingIds });
  const membersOf = new Map(holders.map(({ holdingId, memberIds }) => [holdingId, memberIds]));
  await tellEach(
    context,
    `what you owe for ${name}`,
    charged.map(({ holdingId, minor, extraMinor }) => ({
      memberIds: membersOf.get(holdingId) ?? [],
      body:
        `Your seed of “${name}”: ${formatPounds(minor)}${extraMinor ? `, ${formatPounds(extraMinor)} of it for postage and the like` : ''}. ` +
        // How to pay stands on the page and never in mail.
        'Sign in and open “Your account” to see it, and how to pay.',
    })),
  );
}

/** Put a settled order right: what was charged is taken back, and the order waits to be ticked off and settled anew. */
export const correctSeedOrder = mutation({
  name: 'correct-seed-order',
  allow: canKeepMoney,
  input: correctSeedOrderInput,
  write: async (context, { orderId, reason }) => {
    const { tx, scope, today, writeId, note } = context;
    const { entryId } = await takeSeedStep(context, orderId, 'correct');
    const entry = entryId ? await lockEntry(tx, scope, entryId) : null;
    if (entry && !entry.reversedBy) {
      const back = reversalOf(entry, today > entry.on ? today : entry.on, writeId);
      await enter(context, { ...back, words: reason });
    }
    await moveSeedOrder(tx, scope, orderId, { state: 'arrived', settledAt: null, entryId: null });
    note({ verb: 'opened again', thing, thingId: orderId });
    return { orderId };
  },
});
