import 'server-only';
import type { DropPoint as Row } from '@/generated/prisma/client';
import type { Point } from '@/lib/domain/ground/segment';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Where on a site a load can be tipped. */
export type DropPointRecord = {
  readonly id: string;
  readonly siteId: string;
  readonly name: string;
  readonly at: Point;
};

function toDropPoint({ id, siteId, name, xCm, yCm }: Row): DropPointRecord {
  return { id, siteId, name, at: { xCm, yCm } };
}

/** The drop points of a site that are in use, by name. */
export async function dropPointsOf(db: Db, scope: Scope, siteId: string): Promise<DropPointRecord[]> {
  const rows = await db.dropPoint.findMany({
    where: { siteId, societyId: scope.societyId, retiredAt: null },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  });
  return rows.map(toDropPoint);
}

/** Every drop point in use, with its site's name where there are several sites. */
export async function dropPointsAnywhere(
  db: Db,
  scope: Scope,
): Promise<{ readonly id: string; readonly name: string }[]> {
  const rows = await db.dropPoint.findMany({
    where: { societyId: scope.societyId, retiredAt: null },
    select: { id: true, name: true, site: { select: { id: true, name: true } } },
    orderBy: [{ site: { name: 'asc' } }, { name: 'asc' }, { id: 'asc' }],
  });
  const isOneSite = new Set(rows.map(({ site }) => site.id)).size < 2;
  return rows.map(({ id, name, site }) => ({ id, name: isOneSite ? name : `${site.name}: ${name}` }));
}

/** One drop point in use, or null. */
export async function dropPointById(db: Db, scope: Scope, id: string): Promise<DropPointRecord | null> {
  const row = await db.dropPoint.findFirst({ where: { id, societyId: scope.societyId, retiredAt: null } });
  return row && toDropPoint(row);
}

/** What a drop point is called, in use or not. */
export async function dropPointName(db: Db, scope: Scope, id: string): Promise<string | null> {
  const row = await db.dropPoint.findFirst({ where: { id, societyId: scope.societyId }, select: { name: true } });
  return row?.name ?? null;
}

/**
 * One drop point in use, locked until the transaction ends. Deliveries that are to be tipped there share the lock; whoever
 * changes or retires it takes it alone, so that no delivery is sent to one that is gone.
 */
export async function lockDropPoint(
  tx: Tx,
  scope: Scope,
  id: string,
  how: 'share' | 'alone',
): Promise<DropPointRecord | null> {
  const { societyId } = scope;
  if (how === 'share')
    await tx.$queryRaw`SELECT 1 FROM "DropPoint" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR SHARE`;
  else
    await tx.$queryRaw`SELECT 1 FROM "DropPoint" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR UPDATE`;
  return dropPointById(tx, scope, id);
}

type DropPointFacts = { readonly name: string; readonly at: Point };

/** Make a drop point, and return its id. */
export async function createDropPoint(
  tx: Tx,
  scope: Scope,
  siteId: string,
  { name, at }: DropPointFacts,
): Promise<string> {
  const data = { name, ...at, siteId, societyId: scope.societyId };
  const { id } = await tx.dropPoint.create({ data, select: { id: true } });
  return id;
}

/** Name it, or place it, anew. */
export async function changeDropPoint(tx: Tx, scope: Scope, id: string, { name, at }: DropPointFacts): Promise<void> {
  await tx.dropPoint.updateMany({ where: { id, societyId: scope.societyId }, data: { name, ...at } });
}

/** Take a drop point out of use; the row stays, and so does what was tipped there. */
export async function retireDropPoint(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  const where = { id, societyId: scope.societyId, retiredAt: null };
  await tx.dropPoint.updateMany({ where, data: { retiredAt: at } });
}
