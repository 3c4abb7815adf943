import 'server-only';
import { randomUUID } from 'node:crypto';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Frame } from '@/lib/domain/ground/frame';
import type { Polygon } from '@/lib/domain/ground/polygon';
import { toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A plot to be written. It takes a frame that is there already, or gets one of its own. */
export type NewPlot = {
  readonly siteId: string;
  readonly number: string;
  readonly fromOn: CalendarDate;
  readonly areaCm2: number;
  readonly quarterRods: number | null;
  readonly polygon: Polygon | null;
  readonly frame: { readonly id: string } | Frame | null;
};

/** Write plots, each with a frame, and return their ids in order. */
export async function createPlots(tx: Tx, scope: Scope, plots: readonly NewPlot[]): Promise<string[]> {
  const { societyId } = scope;
  const rows = plots.map((plot) => ({ ...plot, id: randomUUID(), frameId: idOf(plot.frame) ?? randomUUID() }));
  await tx.frame.createMany({
    data: rows.flatMap(({ frame, frameId, siteId }) =>
      idOf(frame) ? [] : [{ id: frameId, societyId, siteId, ...(frame as Frame | null) }],
    ),
  });
  await tx.plot.createMany({
    data: rows.map(({ frame: _, polygon, fromOn, ...row }) => ({
      ...row,
      societyId,
      fromOn: toDbDay(fromOn),
      ...(polygon ? { polygon: polygon.map(({ xCm, yCm }) => [xCm, yCm]) } : {}),
    })),
  });
  return rows.map(({ id }) => id);
}

function idOf(frame: NewPlot['frame']): string | null {
  return frame && 'id' in frame ? frame.id : null;
}

/** Which of these numbers a site's plots in use have already, whatever their letters' case. */
export async function numbersTaken(
  db: Db,
  scope: Scope,
  siteId: string,
  numbers: readonly string[],
): Promise<string[]> {
  const rows = await db.plot.findMany({
    where: { societyId: scope.societyId, siteId, retiredOn: null, number: { in: [...numbers], mode: 'insensitive' } },
    select: { number: true },
  });
  return rows.map(({ number }) => number);
}

/** Give a plot its boundary: the frame's place on the site, and the polygon within it. */
export async function drawPlotGround(
  tx: Tx,
  scope: Scope,
  plot: { id: string; frameId: string },
  drawing: { frame: Frame; polygon: Polygon; areaCm2: number },
): Promise<void> {
  const { societyId } = scope;
  await tx.frame.updateMany({ where: { id: plot.frameId, societyId }, data: drawing.frame });
  const polygon = drawing.polygon.map(({ xCm, yCm }) => [xCm, yCm]);
  await tx.plot.updateMany({ where: { id: plot.id, societyId }, data: { polygon, areaCm2: drawing.areaCm2 } });
}

/** Take a plot out of use from a day and say what it became. */
export async function retirePlot(
  tx: Tx,
  scope: Scope,
  id: string,
  on: CalendarDate,
  childIds: readonly string[],
): Promise<void> {
  const { societyId } = scope;
  await tx.plot.updateMany({ where: { id, societyId }, data: { retiredOn: toDbDay(on) } });
  await tx.plotLineage.createMany({
    data: childIds.map((childId) => ({ societyId, parentId: id, childId, on: toDbDay(on) })),
  });
}

/** The society's sites, by name. */
export function sitesOf(db: Db, scope: Scope) {
  return db.site.findMany({
    where: { societyId: scope.societyId },
    select: { id: true, name: true, outline: true, northCentideg: true },
    orderBy: { name: 'asc' },
  });
}

/** One site, or null. */
export function siteById(db: Db, scope: Scope, id: string) {
  return db.site.findFirst({ where: { id, societyId: scope.societyId }, select: { id: true, name: true } });
}

/** One site, locked until the transaction ends, or null: what is named on it is named by one at a time. */
export async function lockSite(tx: Tx, scope: Scope, id: string) {
  await tx.$queryRaw`SELECT 1 FROM "Site" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR NO KEY UPDATE`;
  return siteById(tx, scope, id);
}

/** Make a site. */
export async function createSite(tx: Tx, scope: Scope, name: string): Promise<string> {
  const { id } = await tx.site.create({ data: { societyId: scope.societyId, name }, select: { id: true } });
  return id;
}
