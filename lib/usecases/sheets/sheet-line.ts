import 'server-only';
import type { SheetRecord } from '@/lib/data/ground-sheet';
import { diggingOf, type SheetOrder } from '@/lib/domain/sheet/sheet-order';

/** A sheet in one line. */
export type SheetLine = {
  readonly id: string;
  readonly bedId: string;
  readonly season: number;
  readonly group: SheetRecord['group'];
  readonly method: SheetOrder['method'];
  readonly done: number;
  readonly total: number;
  readonly until: SheetOrder['until'];
};

/** A sheet as one line of a list. */
export function lineOf(sheet: SheetRecord): SheetLine {
  const { id, bedId, season, group, order, footprint, ticks } = sheet;
  const total = diggingOf(order, footprint).plan.trenches.length;
  return { id, bedId, season, group, method: order.method, done: ticks.length, total, until: order.until };
}
