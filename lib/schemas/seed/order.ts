import { z } from 'zod';
import { seedUnits } from '@/lib/domain/seed/seed-unit';
import { pounds } from '../money/amount';
import { line, optionalLine, optionalNote, ticked } from '../text';
import { wallTime } from '../wall-time';
import { form, rowId, writeId } from '../write';

const listWords = 'Give an amount beside what you want, and leave the rest empty.';
const sure = z.literal('yes', 'Tick the box to confirm.');

/** What is typed into one place of a list; the use-case reads it, in the item's own unit. */
const typed = z.string({ error: listWords }).trim().max(40, 'That is too long for an amount.').default('');

function listOf<Shape extends z.ZodRawShape>(shape: Shape, most: number) {
  return z.array(form(shape), { error: listWords }).max(most, 'That is more than one list holds.');
}

const facts = {
  name: line('a name for the order', 80),
  closesAt: wallTime,
  seller: optionalLine('where it is ordered', 120),
  notes: optionalNote('the notes'),
};

export const planSeedOrderInput = form({ writeId, ...facts });
export const changeSeedOrderInput = form({ writeId, orderId: rowId, ...facts });
export const seedOrderInput = form({ writeId, orderId: rowId });
export const callOffSeedOrderInput = form({ writeId, orderId: rowId, sure });
export const addSeedItemInput = form({
  writeId,
  orderId: rowId,
  cropKey: line('the crop', 60),
  variety: line('the variety', 60),
  unit: z.enum(seedUnits, 'Choose seeds, grams or sets.'),
  packs: listOf({ amount: typed, price: typed }, 6),
});
export const retireSeedItemInput = form({ writeId, itemId: rowId });
export const wantSeedInput = form({
  writeId,
  orderId: rowId,
  holdingId: rowId,
  wants: listOf({ itemId: rowId, amount: typed }, 300),
});
export const markOrderedInput = form({ writeId, orderId: rowId, extra: pounds('postage and the like', 0) });
export const noteArrivedInput = form({
  writeId,
  orderId: rowId,
  extra: pounds('postage and the like', 0),
  packs: listOf({ packId: rowId, came: typed, price: typed }, 600),
});
export const handOutInput = form({ writeId, orderId: rowId, holdingId: rowId, out: ticked() });
export const keepInTinInput = form({ writeId, orderId: rowId, holdingId: rowId });
export const correctSeedOrderInput = form({ writeId, orderId: rowId, reason: line('the reason', 200) });
