import 'server-only';
import type { StorePlace } from '@/generated/prisma/client';
import type { PlaceKind } from '@/lib/domain/store/lot';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Where a holding keeps what it stored. */
export type PlaceRecord = {
  readonly id: string;
  readonly holdingId: string;
  readonly name: string;
  readonly kind: PlaceKind;
  readonly tenthC: number | null;
};

export type PlaceFacts = Pick<PlaceRecord, 'name' | 'kind' | 'tenthC'>;

/** A row as a place; the database lets in no other kind (check place_kind). */
export function toPlace({ id, holdingId, name, kind, tenthC }: StorePlace): PlaceRecord {
  return { id, holdingId, name, kind: kind as PlaceKind, tenthC };
}

/** The places of some holdings that stand, the oldest first. */
export async function placesOf(db: Db, scope: Scope, holdingIds: readonly string[]): Promise<PlaceRecord[]> {
  const rows = await db.storePlace.findMany({
    where: { societyId: scope.societyId, retiredAt: null, holdingId: { in: [...holdingIds] } },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
  });
  return rows.map(toPlace);
}

/** One place that stands, locked until the transaction ends; or null. */
export async function lockPlace(tx: Tx, scope: Scope, id: string): Promise<PlaceRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "StorePlace" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  const row = await tx.storePlace.findFirst({ where: { id, societyId: scope.societyId, retiredAt: null } });
  return row && toPlace(row);
}

/** Add a place, and return its id. */
export async function createPlace(tx: Tx, scope: Scope, holdingId: string, facts: PlaceFacts): Promise<string> {
  const { id } = await tx.storePlace.create({ data: { ...facts, holdingId, societyId: scope.societyId } });
  return id;
}

/** Change a place. As it was before, it stays as a row that is retired. */
export async function changePlaceRow(
  tx: Tx,
  scope: Scope,
  { id, ...before }: PlaceRecord,
  facts: PlaceFacts,
  at: Date,
): Promise<string> {
  const { societyId } = scope;
  const kept = await tx.storePlace.create({ data: { ...before, societyId, retiredAt: at } });
  await tx.storePlace.updateMany({ where: { id, societyId }, data: facts });
  return kept.id;
}

/** Be done with a place; the row stays. */
export async function retirePlaceRow(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  await tx.storePlace.updateMany({ where: { id, societyId: scope.societyId }, data: { retiredAt: at } });
}
