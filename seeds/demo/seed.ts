import { randomUUID } from 'node:crypto';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Caller } from '@/lib/usecases/operation';
import { addSeedItem } from '@/lib/usecases/seed/keep-items';
import { addPacket } from '@/lib/usecases/seed/keep-packets';
import { openSeedOrder, planSeedOrder } from '@/lib/usecases/seed/plan-order';
import { wantSeed } from '@/lib/usecases/seed/want-seed';
import { done } from './done';

type Keeper = { readonly caller: Caller; readonly holdingId: string };

const once = <T extends object>(typed: T) => ({ writeId: randomUUID(), ...typed });

const items = [
  {
    cropKey: 'broad-bean',
    variety: 'Withy Longpod',
    unit: 'seeds',
    packs: [
      ['45', '2.60'],
      ['180', '7.80'],
    ],
  },
  {
    cropKey: 'leek',
    variety: 'Reach Winter',
    unit: 'seeds',
    packs: [
      ['150', '2.10'],
      ['600', '5.90'],
    ],
  },
  {
    cropKey: 'carrot',
    variety: 'Marl Stump',
    unit: 'milligrams',
    packs: [
      ['3', '1.95'],
      ['10', '4.40'],
    ],
  },
  { cropKey: 'onion', variety: 'Hay Globe', unit: 'sets', packs: [['75', '3.20']] },
  { cropKey: 'garlic', variety: 'Nettlecombe Purple', unit: 'sets', packs: [['10', '4.95']] },
] as const;

const wants = [
  ['90', '200', '1.5', '', '10'],
  ['', '120', '2', '75', ''],
  ['45', '', '0.8', '150', '20'],
  ['60', '300', '', '', '30'],
  ['', '80', '2.5', '50', '12'],
  ['30', '150', '1', '100', ''],
] as const;

/** Seed for the coming season: an order that takes lists, a few of them put down, and two tins. */
export async function loadSeed(
  secretary: Caller,
  keepers: readonly Keeper[],
  tins: readonly Keeper[],
  today: CalendarDate,
): Promise<void> {
  const year = Number(today.slice(0, 4));
  const closesAt = `${addDays(today, 12)}T18:00`;
  const notes = 'Handed out from the hut on the first two Saturdays after it comes.';
  const order = once({ name: `Seed for ${year + 1}`, closesAt, seller: 'the seed merchant in town, by post', notes });
  const { orderId } = await done(planSeedOrder.run(secretary, order));
  const ids: string[] = [];
  for (const { packs, ...item } of items) {
    const sold = packs.map(([amount, price]) => ({ amount, price }));
    ids.push((await done(addSeedItem.run(secretary, once({ orderId, ...item, packs: sold })))).itemId);
  }
  await done(openSeedOrder.run(secretary, once({ orderId })));
  for (const [at, { caller, holdingId }] of keepers.slice(0, wants.length).entries()) {
    const rows = ids.map((itemId, nth) => ({ itemId, amount: wants[at]?.[nth] ?? '' }));
    await done(wantSeed.run(caller, once({ orderId, holdingId, wants: rows })));
  }
  const packets = [
    { cropKey: 'broad-bean', variety: 'Withy Longpod', amount: '25', unit: 'seeds', packedYear: String(year) },
    { cropKey: 'parsnip', amount: '200', unit: 'seeds', packedYear: String(year - 1) },
    { cropKey: 'lettuce', variety: 'Cut and come', amount: '1.5', unit: 'milligrams', packedYear: String(year - 2) },
    { cropKey: 'kale', amount: '300', unit: 'seeds', packedYear: String(year - 6), germinationPercent: '40' },
    { cropKey: 'runner-bean', variety: 'saved, the red one', amount: '40', unit: 'seeds' },
  ];
  for (const { caller, holdingId } of tins)
    for (const packet of packets) await done(addPacket.run(caller, once({ holdingId, ...packet })));
}
