import { db } from '@/lib/data/db';
import { addSeedItem } from '@/lib/usecases/seed/keep-items';
import { addPacket } from '@/lib/usecases/seed/keep-packets';
import { markSeedOrdered, noteSeedArrived } from '@/lib/usecases/seed/order-packs';
import { closeSeedOrder, openSeedOrder, planSeedOrder } from '@/lib/usecases/seed/plan-order';
import { settleSeedOrder } from '@/lib/usecases/seed/settle-order';
import { wantSeed } from '@/lib/usecases/seed/want-seed';
import { done, once } from '../../fixtures/society';
import type { Ids } from '../row';
import type { Members, Word } from './members';

export type SeedId =
  | 'packetId'
  | 'seedItemId'
  | 'seedPackId'
  | 'plannedSeedId'
  | 'openSeedId'
  | 'closedSeedId'
  | 'orderedSeedId'
  | 'arrivedSeedId'
  | 'settledSeedId';

const states = ['planned', 'open', 'closed', 'ordered', 'arrived', 'settled'] as const;
type State = (typeof states)[number];

/** A packet in the holder's and the neighbour's tins, and an order of seed in each state that is wanted, or in all. */
export async function makeSeed(
  word: Word,
  { secretary: { caller: secretary }, holder, neighbour }: Members,
  ground: { readonly holdingId: string; readonly otherHoldingId: string },
  wanted?: readonly string[],
): Promise<Pick<Ids, SeedId>> {
  const none = { packetId: '', seedItemId: '', seedPackId: '', plannedSeedId: '', openSeedId: '' };
  const ids = { ...none, closedSeedId: '', orderedSeedId: '', arrivedSeedId: '', settledSeedId: '' };
  if (wanted && !wanted.some((id) => id in ids)) return ids;
  const packet = { cropKey: 'leek', amount: '80', unit: 'seeds', packedYear: '2025' };
  const own = once({ ...packet, holdingId: ground.holdingId, variety: word('holder packet') });
  ids.packetId = (await done(addPacket.run(holder.caller, own))).packetId;
  const others = once({ ...packet, holdingId: ground.otherHoldingId, variety: word('neighbour packet') });
  await done(addPacket.run(neighbour.caller, others));
  const order = async (state: State) => {
    const closesAt = new Date(Date.now() + 86_400_000).toISOString().slice(0, 16);
    const texts = {
      name: word(`${state} seed order`),
      seller: word(`${state} seller`),
      notes: word('seed order notes'),
    };
    const { orderId } = await done(planSeedOrder.run(secretary, once({ ...texts, closesAt })));
    const item = { orderId, cropKey: 'leek', variety: word('listed variety'), unit: 'seeds' };
    const { itemId } = await done(
      addSeedItem.run(secretary, once({ ...item, packs: [{ amount: '100', price: '2' }] })),
    );
    const { id: packId } = await db().seedPack.findFirstOrThrow({ where: { itemId } });
    const want = (holdingId: string, amount: string) => once({ orderId, holdingId, wants: [{ itemId, amount }] });
    const steps: Readonly<Record<Exclude<State, 'planned'>, () => Promise<unknown>>> = {
      open: async () => {
        await done(openSeedOrder.run(secretary, once({ orderId })));
        await done(wantSeed.run(holder.caller, want(ground.holdingId, '40')));
        await done(wantSeed.run(neighbour.caller, want(ground.otherHoldingId, '57')));
      },
      closed: () => done(closeSeedOrder.run(secretary, once({ orderId }))),
      ordered: () => done(markSeedOrdered.run(secretary, once({ orderId, extra: '0' }))),
      arrived: () => {
        const packs = [{ packId, came: '1', price: '2' }];
        return done(noteSeedArrived.run(secretary, once({ orderId, extra: '0', packs })));
      },
      settled: () => done(settleSeedOrder.run(secretary, once({ orderId }))),
    };
    for (const at of states.slice(1, states.indexOf(state) + 1)) await steps[at as Exclude<State, 'planned'>]();
    return { orderId, itemId, packId };
  };
  for (const state of states) {
    const key = `${state}Seed` as const;
    const isWanted =
      wanted?.some(
        (id) =>
          id === `${key}Id` ||
          (id === 'seedItemId' && state === 'open') ||
          (id === 'seedPackId' && state === 'ordered'),
      ) ?? true;
    if (!isWanted) continue;
    const { orderId, itemId, packId } = await order(state);
    Object.assign(ids, { [`${key}Id`]: orderId });
    if (state === 'open') ids.seedItemId = itemId;
    if (state === 'ordered') ids.seedPackId = packId;
  }
  return ids;
}
