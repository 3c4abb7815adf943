import 'server-only';
import { retireSheets, undoTicksFrom } from '@/lib/data/ground-sheet';
import { canEnter } from '@/lib/domain/policy/standing';
import { retireSheetInput } from '@/lib/schemas/sheets/sheet';
import { tellHolders } from '../ground/tell-holders';
import { mutation } from '../operation';
import { heldStill, logSheet } from './log-sheet';
import { openSheet } from './open-sheet';

/** Take a sheet back. What was dug by it stays on the ground's record, unless none of it was. */
export const retireSheet = mutation({
  name: 'retire-sheet',
  allow: canEnter,
  input: retireSheetInput,
  write: async (context, { sheetId, undug }) => {
    const { tx, scope, today, now, note } = context;
    const open = await openSheet({ db: tx, scope, today }, sheetId);
    const sheet = await heldStill(context, sheetId);
    if (undug) {
      await undoTicksFrom(tx, scope, sheetId, 1, now);
      await logSheet(context, sheet);
    }
    if (!sheet.retiredAt) await retireSheets(tx, scope, [sheetId], now);
    note({
      verb: 'taken back',
      thing: 'ground sheet',
      thingId: sheetId,
      forHoldingId: sheet.holdingId,
      before: { bed: open.bed.name, season: sheet.season, done: sheet.ticks.length },
      after: { undug },
    });
    await tellHolders(context, open);
    return { sheetId, bedId: open.bed.id };
  },
});
