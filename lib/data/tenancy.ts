import 'server-only';
import { randomUUID } from 'node:crypto';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import { heldOn } from './holding';
import type { Scope } from './scope';

/** A letting to begin: one plot to one household from a day. */
export type Letting = { readonly plotId: string; readonly holdingId: string; readonly fromOn: CalendarDate };

/** Make holdings with their holders, and return their ids in order. */
export async function createHoldings(
  tx: Tx,
  scope: Scope,
  holdings: readonly { memberIds: readonly string[]; fromOn: CalendarDate }[],
): Promise<string[]> {
  const ids = holdings.map(() => randomUUID());
  const { societyId } = scope;
  await tx.holding.createMany({ data: ids.map((id) => ({ id, societyId })) });
  await tx.holdingMember.createMany({
    data: holdings.flatMap(({ memberIds, fromOn }, at) =>
      memberIds.map((memberId) => ({ societyId, holdingId: ids[at] ?? '', memberId, fromOn: toDbDay(fromOn) })),
    ),
  });
  return ids;
}

/** Begin tenancies. The database refuses a plot that is let already (constraint tenancy_once). */
export async function beginTenancies(tx: Tx, scope: Scope, lettings: readonly Letting[]): Promise<void> {
  const { societyId } = scope;
  await tx.tenancy.createMany({
    data: lettings.map((letting) => ({ ...letting, societyId, fromOn: toDbDay(letting.fromOn) })),
  });
}

/** The tenancy of a plot on a day, locked until the transaction ends. */
export async function lockTenancyOn(tx: Tx, scope: Scope, plotId: string, day: CalendarDate) {
  const [locked] = await tx.$queryRaw<{ id: string; holdingId: string; fromOn: Date; untilOn: Date | null }[]>`
    SELECT "id", "holdingId", "fromOn", "untilOn" FROM "Tenancy"
    WHERE "societyId" = ${scope.societyId}::uuid AND "plotId" = ${plotId}::uuid
      AND "fromOn" <= ${toDbDay(day)}::date AND ("untilOn" IS NULL OR "untilOn" > ${toDbDay(day)}::date)
    FOR UPDATE`;
  return locked
    ? { ...locked, fromOn: fromDbDay(locked.fromOn), untilOn: locked.untilOn && fromDbDay(locked.untilOn) }
    : null;
}

/** End a tenancy: it holds up to the day before. */
export async function endTenancyOn(tx: Tx, scope: Scope, id: string, untilOn: CalendarDate): Promise<void> {
  await tx.tenancy.updateMany({ where: { id, societyId: scope.societyId }, data: { untilOn: toDbDay(untilOn) } });
}

/** How many plots a holding still holds on a day. */
export function plotsHeldOn(db: Db, scope: Scope, holdingId: string, day: CalendarDate): Promise<number> {
  return db.tenancy.count({ where: { societyId: scope.societyId, holdingId, ...heldOn(day) } });
}

/** Close a holding that has lost its last plot. */
export async function endHolding(tx: Tx, scope: Scope, holdingId: string, on: CalendarDate): Promise<void> {
  const where = { societyId: scope.societyId, holdingId, untilOn: null };
  await tx.holding.updateMany({ where: { id: holdingId, societyId: scope.societyId }, data: { endedOn: toDbDay(on) } });
  await tx.holdingMember.updateMany({ where, data: { untilOn: toDbDay(on) } });
}

/** What a plot's tenancies were, newest first, for the secretary. */
export async function tenanciesOfPlot(db: Db, scope: Scope, plotId: string) {
  const rows = await db.tenancy.findMany({
    where: { plotId, societyId: scope.societyId },
    include: { holding: { include: { members: { include: { member: true } } } } },
    orderBy: { fromOn: 'desc' },
  });
  return rows.map(({ id, holdingId, fromOn, untilOn, holding }) => ({
    id,
    holdingId,
    fromOn: fromDbDay(fromOn),
    untilOn: untilOn && fromDbDay(untilOn),
    holders: [...new Set(holding.members.map(({ member }) => member.name))],
  }));
}

/** Name who alone books for a holding, or let any of its holders. */
export async function nameBooker(tx: Tx, scope: Scope, holdingId: string, memberId: string | null): Promise<void> {
  await tx.holding.updateMany({
    where: { id: holdingId, societyId: scope.societyId },
    data: { bookerMemberId: memberId },
  });
}

/** Change who holds a holding's ground from a day on. */
export async function changeHolders(
  tx: Tx,
  scope: Scope,
  holdingId: string,
  given: { leave: readonly string[]; join: readonly string[]; from: CalendarDate },
): Promise<void> {
  const { societyId } = scope;
  const { leave, join, from } = given;
  await tx.holdingMember.updateMany({
    where: { societyId, holdingId, memberId: { in: [...leave] }, untilOn: null },
    data: { untilOn: toDbDay(from) },
  });
  await tx.holdingMember.createMany({
    data: join.map((memberId) => ({ societyId, holdingId, memberId, fromOn: toDbDay(from) })),
  });
}

/** A holding of today with exactly these holders, so that a household keeps one claim for all its plots. */
export async function holdingWithMembers(
  db: Db,
  scope: Scope,
  memberIds: readonly string[],
  day: CalendarDate,
): Promise<string | null> {
  const rows = await db.holding.findMany({
    where: {
      societyId: scope.societyId,
      endedOn: null,
      tenancies: { some: heldOn(day) },
      members: { some: { memberId: memberIds[0] ?? '', ...heldOn(day) } },
    },
    include: { members: { where: heldOn(day) } },
  });
  const wanted = memberIds.toSorted().join();
  return (
    rows.find(
      ({ members }) =>
        members
          .map(({ memberId }) => memberId)
          .sort()
          .join() === wanted,
    )?.id ?? null
  );
}
