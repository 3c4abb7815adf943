import 'server-only';
import { moveSeedOrder, type SeedOrderRecord, type SeedPackRecord, writePacks } from '@/lib/data/seed-order';
import { seedWantsOf, writeGiven } from '@/lib/data/seed-want';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { markOrderedInput, noteArrivedInput } from '@/lib/schemas/seed/order';
import { mutation, type WriteContext } from '../operation';
import { Refused, type Refusal, refuse } from '../refusal';
import { takeSeedStep, tellWanting } from './open-order';
import { penceTyped } from './pence-typed';
import { pooledOrder } from './pooled-order';

const thing = 'seed order';

/** Order what is wanted, in whole packs at the least cost. What was wanted, and the packs, are frozen with it. */
export const markSeedOrdered = mutation({
  name: 'mark-seed-ordered',
  allow: canKeepMoney,
  input: markOrderedInput,
  write: async (context, { orderId, extra: extraMinor }) => {
    const { tx, scope, now, note } = context;
    const order = await takeSeedStep(context, orderId, 'order');
    const { lines, seedMinor } = pooledOrder({ ...order, extraMinor }, await seedWantsOf(tx, scope, [orderId]));
    const counts = new Map(lines.map(({ itemId, packs }) => [itemId, packs.counts]));
    const ordered = order.items.flatMap(({ id, packs }) =>
      packs.map((pack, at) => ({ id: pack.id, ordered: counts.get(id)?.[at] ?? 0 })),
    );
    const packs = ordered.reduce((sum, pack) => sum + pack.ordered, 0);
    if (packs === 0) refuse('nobody-wants-any');
    await writePacks(tx, scope, ordered);
    await moveSeedOrder(tx, scope, orderId, { state: 'ordered', orderedAt: now, extraMinor });
    note({ verb: 'ordered', thing, thingId: orderId, after: { packs, seedMinor, extraMinor } });
    return { packs, minor: seedMinor + extraMinor };
  },
});

type Row = { readonly packId: string; readonly came: string; readonly price: string };
type Came = { readonly id: string; readonly arrived: number; readonly priceMinor: number };

// Packs that were not ordered are not asked for; of those that were, every one is.
function readCame({ items }: SeedOrderRecord, rows: readonly Row[]): Came[] {
  const packs = new Map<string, SeedPackRecord>(items.flatMap((item) => item.packs.map((pack) => [pack.id, pack])));
  if (rows.some(({ packId }) => !packs.has(packId))) refuse('item-not-listed', { field: 'packs' });
  const refusals: Refusal[] = [];
  const read = [...packs.values()].map(({ id, ordered, priceMinor: before }): Came => {
    if (!ordered) return { id, arrived: 0, priceMinor: before };
    const row = rows.find(({ packId }) => packId === id);
    const arrived = /^\d{1,6}$/.test(row?.came ?? '') ? Number(row?.came) : null;
    if (arrived === null || arrived > ordered)
      refusals.push({ code: 'more-came', field: `came:${id}`, numbers: { ordered } });
    const priceMinor = penceTyped(row?.price ?? '');
    if (priceMinor === null) refusals.push({ code: 'seed-price', field: `price:${id}` });
    return { id, arrived: arrived ?? 0, priceMinor: priceMinor ?? before };
  });
  if (refusals.length) throw new Refused(refusals);
  return read;
}

/** Tick off what came, and at what price: what each is given and owes is worked out again. The first time, those who wait are told. */
export const noteSeedArrived = mutation({
  name: 'note-seed-arrived',
  allow: canKeepMoney,
  input: noteArrivedInput,
  write: async (context, { orderId, extra: extraMinor, packs: rows }) => {
    const { tx, scope, now, note } = context;
    const order = await takeSeedStep(context, orderId, 'arrive');
    const came = readCame(order, rows);
    await writePacks(tx, scope, came);
    const short = await giveOut(context, afterArrival(order, came, extraMinor));
    await moveSeedOrder(tx, scope, orderId, { state: 'arrived', arrivedAt: order.arrivedAt ?? now, extraMinor });
    const packs = came.reduce((sum, pack) => sum + pack.arrived, 0);
    note({ verb: 'ticked off', thing, thingId: orderId, after: { packs, extraMinor, short } });
    if (order.state === 'ordered')
      await tellWanting(
        context,
        orderId,
        `${order.name} is here`,
        `The seed of “${order.name}” has come. Sign in and open “Seed” to see what is yours, and fetch it from the secretary.`,
      );
    return { packs, short };
  },
});

function afterArrival(order: SeedOrderRecord, came: readonly Came[], extraMinor: number): SeedOrderRecord {
  const cameOf = new Map(came.map((pack) => [pack.id, pack]));
  const items = order.items.map((item) => ({
    ...item,
    packs: item.packs.map((pack) => ({ ...pack, ...cameOf.get(pack.id) })),
  }));
  return { ...order, items, extraMinor };
}

// What was handed out is in somebody's hands: another amount cannot be written over it.
async function giveOut({ tx, scope }: WriteContext, order: SeedOrderRecord): Promise<number> {
  const wants = await seedWantsOf(tx, scope, [order.id]);
  const { lines } = pooledOrder(order, wants);
  const shares = new Map(
    lines.flatMap(({ itemId, shares: all }) => all.map((one) => [`${itemId} ${one.id}`, one] as const)),
  );
  const given = wants.map(({ id, itemId, holdingId, ...before }) => {
    const { loads = 0, minor = 0 } = shares.get(`${itemId} ${holdingId}`) ?? {};
    if (before.handedOutAt && before.given !== loads) refuse('handed-out-already');
    return { id, given: loads, owesMinor: minor };
  });
  await writeGiven(tx, scope, given);
  return lines.filter(({ level }) => level !== null).length;
}
