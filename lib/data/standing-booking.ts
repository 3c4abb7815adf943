import 'server-only';
import type { StandingBooking } from '@/generated/prisma/client';
import type { Standing, StandingFor } from '@/lib/domain/delivery/standing';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

export type StandingRecord = Standing & { readonly id: string; readonly holdingId: string; readonly since: Date };

function toStanding({ id, holdingId, serves, autumnOnly, mostLoads, createdAt }: StandingBooking): StandingRecord {
  return { id, holdingId, serves: serves as StandingFor, autumnOnly, mostLoads, since: createdAt };
}

/** The standing bookings that have not ended: of all holdings, or of some. */
export async function standingBookings(
  db: Db,
  scope: Scope,
  holdingIds?: readonly string[],
): Promise<StandingRecord[]> {
  const { societyId } = scope;
  const of = holdingIds ? { holdingId: { in: [...holdingIds] } } : {};
  const rows = await db.standingBooking.findMany({
    where: { societyId, endedAt: null, ...of },
    orderBy: { id: 'asc' },
  });
  return rows.map(toStanding);
}

/** One that has not ended, locked until the transaction ends; or null. */
export async function lockStanding(tx: Tx, scope: Scope, id: string): Promise<StandingRecord | null> {
  const { societyId } = scope;
  await tx.$queryRaw`SELECT 1 FROM "StandingBooking"
    WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR UPDATE`;
  const row = await tx.standingBooking.findFirst({ where: { id, societyId, endedAt: null } });
  return row && toStanding(row);
}

/** Start one; the database keeps it to one of a kind for each holding. */
export async function createStanding(
  tx: Tx,
  scope: Scope,
  row: Standing & { readonly holdingId: string; readonly at: Date },
): Promise<string> {
  const { at: createdAt, ...facts } = row;
  const { societyId, memberId: byMemberId } = scope;
  const { id } = await tx.standingBooking.create({
    data: { ...facts, createdAt, societyId, byMemberId },
    select: { id: true },
  });
  return id;
}

/** Change when it books, and its limit. */
export async function changeStandingTo(
  tx: Tx,
  scope: Scope,
  id: string,
  data: Pick<Standing, 'autumnOnly' | 'mostLoads'>,
): Promise<void> {
  await tx.standingBooking.updateMany({ where: { id, societyId: scope.societyId }, data });
}

/** End those of a holding; their ids. */
export async function endStandingOf(tx: Tx, scope: Scope, holdingId: string, endedAt: Date): Promise<string[]> {
  const ended = await tx.standingBooking.updateManyAndReturn({
    where: { holdingId, societyId: scope.societyId, endedAt: null },
    data: { endedAt },
    select: { id: true },
  });
  return ended.map(({ id }) => id);
}

/** End it; what it booked stands. */
export async function endStandingAt(tx: Tx, scope: Scope, id: string, endedAt: Date): Promise<void> {
  await tx.standingBooking.updateMany({ where: { id, societyId: scope.societyId }, data: { endedAt } });
}
