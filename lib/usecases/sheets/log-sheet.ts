import 'server-only';
import { createWorks, retireWorksOfSheet } from '@/lib/data/ground-work';
import { lockSheet, type SheetRecord } from '@/lib/data/ground-sheet';
import { worksOfSheet } from '@/lib/domain/sheet/works-of-sheet';
import type { WriteContext } from '../operation';
import { NotFound } from '../refusal';

/** Hold a sheet still, as it is by now. */
export async function heldStill({ tx, scope }: WriteContext, sheetId: string): Promise<SheetRecord> {
  const sheet = await lockSheet(tx, scope, sheetId);
  if (!sheet) throw new NotFound();
  return sheet;
}

/**
 * Log on the ground what the trenches ticked by now have done to it: its turn is reset there, and nowhere else. What the
 * sheet had logged before gives way to it.
 */
export async function logSheet({ tx, scope, now }: WriteContext, { id }: SheetRecord): Promise<void> {
  const sheet = await lockSheet(tx, scope, id);
  if (!sheet) throw new NotFound();
  const { order, footprint, ticks, frameId, holdingId, season } = sheet;
  await retireWorksOfSheet(tx, scope, id, now);
  const works = worksOfSheet(order, footprint, ticks);
  await createWorks(
    tx,
    scope,
    works.map((work) => ({ ...work, frameId, holdingId, season, sheetId: id })),
  );
}
