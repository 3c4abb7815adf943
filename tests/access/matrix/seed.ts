import { changeSowing } from '@/lib/usecases/seed/change-sowing';
import { handOutSeed, keepOrderedSeed } from '@/lib/usecases/seed/hand-out';
import { addSeedItem, retireSeedItem } from '@/lib/usecases/seed/keep-items';
import { addPacket, changePacket, finishPacket, takeBackPacket, usePacket } from '@/lib/usecases/seed/keep-packets';
import { markSeedOrdered, noteSeedArrived } from '@/lib/usecases/seed/order-packs';
import {
  callOffSeedOrder,
  changeSeedOrder,
  closeSeedOrder,
  openSeedOrder,
  planSeedOrder,
} from '@/lib/usecases/seed/plan-order';
import { readOfficeSeed, readOfficeSeedOrder } from '@/lib/usecases/seed/read-office-order';
import { readSeedOrder, readSeedOrders } from '@/lib/usecases/seed/read-orders';
import { readSeed, readTin } from '@/lib/usecases/seed/read-seed';
import { correctSeedOrder, settleSeedOrder } from '@/lib/usecases/seed/settle-order';
import { wantSeed } from '@/lib/usecases/seed/want-seed';
import { once } from '../../fixtures/society';
import { everybody, keepers, moneyKeepers, type Person, type Row } from '../row';

const inDays = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 16);
const facts = { name: 'n', closesAt: inDays(5) };
/** A tin is its holders' alone: not even the secretary's. */
const holderAlone: readonly Person[] = ['holder'];

export const seed: readonly Row[] = [
  { operation: readSeed, input: ({ holdingId }) => ({ holdingId }), allow: everybody, idIsFilter: true },
  { operation: readTin, input: ({ holdingId }) => ({ holdingId }), allow: everybody, idIsFilter: true },
  { operation: readSeedOrders, input: () => ({}), allow: everybody },
  { operation: readSeedOrder, input: ({ openSeedId }) => ({ orderId: openSeedId }), allow: everybody },
  { operation: readOfficeSeed, input: () => ({}), allow: moneyKeepers },
  { operation: readOfficeSeedOrder, input: ({ openSeedId }) => ({ orderId: openSeedId }), allow: moneyKeepers },
  {
    operation: addPacket,
    input: ({ holdingId }) => once({ holdingId, cropKey: 'leek', amount: '50', unit: 'seeds' }),
    allow: holderAlone,
    isOwn: true,
  },
  { operation: changePacket, input: ({ packetId }) => once({ packetId, seeds: '7' }), allow: holderAlone, isOwn: true },
  { operation: usePacket, input: ({ packetId }) => once({ packetId, seeds: '1' }), allow: holderAlone, isOwn: true },
  { operation: finishPacket, input: ({ packetId }) => once({ packetId }), allow: holderAlone, isOwn: true },
  { operation: takeBackPacket, input: ({ packetId }) => once({ packetId }), allow: holderAlone, isOwn: true },
  { operation: changeSowing, input: () => once({ cropKey: 'leek', marginPercent: '10' }), allow: everybody },
  { operation: planSeedOrder, input: () => once(facts), allow: moneyKeepers },
  {
    operation: changeSeedOrder,
    input: ({ openSeedId }) => once({ orderId: openSeedId, ...facts }),
    allow: moneyKeepers,
  },
  {
    operation: addSeedItem,
    input: ({ openSeedId }) =>
      once({
        ...{ orderId: openSeedId, cropKey: 'leek', variety: 'v', unit: 'seeds' },
        packs: [{ amount: '50', price: '2' }],
      }),
    allow: moneyKeepers,
  },
  { operation: retireSeedItem, input: ({ seedItemId }) => once({ itemId: seedItemId }), allow: moneyKeepers },
  { operation: openSeedOrder, input: ({ plannedSeedId }) => once({ orderId: plannedSeedId }), allow: moneyKeepers },
  { operation: closeSeedOrder, input: ({ openSeedId }) => once({ orderId: openSeedId }), allow: moneyKeepers },
  {
    operation: callOffSeedOrder,
    input: ({ openSeedId }) => once({ orderId: openSeedId, sure: 'yes' }),
    allow: moneyKeepers,
  },
  {
    operation: wantSeed,
    input: ({ openSeedId, holdingId, seedItemId }) =>
      once({ orderId: openSeedId, holdingId, wants: [{ itemId: seedItemId, amount: '9' }] }),
    allow: keepers,
  },
  {
    operation: markSeedOrdered,
    input: ({ closedSeedId }) => once({ orderId: closedSeedId, extra: '0' }),
    allow: moneyKeepers,
  },
  {
    operation: noteSeedArrived,
    input: ({ orderedSeedId, seedPackId }) =>
      once({ orderId: orderedSeedId, extra: '1', packs: [{ packId: seedPackId, came: '1', price: '2' }] }),
    allow: moneyKeepers,
  },
  {
    operation: handOutSeed,
    input: ({ arrivedSeedId, holdingId }) => once({ orderId: arrivedSeedId, holdingId, out: 'yes' }),
    allow: moneyKeepers,
  },
  {
    operation: keepOrderedSeed,
    input: ({ arrivedSeedId, holdingId }) => once({ orderId: arrivedSeedId, holdingId }),
    allow: holderAlone,
    isOwn: true,
  },
  { operation: settleSeedOrder, input: ({ arrivedSeedId }) => once({ orderId: arrivedSeedId }), allow: moneyKeepers },
  {
    operation: correctSeedOrder,
    input: ({ settledSeedId }) => once({ orderId: settledSeedId, reason: 'r' }),
    allow: moneyKeepers,
  },
];
