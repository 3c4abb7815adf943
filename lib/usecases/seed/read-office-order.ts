import 'server-only';
import { z } from 'zod';
import { accountHolders } from '@/lib/data/account-holder';
import { cropsOf } from '@/lib/data/crop';
import { holdingsOn } from '@/lib/data/holding';
import { seedOrderById, seedOrdersOf } from '@/lib/data/seed-order';
import { seedWantsOf } from '@/lib/data/seed-want';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';
import { pooledOrder } from './pooled-order';

/** All orders of seed, for those who keep them. */
export const readOfficeSeed = query({
  name: 'read-office-seed',
  allow: canKeepMoney,
  input: z.object({}),
  read: async ({ db, scope, now }) => {
    const orders = await seedOrdersOf(db, scope, now);
    const ids = orders.map(({ id }) => id);
    const wants = await seedWantsOf(db, scope, ids);
    return {
      timeZone: scope.timeZone,
      orders: orders.map(({ id, name, state, closesAt, items }) => {
        const own = wants.filter(({ itemId }) => items.some((item) => item.id === itemId));
        const holdings = new Set(own.map(({ holdingId }) => holdingId)).size;
        return { id, name, state, closesAt, items: items.length, holdings };
      }),
    };
  },
});

/** One order for those who keep it: what is wanted and by whom, the packs to buy, what each is given and owes. */
export const readOfficeSeedOrder = query({
  name: 'read-office-seed-order',
  allow: canKeepMoney,
  input: z.object({ orderId: z.uuid() }),
  read: async ({ db, scope, today, now }, { orderId }) => {
    const order = await seedOrderById(db, scope, orderId, now);
    if (!order) throw new NotFound();
    const [crops, wants, everybody] = [
      await cropsOf(db, scope),
      await seedWantsOf(db, scope, [orderId]),
      await holdingsOn(db, scope, today),
    ] as const;
    const pooled = pooledOrder(order, wants);
    const holdingIds = [...new Set(wants.map(({ holdingId }) => holdingId))];
    const holders = await accountHolders(db, scope, today, { holdingIds });
    const minorOf = (itemId: string, holdingId: string) =>
      pooled.lines.find((line) => line.itemId === itemId)?.shares.find(({ id }) => id === holdingId);
    return {
      order,
      pooled,
      timeZone: scope.timeZone,
      societyName: scope.societyName,
      runsSociety: canRunSociety(scope),
      items: order.items.map((item) => ({ ...item, cropName: crops.get(item.cropKey)?.name ?? item.cropKey })),
      holders: holders.map(({ holdingId, plots, members }) => ({
        ...{ holdingId, plots, names: members.map(({ name }) => name) },
        wants: wants
          .filter((want) => want.holdingId === holdingId)
          .map(({ itemId, amount, handedOutAt }) => {
            const share = minorOf(itemId, holdingId);
            return { itemId, amount, handedOutAt, given: share?.loads ?? 0, minor: share?.minor ?? 0 };
          }),
        owed: pooled.owed.find((one) => one.holdingId === holdingId) ?? null,
      })),
      choices: {
        crops: [...crops.values()]
          .filter(({ binomial }) => binomial !== null)
          .map(({ key, name }) => ({ value: key, label: name }))
          .sort((one, other) => (one.label < other.label ? -1 : 1)),
        holdings: everybody.map(({ id, plots, members }) => ({
          value: id,
          label: `${plots.map(({ number }) => number).join(', ')}: ${members.map(({ name }) => name).join(' and ')}`,
        })),
      },
    };
  },
});
