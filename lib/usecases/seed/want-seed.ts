import 'server-only';
import { lockSeedOrder, type SeedItemRecord, type SeedOrderRecord } from '@/lib/data/seed-order';
import { seedWantsOf, type SeedWantRecord, withdrawSeedWants, writeSeedWant } from '@/lib/data/seed-want';
import { othersOf } from '@/lib/domain/policy/holding';
import { canEnter } from '@/lib/domain/policy/standing';
import { mayTakeStep } from '@/lib/domain/seed/order-steps';
import { amountTyped, type SeedUnit } from '@/lib/domain/seed/seed-unit';
import { wallIn } from '@/lib/platform/clock';
import { wantSeedInput } from '@/lib/schemas/seed/order';
import { openBookable } from '../deliveries/open-bookable';
import { mutation, type WriteContext } from '../operation';
import { NotFound, Refused, type Refusal, refuse } from '../refusal';
import { tell } from '../tell';
import { canSeeSeedOrder } from './open-order';

/** The most that a holding can want of one thing, in whole units: seeds, sets, or grams. */
export const mostWanted: Readonly<Record<SeedUnit, number>> = { seeds: 20_000, sets: 20_000, milligrams: 500 };

// Packs are worked out amount by amount, so an order has an end.
const mostPooled = 800_000;

/** An order that takes lists at this very instant. Lists share the lock; closing and ordering wait for them, and they for it. */
async function openList({ tx, scope, now }: WriteContext, orderId: string): Promise<SeedOrderRecord> {
  const order = await lockSeedOrder(tx, scope, orderId, now, 'share');
  if (!order || !canSeeSeedOrder(scope, order)) throw new NotFound();
  if (mayTakeStep('want', order.state)) return order;
  if (order.state === 'planned' || order.state === 'called-off')
    refuse('order-not-now', { numbers: { state: order.state } });
  return refuse('list-closed', { numbers: { at: wallIn(scope.timeZone, order.closesAt).replace('T', ' ') } });
}

type Row = { readonly itemId: string; readonly amount: string };
type Read = { readonly item: SeedItemRecord; readonly amount: number };

// Every fault stands beside its own row; an empty row, or nothing, is not wanted.
function readRows(items: readonly SeedItemRecord[], rows: readonly Row[]): Read[] {
  const refusals: Refusal[] = [];
  const read = rows.flatMap(({ itemId, amount: text }): Read[] => {
    const item = items.find(({ id }) => id === itemId);
    if (!item || rows.filter((row) => row.itemId === itemId).length > 1)
      return refuse('item-not-listed', { field: 'wants' });
    const { unit } = item;
    const amount = text === '' ? 0 : amountTyped(unit, text);
    const most = mostWanted[unit];
    if (amount !== null && amount <= most * (unit === 'milligrams' ? 1000 : 1)) return [{ item, amount }];
    refusals.push({ code: 'seed-amount', field: `amount:${itemId}`, numbers: { unit, most, isWant: 1 } });
    return [];
  });
  if (refusals.length) throw new Refused(refusals);
  return read;
}

function checkPooled(all: readonly SeedWantRecord[], holdingId: string, { item, amount }: Read): void {
  const others = all.filter((want) => want.itemId === item.id && want.holdingId !== holdingId);
  const pooled = others.reduce((sum, want) => sum + want.amount, amount);
  if (pooled > mostPooled) refuse('wants-too-much', { field: `amount:${item.id}` });
}

/** Put down what a holding wants of an order, all of its list at once, or change it, until the lists close. */
export const wantSeed = mutation({
  name: 'want-seed',
  allow: canEnter,
  input: wantSeedInput,
  write: async (context, { orderId, holdingId, wants: rows }) => {
    const { tx, scope, now, note } = context;
    const order = await openList(context, orderId);
    const holding = await openBookable(context, holdingId);
    const all = await seedWantsOf(tx, scope, [orderId]);
    const before = new Map(all.filter((one) => one.holdingId === holdingId).map((one) => [one.itemId, one]));
    const read = readRows(order.items, rows).filter(
      ({ item, amount }) => amount !== (before.get(item.id)?.amount ?? 0),
    );
    for (const one of read) checkPooled(all, holdingId, one);
    for (const { item, amount } of read)
      if (amount > 0) await writeSeedWant(tx, scope, { itemId: item.id, holdingId, amount }, now);
    const off = read.flatMap(({ item, amount }) => (amount === 0 ? (before.get(item.id)?.id ?? []) : []));
    await withdrawSeedWants(tx, scope, off, now);
    const stands = (await seedWantsOf(tx, scope, [orderId], [holdingId])).length;
    if (read.length === 0) return { items: stands };
    note({
      verb: 'put down',
      thing: 'seed wants',
      thingId: orderId,
      forHoldingId: holdingId,
      after: { items: stands, changed: read.length },
    });
    const body = `${scope.memberName} has put down what your holding wants of “${order.name}”. Sign in and open “Seed” to see it.`;
    await tell(context, othersOf(holding, scope.memberId), order.name, body);
    return { items: stands };
  },
});
