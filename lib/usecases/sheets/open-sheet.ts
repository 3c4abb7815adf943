import 'server-only';
import { bedById, type BedRecord } from '@/lib/data/bed';
import type { Db } from '@/lib/data/db';
import { sheetById, type SheetRecord } from '@/lib/data/ground-sheet';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { overlap } from '@/lib/domain/ground/footprint';
import { bedsOnGround } from '../ground/measure';
import { type OpenPlot, openPlot } from '../ground/open-bed';
import { NotFound } from '../refusal';

type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };

export type OpenSheet = OpenPlot & {
  readonly sheet: SheetRecord;
  /** The bed it was made for, which may be split, joined or measured anew since. */
  readonly bed: BedRecord;
  /** The beds that lie on its ground today. */
  readonly bedsNow: readonly BedRecord[];
};

/**
 * A sheet of ground that the viewer keeps. It is the holding's own: whoever takes the ground over finds the work on record,
 * and not the paper. It stays with the holding when its bed or its plot is split or joined.
 */
export async function openSheet(at: At, sheetId: string): Promise<OpenSheet> {
  const { db, scope, today } = at;
  const sheet = await sheetById(db, scope, sheetId);
  const bed = sheet && (await bedById(db, scope, sheet.bedId));
  if (!sheet || !bed) throw new NotFound();
  const standing = await bedsOnGround(db, scope, sheet.frameId, today);
  const bedsNow = standing.filter(
    ({ fromOn, footprint }) => fromOn <= today && overlap(footprint, sheet.footprint) !== null,
  );
  for (const plotId of new Set([...bedsNow.map((one) => one.plotId), bed.plotId])) {
    const open = await openPlot(at, plotId).catch(notFoundAsNull);
    if (open && (open.holding?.id ?? null) === sheet.holdingId) return { ...open, sheet, bed, bedsNow };
  }
  throw new NotFound();
}

function notFoundAsNull(error: unknown): null {
  if (error instanceof NotFound) return null;
  throw error;
}
