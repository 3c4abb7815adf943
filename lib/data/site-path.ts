import 'server-only';
import type { SitePath as Row } from '@/generated/prisma/client';
import type { SitePath } from '@/lib/domain/placing/drawn-paths';
import type { Db, Tx } from './db';
import { polygonOf } from './plot';
import type { Scope } from './scope';

/** A path as it was drawn, and how much of it a lorry can drive. */
export type PathRecord = SitePath & { readonly id: string; readonly siteId: string; readonly name: string | null };

function toPath({ id, siteId, name, points, lorry, lorryFromCm, lorryToCm }: Row): PathRecord {
  const part = { fromCm: lorryFromCm ?? 0, toCm: lorryToCm ?? 0 };
  return {
    ...{ id, siteId, name },
    points: polygonOf(points) ?? [],
    lorry: lorry === 'part' ? part : lorry === 'whole' ? 'whole' : 'none',
  };
}

/** The paths of a site that are there, in the order in which they were drawn. */
export async function pathsOf(db: Db, scope: Scope, siteId: string): Promise<PathRecord[]> {
  const rows = await db.sitePath.findMany({
    where: { siteId, societyId: scope.societyId, retiredAt: null },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
  });
  return rows.map(toPath);
}

/** One path that is there, or null. */
export async function pathById(db: Db, scope: Scope, id: string): Promise<PathRecord | null> {
  const row = await db.sitePath.findFirst({ where: { id, societyId: scope.societyId, retiredAt: null } });
  return row && toPath(row);
}

/** The same, locked until the transaction ends: of two who change it, the second sees what the first did. */
export async function lockPath(tx: Tx, scope: Scope, id: string): Promise<PathRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "SitePath" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  return pathById(tx, scope, id);
}

export type PathFacts = SitePath & { readonly name: string | null };

function toRow({ name, points, lorry }: PathFacts) {
  const part = typeof lorry === 'string' ? null : lorry;
  return {
    name,
    points: points.map(({ xCm, yCm }) => [xCm, yCm]),
    lorry: part ? 'part' : (lorry as string),
    lorryFromCm: part?.fromCm ?? null,
    lorryToCm: part?.toCm ?? null,
  };
}

/** Draw a path, and return its id. */
export async function createPath(tx: Tx, scope: Scope, siteId: string, facts: PathFacts): Promise<string> {
  const data = { ...toRow(facts), siteId, societyId: scope.societyId };
  const { id } = await tx.sitePath.create({ data, select: { id: true } });
  return id;
}

/** Draw it anew. */
export async function changePath(tx: Tx, scope: Scope, id: string, facts: PathFacts): Promise<void> {
  await tx.sitePath.updateMany({ where: { id, societyId: scope.societyId }, data: toRow(facts) });
}

/** Take a path off the plan; the row stays. */
export async function retirePath(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  await tx.sitePath.updateMany({ where: { id, societyId: scope.societyId, retiredAt: null }, data: { retiredAt: at } });
}
