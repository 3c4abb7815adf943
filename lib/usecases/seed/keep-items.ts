import 'server-only';
import type { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import {
  createSeedItem,
  orderOfItem,
  retireSeedItem as writeRetired,
  type SeedItemFacts,
  type SeedOrderRecord,
} from '@/lib/data/seed-order';
import { holdingsOn } from '@/lib/data/holding';
import { seedWantsOf } from '@/lib/data/seed-want';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { amountTyped } from '@/lib/domain/seed/seed-unit';
import { addSeedItemInput, retireSeedItemInput } from '@/lib/schemas/seed/order';
import { mutation, type WriteContext } from '../operation';
import { NotFound, Refused, type Refusal, refuse } from '../refusal';
import { tell } from '../tell';
import { takeSeedStep } from './open-order';
import { penceTyped } from './pence-typed';

const thing = 'seed item';

/** The most of anything in one pack, in whole units: seeds, sets, or grams. */
const mostInPack = { seeds: 100_000, sets: 100_000, milligrams: 5000 } as const;

type Typed = Pick<z.output<typeof addSeedItemInput>, 'unit' | 'packs'>;

// A row of the form that was left empty is no pack.
function packsTyped({ unit, packs }: Typed): SeedItemFacts['packs'] {
  const refusals: Refusal[] = [];
  const read = packs.flatMap((row, at) => {
    if (row.amount === '' && row.price === '') return [];
    const amount = amountTyped(unit, row.amount);
    const priceMinor = penceTyped(row.price);
    const most = mostInPack[unit];
    const fits = amount !== null && amount > 0 && amount <= most * (unit === 'milligrams' ? 1000 : 1);
    if (!fits) refusals.push({ code: 'seed-amount', field: `amount:${at}`, numbers: { unit, most } });
    if (priceMinor === null) refusals.push({ code: 'seed-price', field: `price:${at}` });
    return [{ amount: amount ?? 0, priceMinor: priceMinor ?? 0 }];
  });
  if (refusals.length) throw new Refused(refusals);
  if (read.length === 0) refuse('pack-missing', { field: 'amount:0' });
  return read;
}

const alike = (one: string, other: string) => one.trim().toLowerCase() === other.trim().toLowerCase();

/** Add something to the list: a crop and variety, in the packs that it is sold in. */
export const addSeedItem = mutation({
  name: 'add-seed-item',
  allow: canKeepMoney,
  input: addSeedItemInput,
  write: async (context, { orderId, cropKey, variety, unit, packs }) => {
    const { tx, scope, note } = context;
    const order = await takeSeedStep(context, orderId, 'list');
    if (!(await cropsOf(tx, scope)).has(cropKey))
      refuse('crop-unknown', { field: 'cropKey', numbers: { crop: cropKey } });
    if (order.items.some((one) => one.cropKey === cropKey && alike(one.variety, variety)))
      refuse('item-listed-already', { field: 'variety' });
    const facts = { cropKey, variety, unit, packs: packsTyped({ unit, packs }) };
    const itemId = await createSeedItem(tx, scope, orderId, facts);
    note({ verb: 'added', thing, thingId: itemId, after: { orderId, cropKey, unit, packs: facts.packs } });
    return { itemId };
  },
});

/** Take something off the list; whoever put it down is told. */
export const retireSeedItem = mutation({
  name: 'retire-seed-item',
  allow: canKeepMoney,
  input: retireSeedItemInput,
  write: async (context, { itemId }) => {
    const { tx, scope, now, note } = context;
    const order = await takeSeedStep(context, (await orderOfItem(tx, scope, itemId)) ?? notThere(), 'list');
    const item = order.items.find(({ id }) => id === itemId) ?? notThere();
    await tellOffList(context, order, itemId, item.variety);
    await writeRetired(tx, scope, itemId, now);
    note({ verb: 'taken off', thing, thingId: itemId, before: { orderId: order.id, cropKey: item.cropKey } });
    return { orderId: order.id };
  },
});

function notThere(): never {
  throw new NotFound();
}

async function tellOffList(context: WriteContext, { id, name }: SeedOrderRecord, itemId: string, variety: string) {
  const { tx, scope, today } = context;
  const wants = (await seedWantsOf(tx, scope, [id])).filter((want) => want.itemId === itemId);
  if (wants.length === 0) return;
  const wanting = new Set(wants.map(({ holdingId }) => holdingId));
  const holders = (await holdingsOn(tx, scope, today)).filter((holding) => wanting.has(holding.id));
  const body = `“${variety}”, which you put down, is no longer on the list of “${name}”. Look whether there is something in its place.`;
  await tell(
    context,
    holders.flatMap(({ memberIds }) => memberIds),
    `${name} has changed`,
    body,
  );
}
