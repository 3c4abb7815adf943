import 'server-only';
import type { GroundSheet, TrenchTick } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { RecipeGroup } from '@/lib/domain/catalogue/recipes';
import type { Footprint } from '@/lib/domain/ground/footprint';
import type { SheetOrder } from '@/lib/domain/sheet/sheet-order';
import { fromDbDay, toDbDay } from './day';
import type { Db, Json, Tx } from './db';
import type { Scope } from './scope';

export type NewSheet = {
  readonly bedId: string;
  readonly frameId: string;
  readonly holdingId: string | null;
  readonly footprint: Footprint;
  readonly season: number;
  readonly group: RecipeGroup;
  readonly order: SheetOrder;
};

/** A trench that is ticked, by whom and when. */
export type TickRecord = { readonly trench: number; readonly doneOn: CalendarDate; readonly byMemberId: string };

export type SheetRecord = NewSheet & {
  readonly id: string;
  readonly madeAt: Date;
  readonly retiredAt: Date | null;
  /** In order of work; those that were taken back are left out. */
  readonly ticks: readonly TickRecord[];
};

const withTicks = { ticks: { where: { undoneAt: null }, orderBy: { trench: 'asc' } } } as const;

function toSheet({ ticks, ...row }: GroundSheet & { ticks: TrenchTick[] }): SheetRecord {
  const { id, bedId, frameId, holdingId, xCm, yCm, widthCm, lengthCm, season, createdAt, retiredAt } = row;
  return {
    id,
    bedId,
    frameId,
    holdingId,
    season,
    retiredAt,
    footprint: { xCm, yCm, widthCm, lengthCm },
    // Written by nobody but `createSheet`.
    group: row.cropGroup as RecipeGroup,
    order: row.order as unknown as SheetOrder,
    madeAt: createdAt,
    ticks: ticks.map(({ trench, doneOn, byMemberId }) => ({ trench, doneOn: fromDbDay(doneOn), byMemberId })),
  };
}

/** One sheet, taken back or not, or null. */
export async function sheetById(db: Db, scope: Scope, id: string): Promise<SheetRecord | null> {
  const row = await db.groundSheet.findFirst({ where: { id, societyId: scope.societyId }, include: withTicks });
  return row && toSheet(row);
}

/** The sheets of the ground of some frames that were not taken back, the newest first. */
export async function sheetsIn(db: Db, scope: Scope, frameIds: readonly string[]): Promise<SheetRecord[]> {
  const rows = await db.groundSheet.findMany({
    where: { societyId: scope.societyId, retiredAt: null, frameId: { in: [...frameIds] } },
    include: withTicks,
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
  });
  return rows.map(toSheet);
}

/** The sheets of some holdings for a season or a later one that were not taken back, with their beds' names, newest first. */
export async function sheetsOfHoldings(
  db: Db,
  scope: Scope,
  holdingIds: readonly string[],
  fromSeason: number,
): Promise<(SheetRecord & { readonly bedName: string; readonly plotNumber: string })[]> {
  const rows = await db.groundSheet.findMany({
    where: {
      societyId: scope.societyId,
      retiredAt: null,
      holdingId: { in: [...holdingIds] },
      season: { gte: fromSeason },
    },
    include: { ...withTicks, bed: { select: { name: true, plot: { select: { number: true } } } } },
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
  });
  return rows.map(({ bed, ...row }) => ({ ...toSheet(row), bedName: bed.name, plotNumber: bed.plot.number }));
}

/** One sheet, held still until the transaction ends: of two who tick at once, one waits and then sees the other's tick. */
export async function lockSheet(tx: Tx, scope: Scope, id: string): Promise<SheetRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "GroundSheet" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  return sheetById(tx, scope, id);
}

/** Write a sheet and return its id. */
export async function createSheet(tx: Tx, scope: Scope, sheet: NewSheet, at: Date): Promise<string> {
  const { footprint, group, order, ...where } = sheet;
  const made = { societyId: scope.societyId, madeByMemberId: scope.memberId, createdAt: at };
  const { id } = await tx.groundSheet.create({
    data: { ...where, ...footprint, ...made, cropGroup: group, order: order as Json },
    select: { id: true },
  });
  return id;
}

/** Take sheets back; the rows stay, with their ticks. */
export async function retireSheets(tx: Tx, scope: Scope, ids: readonly string[], at: Date): Promise<void> {
  await tx.groundSheet.updateMany({
    where: { id: { in: [...ids] }, societyId: scope.societyId, retiredAt: null },
    data: { retiredAt: at },
  });
}

/** Tick trenches of a sheet. The database refuses one that is ticked (index trench_ticked_once). */
export async function createTicks(
  tx: Tx,
  scope: Scope,
  sheetId: string,
  ticked: { trenches: readonly number[]; doneOn: CalendarDate; at: Date },
): Promise<void> {
  const { trenches, doneOn, at } = ticked;
  const tick = { societyId: scope.societyId, sheetId, doneOn: toDbDay(doneOn), byMemberId: scope.memberId, at };
  await tx.trenchTick.createMany({ data: trenches.map((trench) => ({ ...tick, trench })) });
}

/** Take back the ticks of a sheet from one trench on; the rows stay. */
export async function undoTicksFrom(tx: Tx, scope: Scope, sheetId: string, trench: number, at: Date): Promise<void> {
  await tx.trenchTick.updateMany({
    where: { sheetId, societyId: scope.societyId, trench: { gte: trench }, undoneAt: null },
    data: { undoneAt: at },
  });
}
