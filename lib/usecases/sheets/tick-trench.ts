import 'server-only';
import { createTicks, undoTicksFrom } from '@/lib/data/ground-sheet';
import { canEnter } from '@/lib/domain/policy/standing';
import { diggingOf } from '@/lib/domain/sheet/sheet-order';
import { tickTrenchInput, untickTrenchInput } from '@/lib/schemas/sheets/sheet';
import { tellHolders } from '../ground/tell-holders';
import { mutation } from '../operation';
import { refuse } from '../refusal';
import { heldStill, logSheet } from './log-sheet';
import { openSheet } from './open-sheet';

/**
 * Tick a trench as done. Work goes in order: trenches before it are ticked with it where that is asked for. One that
 * somebody ticked already stays as it is, so that two holders may tick at once, and a page that is out of date does no harm.
 */
export const tickTrench = mutation({
  name: 'tick-trench',
  allow: canEnter,
  input: tickTrenchInput,
  write: async (context, { sheetId, trench, withBefore, doneOn }) => {
    const { tx, scope, today, now, note } = context;
    const open = await openSheet({ db: tx, scope, today }, sheetId);
    const sheet = await heldStill(context, sheetId);
    if (sheet.retiredAt) refuse('sheet-taken-back');
    if (doneOn && doneOn > today) refuse('done-in-the-future', { field: 'doneOn' });
    const { length: most } = diggingOf(sheet.order, sheet.footprint).plan.trenches;
    if (trench > most) refuse('no-such-trench', { field: 'trench', numbers: { most } });
    const ticked = new Set(sheet.ticks.map((tick) => tick.trench));
    const trenches = Array.from({ length: trench }, (_, at) => at + 1).filter((number) => !ticked.has(number));
    if (trenches.length === 0) return { sheetId, trench, done: ticked.size, ticked: 0 };
    const [next = trench] = trenches;
    if (next < trench && !withBefore) refuse('trenches-before', { field: 'trench', numbers: { next, trench } });
    await createTicks(tx, scope, sheetId, { trenches, doneOn: doneOn ?? today, at: now });
    await logSheet(context, sheet);
    note({
      verb: 'ticked',
      thing: trenches.length > 1 ? 'trenches' : 'trench',
      thingId: sheetId,
      forHoldingId: sheet.holdingId,
      after: {
        name: trenches.length > 1 ? `${next} to ${trench}` : String(trench),
        bed: open.bed.name,
        season: sheet.season,
        doneOn: doneOn ?? today,
      },
    });
    await tellHolders(context, open);
    return { sheetId, trench, done: ticked.size + trenches.length, ticked: trenches.length };
  },
});

/** Take the tick of a trench back, and what it logged on the ground; those after it with it where that is asked for. */
export const untickTrench = mutation({
  name: 'untick-trench',
  allow: canEnter,
  input: untickTrenchInput,
  write: async (context, { sheetId, trench, withAfter }) => {
    const { tx, scope, today, now, note } = context;
    const open = await openSheet({ db: tx, scope, today }, sheetId);
    const sheet = await heldStill(context, sheetId);
    const ticked = sheet.ticks.filter((tick) => tick.trench >= trench).map((tick) => tick.trench);
    const done = sheet.ticks.length;
    const [first] = ticked;
    if (first === undefined) return { sheetId, done, unticked: 0 };
    const last = Math.max(...ticked);
    if (last > trench && !withAfter) refuse('trenches-after', { field: 'trench', numbers: { last, trench } });
    await undoTicksFrom(tx, scope, sheetId, trench, now);
    await logSheet(context, sheet);
    note({
      verb: 'taken back',
      thing: ticked.length > 1 ? 'trenches' : 'trench',
      thingId: sheetId,
      forHoldingId: sheet.holdingId,
      before: {
        name: ticked.length > 1 ? `${first} to ${last}` : String(first),
        bed: open.bed.name,
        season: sheet.season,
      },
    });
    await tellHolders(context, open);
    return { sheetId, done: done - ticked.length, unticked: ticked.length };
  },
});
