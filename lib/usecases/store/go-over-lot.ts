import 'server-only';
import { createGoingOver, lotOfGoingOver, undoGoingsOver } from '@/lib/data/going-over';
import type { LotRecord } from '@/lib/data/store-lot';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canEnter } from '@/lib/domain/policy/standing';
import { type Found, goOver, lotNow } from '@/lib/domain/store/go-over';
import { formatAmount } from '@/lib/domain/store/lot-amount';
import { finishLotInput, goOverInput, undoGoingOverInput } from '@/lib/schemas/store/going-over';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { lotKept } from './open-store';
import { readFound } from './typed-found';

/**
 * Write what was found at a lot: with nothing said, all of it is sound. The lot is locked, so that of two phones at once the second
 * sees what the first left; and who went by an older page is told so.
 */
export const goOverLot = mutation({
  name: 'go-over-lot',
  allow: canEnter,
  input: goOverInput,
  write: async (context, { lotId, on, there, ...typed }) => {
    const { scope, today } = context;
    const lot = await lotKept(context, lotId);
    const { sound } = lotNow(lot);
    if (there !== null && there !== sound)
      refuse('gone-over-meanwhile', { numbers: { there: formatAmount(sound, lot.measure, scope.units) } });
    const day = on ?? today;
    checkDay(lot, day, today);
    return writeFound(context, lot, { on: day, ...readFound(typed, lot, scope.units) });
  },
});

/** Be done with a lot: all that is left of it was used, or went bad. */
export const finishLot = mutation({
  name: 'finish-lot',
  allow: canEnter,
  input: finishLotInput,
  write: async (context, { lotId, how, badWhy }) => {
    const { today } = context;
    const lot = await lotKept(context, lotId);
    const { sound } = lotNow(lot);
    checkDay(lot, today, today);
    const [used, bad] = how === 'used' ? [sound, 0] : [0, sound];
    return writeFound(context, lot, { on: today, used, bad, badWhy: bad > 0 ? badWhy : null, sound: 0 });
  },
});

function checkDay(lot: LotRecord, day: CalendarDate, today: CalendarDate): void {
  if (lotNow(lot).sound === 0) refuse('lot-used-up');
  if (day > today) refuse('gone-over-in-future', { field: 'on' });
  const last = lot.goingsOver.at(-1)?.on ?? lot.putInOn;
  if (day < last) refuse('gone-over-before', { field: 'on', numbers: { last } });
}

async function writeFound(context: WriteContext, lot: LotRecord, found: Found) {
  const { tx, scope, now, note } = context;
  const last = goOver(lot, found).goingsOver.at(-1);
  if (!last) throw new Error('a lot that was gone over has a going over');
  const goingOverId = await createGoingOver(tx, scope, lot.id, last, now);
  note({ verb: 'gone over', thing: 'store lot', thingId: lot.id, forHoldingId: lot.holdingId });
  return { lotId: lot.id, goingOverId, sound: last.sound };
}

/** Undo a going over, with those after it where that is asked for: each rests on the one before. */
export const undoGoingOver = mutation({
  name: 'undo-going-over',
  allow: canEnter,
  input: undoGoingOverInput,
  write: async (context, { goingOverId, withAfter }) => {
    const { tx, scope, now, note } = context;
    const lotId = await lotOfGoingOver(tx, scope, goingOverId);
    if (!lotId) throw new NotFound();
    const lot = await lotKept(context, lotId);
    const at = lot.goingsOver.findIndex(({ id }) => id === goingOverId);
    // The other phone undid it while this one waited for the lot.
    if (at < 0) return { lotId, undone: 0 };
    const undone = lot.goingsOver.slice(at).map(({ id }) => id);
    if (undone.length > 1 && !withAfter) refuse('gone-over-since', { numbers: { count: undone.length - 1 } });
    await undoGoingsOver(tx, scope, undone, now);
    note({ verb: 'going over undone', thing: 'store lot', thingId: lotId, forHoldingId: lot.holdingId });
    return { lotId, undone: undone.length };
  },
});
