import 'server-only';
import { randomUUID } from 'node:crypto';
import type { Bed } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import { byNumber } from './holding';
import type { Scope } from './scope';

export type BedRecord = {
  readonly id: string;
  readonly plotId: string;
  readonly frameId: string;
  readonly name: string;
  readonly footprint: Footprint;
  readonly typed: Readonly<Record<string, string>> | null;
  readonly fromOn: CalendarDate;
  readonly retiredOn: CalendarDate | null;
};

function toBed(row: Bed): BedRecord {
  const { id, plotId, frameId, name, xCm, yCm, widthCm, lengthCm } = row;
  return {
    id,
    plotId,
    frameId,
    name,
    footprint: { xCm, yCm, widthCm, lengthCm },
    typed: (row.typed as Record<string, string> | null) ?? null,
    fromOn: fromDbDay(row.fromOn),
    retiredOn: row.retiredOn && fromDbDay(row.retiredOn),
  };
}

/** Beds that stand on any of the days from one to another, of some plots or of all. */
export async function bedsStanding(
  db: Db,
  scope: Scope,
  from: CalendarDate,
  to: CalendarDate,
  plotIds?: readonly string[],
): Promise<BedRecord[]> {
  const rows = await db.bed.findMany({
    where: {
      societyId: scope.societyId,
      fromOn: { lte: toDbDay(to) },
      OR: [{ retiredOn: null }, { retiredOn: { gt: toDbDay(from) } }],
      ...(plotIds ? { plotId: { in: [...plotIds] } } : {}),
    },
  });
  return rows.map(toBed).sort((a, b) => byNumber(a.name, b.name));
}

/** One bed, standing or retired, or null. */
export async function bedById(db: Db, scope: Scope, id: string): Promise<BedRecord | null> {
  const row = await db.bed.findFirst({ where: { id, societyId: scope.societyId } });
  return row && toBed(row);
}

export type NewBed = {
  readonly plotId: string;
  readonly frameId: string;
  readonly name: string;
  readonly footprint: Footprint;
  readonly typed: Readonly<Record<string, string>> | null;
  readonly fromOn: CalendarDate;
};

/** Write beds and return their ids. The database refuses an overlap (constraint bed_overlap). */
export async function createBeds(tx: Tx, scope: Scope, beds: readonly NewBed[]): Promise<string[]> {
  const ids = beds.map(() => randomUUID());
  await tx.bed.createMany({
    data: beds.map(({ footprint, typed, fromOn, ...bed }, at) => ({
      ...bed,
      ...footprint,
      id: ids[at] ?? '',
      societyId: scope.societyId,
      fromOn: toDbDay(fromOn),
      ...(typed ? { typed } : {}),
    })),
  });
  return ids;
}

/** Take a bed out of use from a day, and say which beds its ground became. */
export async function retireBed(
  tx: Tx,
  scope: Scope,
  id: string,
  on: CalendarDate,
  childIds: readonly string[] = [],
): Promise<void> {
  const { societyId } = scope;
  await tx.bed.updateMany({ where: { id, societyId }, data: { retiredOn: toDbDay(on) } });
  await tx.bedLineage.createMany({
    data: childIds.map((childId) => ({ societyId, parentId: id, childId, on: toDbDay(on) })),
  });
}

/** Say which retired beds a new bed was made from. */
export async function noteBedLineage(
  tx: Tx,
  scope: Scope,
  parentIds: readonly string[],
  childId: string,
  on: CalendarDate,
): Promise<void> {
  await tx.bedLineage.createMany({
    data: parentIds.map((parentId) => ({ societyId: scope.societyId, parentId, childId, on: toDbDay(on) })),
  });
}

/** Name a bed anew. */
export async function renameBed(tx: Tx, scope: Scope, id: string, name: string): Promise<void> {
  await tx.bed.updateMany({ where: { id, societyId: scope.societyId }, data: { name } });
}

/** Hold a plot's beds still until the transaction ends, so that two holders drawing at once see each other. */
export async function lockPlot(tx: Tx, scope: Scope, plotId: string): Promise<void> {
  await tx.$queryRaw`SELECT "id" FROM "Plot" WHERE "id" = ${plotId}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
}
