import 'server-only';
import { z } from 'zod';
import { sheetsIn } from '@/lib/data/ground-sheet';
import { overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { portionOf } from '@/lib/domain/sheet/portion';
import { figuresOf, type SheetFigures } from '@/lib/domain/sheet/sheet-figures';
import { type Stage, stageAtTrench, stagesAtTrench, stagesOf } from '@/lib/domain/trench/stages';
import { restAfter, usedUpTo } from '@/lib/domain/trench/used-up-to';
import { openBed } from '../ground/open-bed';
import { query } from '../operation';
import { paceOfViewer } from './digger-pace';
import { type OpenSheet, openSheet } from './open-sheet';
import { likelyDigDay } from './settle-order';
import { lineOf, type SheetLine } from './sheet-line';
import { sheetOutlook } from './sheet-outlook';

/** A sheet as it is followed: how far it has come, what is to be done next, what goes in, and what the rest needs. */
export const readSheet = query({
  name: 'read-sheet',
  allow: canEnter,
  input: z.object({ sheetId: z.uuid() }),
  read: async (context, { sheetId }) => {
    const { scope, today } = context;
    const open = await openSheet(context, sheetId);
    const { sheet, bed, bedsNow, plot, holding } = open;
    const { order, footprint, season, ticks } = sheet;
    const figures = figuresOf(order, footprint);
    const { digging, layers, moved } = figures;
    const done = ticks.length;
    const pace = await paceOfViewer(context, holding, order);
    const on = ticks.map(({ doneOn }) => doneOn).sort();
    const outlook = await sheetOutlook(context, {
      ...{ frameId: sheet.frameId, footprint, season, order, sheetId },
      on: on.at(-1) ?? likelyDigDay(order, today),
    });
    const before = ticks.filter(({ doneOn }) => doneOn < today).map(({ trench }) => trench);
    const soilG = moved.trenches
      .filter(({ number }) => !before.includes(number))
      .reduce((sum, { massG }) => sum + (massG?.most ?? 0), 0);
    return {
      today,
      units: scope.units,
      sheet: { id: sheetId, group: sheet.group, season, order, footprint, retiredAt: sheet.retiredAt },
      bed: { id: bed.id, name: bed.name },
      /** Other than its own only where that was split, joined or measured anew. */
      bedsNow: bedsNow.map(({ id, name }) => ({ id, name })),
      plot: { id: plot.id, number: plot.number },
      done,
      total: digging.plan.trenches.length,
      ticks: tellTicks(open, scope.memberId),
      figures,
      used: usedUpTo(layers, done),
      rest: restAfter(layers, done),
      atHand: trenchAtHand(figures, done),
      stages: stagesOf(digging),
      pace,
      portion: portionOf(digging.plan, ticks, pace, today, soilG || null),
      ...outlook,
    };
  },
});

export type SheetRead = Awaited<ReturnType<(typeof readSheet)['run']>>;

/** The trench that comes next, with its steps and how the work looks now; null when all are done. */
function trenchAtHand({ digging, layers, moved }: SheetFigures, done: number) {
  const [trench, put, soil] = [digging.plan.trenches[done], layers.trenches[done], moved.trenches[done]];
  if (!trench || !put || !soil) return null;
  const before = layers.trenches[done - 1]?.barrow ?? { number: 0, leftMl: 0 };
  const now: Stage = stageAtTrench(digging, done + 1);
  return { trench, put, soil, barrowBefore: before, now, steps: stagesAtTrench(digging, done + 1) };
}

// Whoever dug here and holds the ground no more is not named.
function tellTicks({ sheet, holding }: OpenSheet, viewerId: string) {
  const names = new Map(holding?.members.map(({ id, name }) => [id, name]));
  return sheet.ticks.map(({ trench, doneOn, byMemberId }) => ({
    trench,
    doneOn,
    by: byMemberId === viewerId ? ('you' as const) : (names.get(byMemberId) ?? null),
  }));
}

/** The sheets that lie on a bed's ground, whichever bed they were made for, newest first. */
export const listSheets = query({
  name: 'list-sheets',
  allow: canEnter,
  input: z.object({ bedId: z.uuid() }),
  read: async (context, { bedId }): Promise<SheetLine[]> => {
    const { bed, holding } = await openBed(context, bedId);
    const sheets = await sheetsIn(context.db, context.scope, [bed.frameId]);
    return sheets
      .filter((sheet) => sheet.holdingId === (holding?.id ?? null) && overlap(sheet.footprint, bed.footprint) !== null)
      .map(lineOf);
  },
});
