import 'server-only';
import { lockPlot } from '@/lib/data/bed';
import { createSheet, lockSheet, retireSheets, sheetsIn } from '@/lib/data/ground-sheet';
import { overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { makeSheetInput } from '@/lib/schemas/sheets/sheet';
import { openBed, type OpenBed } from '../ground/open-bed';
import { tellHolders } from '../ground/tell-holders';
import { mutation, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { settleOrder, type SheetGround, sheetGround } from './settle-order';

/**
 * Make the sheet of a bed, or of a strip of it, for a season. It stands in place of any other for the same ground and season
 * of which no trench is ticked yet; one that is begun is followed, or taken back first.
 */
export const makeSheet = mutation({
  name: 'make-sheet',
  allow: canEnter,
  input: makeSheetInput,
  write: async (context, { writeId: _, bedId, ...wish }) => {
    const { tx, scope, today, now, note } = context;
    const open = await openBed({ db: tx, scope, today }, bedId);
    await lockPlot(tx, scope, open.plot.id);
    const ground = await sheetGround({ db: tx, scope, today }, open, wish);
    const order = settleOrder(ground, wish, scope.units);
    const { season, footprint, group } = ground;
    if (!group) return refuse('group-wanted', { field: 'group' });
    const superseded = await supersede(context, open, ground);
    const holdingId = open.holding?.id ?? null;
    const { frameId } = open.bed;
    const sheetId = await createSheet(tx, scope, { bedId, frameId, holdingId, footprint, season, group, order }, now);
    note({
      verb: 'made',
      thing: 'ground sheet',
      thingId: sheetId,
      forHoldingId: holdingId,
      ...(superseded.length ? { before: { sheets: superseded } } : {}),
      after: { bed: open.bed.name, season, group, method: order.method, ...footprint },
    });
    await tellHolders(context, open);
    return { sheetId };
  },
});

// Locked one after another, so that no trench is ticked on a sheet while another takes its place.
async function supersede(
  { tx, scope, now }: WriteContext,
  { bed }: OpenBed,
  { season, footprint }: SheetGround,
): Promise<string[]> {
  const others = (await sheetsIn(tx, scope, [bed.frameId]))
    .filter((sheet) => sheet.season === season && overlap(sheet.footprint, footprint))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const ids: string[] = [];
  for (const { id } of others) {
    const sheet = await lockSheet(tx, scope, id);
    if (sheet?.ticks.length) refuse('sheet-begun', { numbers: { done: sheet.ticks.length } });
    ids.push(id);
  }
  await retireSheets(tx, scope, ids, now);
  return ids;
}
