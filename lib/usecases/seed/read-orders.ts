import 'server-only';
import { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import { type HoldingOnDay, holdingById, holdingsOfMember } from '@/lib/data/holding';
import { wantsInTin } from '@/lib/data/seed-packet';
import { seedOrderById, type SeedOrderRecord, seedOrdersOf } from '@/lib/data/seed-order';
import { type SeedWantRecord, seedWantsOf } from '@/lib/data/seed-want';
import { canBook, canSeePrivateRecords } from '@/lib/domain/policy/holding';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { canEnter } from '@/lib/domain/policy/standing';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { canSeeSeedOrder } from './open-order';
import { pooledOrder } from './pooled-order';
import { suggested } from './suggested';

/** The society's orders of seed, the newest first, with how many things the viewer's holdings want of each. */
export const readSeedOrders = query({
  name: 'read-seed-orders',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today, now }) => {
    const orders = (await seedOrdersOf(db, scope, now)).filter((order) => canSeeSeedOrder(scope, order));
    const holdings = await holdingsOfMember(db, scope, scope.memberId, today);
    const wants = await seedWantsOf(
      db,
      scope,
      orders.map(({ id }) => id),
      holdings.map(({ id }) => id),
    );
    return {
      timeZone: scope.timeZone,
      keeps: canKeepMoney(scope),
      orders: orders.map(({ id, name, state, closesAt, items }) => ({
        ...{ id, name, state, closesAt },
        items: items.length,
        mine: wants.filter(({ itemId }) => items.some((item) => item.id === itemId)).length,
      })),
    };
  },
});

const oneOrder = z.object({ orderId: z.uuid(), holdingId: z.uuid().nullish().catch(null) });

/**
 * One order for a member: what can be ordered, what each of their holdings wants and is given, what it owes, and their own list. Of what
 * others want nothing is said. The secretary may put down the list of any holding; its tin stays shut.
 */
export const readSeedOrder = query({
  name: 'read-seed-order',
  allow: canEnter,
  input: oneOrder,
  read: async (context, { orderId, holdingId }) => {
    const { db, scope, now } = context;
    const order = await seedOrderById(db, scope, orderId, now);
    if (!order || !canSeeSeedOrder(scope, order)) throw new NotFound();
    const holdings = await holdingsFor(context, holdingId);
    const [crops, wants] = await Promise.all([cropsOf(db, scope), seedWantsOf(db, scope, [orderId])]);
    const pooled = ['open', 'planned', 'called-off'].includes(order.state) ? null : pooledOrder(order, wants);
    const claims = [];
    for (const holding of holdings) claims.push(await claimOf(context, { order, wants, pooled }, holding));
    const { id, name, state, closesAt, notes, items } = order;
    return {
      order: { id, name, state, closesAt, notes },
      items: items.map(({ packs, ...item }) => ({
        ...item,
        cropName: crops.get(item.cropKey)?.name ?? item.cropKey,
        packs: packs.map(({ amount, priceMinor }) => ({ amount, priceMinor })),
      })),
      ...{ claims, timeZone: scope.timeZone, keeps: canKeepMoney(scope) },
    };
  },
});

async function holdingsFor({ db, scope, today }: ReadContext, holdingId: string | null | undefined) {
  if (!holdingId) {
    const own = await holdingsOfMember(db, scope, scope.memberId, today);
    return own.filter(({ plots }) => plots.length);
  }
  const holding = await holdingById(db, scope, holdingId, today);
  if (!holding || !(canBook(scope, holding) || canSeePrivateRecords(scope, holding))) throw new NotFound();
  return [holding];
}

type Pool = {
  readonly order: SeedOrderRecord;
  readonly wants: readonly SeedWantRecord[];
  readonly pooled: ReturnType<typeof pooledOrder> | null;
};

async function claimOf(context: ReadContext, { order, wants, pooled }: Pool, holding: HoldingOnDay) {
  const { db, scope } = context;
  const own = wants.filter(({ holdingId }) => holdingId === holding.id);
  const isOwn = canSeePrivateRecords(scope, holding);
  const ids = own.map(({ id }) => id);
  const inTin = isOwn ? await wantsInTin(db, scope, ids) : new Set<string>();
  const shareOf = (itemId: string) =>
    pooled?.lines.find((line) => line.itemId === itemId)?.shares.find(({ id }) => id === holding.id);
  return {
    holding: { id: holding.id, plots: holding.plots.map(({ number }) => number) },
    names: holding.members.map(({ name }) => name),
    mayPutDown: canBook(scope, holding),
    isOwn,
    wants: own.map(({ id, itemId, amount, given, handedOutAt }) => ({
      ...{ itemId, amount, given, isHandedOut: handedOutAt !== null, isInTin: inTin.has(id) },
      minor: shareOf(itemId)?.minor ?? null,
      level: pooled?.lines.find((line) => line.itemId === itemId)?.level ?? null,
    })),
    owed: pooled?.owed.find(({ holdingId }) => holdingId === holding.id) ?? null,
    suggested: isOwn && order.state === 'open' ? await suggested(context, holding, order.items) : null,
  };
}
