import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** One change as it is written into the book. Ids only: never names, addresses or gate codes. */
export type Change = {
  readonly verb: string;
  readonly thing: string;
  readonly thingId: string | null;
  readonly forMemberId?: string | null;
  readonly forHoldingId?: string | null;
  readonly before?: Prisma.InputJsonValue | null;
  readonly after?: Prisma.InputJsonValue | null;
};

/** Append changes to the society's book, in the transaction that makes them. */
export async function writeAudit(
  tx: Tx,
  scope: Scope,
  writeId: string,
  at: Date,
  changes: readonly Change[],
): Promise<void> {
  const by = { actorMemberId: scope.memberId, actorRoles: [...scope.roles], writeId };
  await tx.auditRow.createMany({ data: changes.map((change) => ({ ...rowOf(scope, at, change), ...by })) });
}

/** Append what came about by itself when its time had come, and by nobody's hand. */
export async function writeAuditOfTime(tx: Tx, scope: Scope, at: Date, changes: readonly Change[]): Promise<void> {
  await tx.auditRow.createMany({ data: changes.map((change) => rowOf(scope, at, change)) });
}

function rowOf({ societyId }: Scope, at: Date, { before, after, forMemberId, forHoldingId, ...change }: Change) {
  return {
    ...change,
    ...{ societyId, at, forMemberId: forMemberId ?? null, forHoldingId: forHoldingId ?? null },
    ...(before == null ? {} : { before }),
    ...(after == null ? {} : { after }),
  };
}

/** Append what the service did by itself when its time had come. */
export async function writeOwnAudit(
  tx: Tx,
  { societyId }: Scope,
  at: Date,
  { before, after, ...change }: Change,
): Promise<void> {
  const data = { ...change, societyId, at, ...(before == null ? {} : { before }), ...(after == null ? {} : { after }) };
  await tx.auditRow.create({ data });
}

/** Whether the viewer has changed a holding's beds or plantings since an instant. */
export async function changedHoldingSince(tx: Tx, scope: Scope, holdingId: string, since: Date): Promise<boolean> {
  const { societyId, memberId: actorMemberId } = scope;
  const where = { societyId, actorMemberId, forHoldingId: holdingId, at: { gte: since }, thing: { in: groundThings } };
  return (await tx.auditRow.findFirst({ where, select: { id: true } })) !== null;
}

/** What others changed lately on the beds and plantings of holdings, newest first. */
export async function changesByOthers(db: Db, scope: Scope, holdingIds: readonly string[], since: Date) {
  const { societyId, memberId } = scope;
  const rows = await db.auditRow.findMany({
    where: {
      societyId,
      forHoldingId: { in: [...holdingIds] },
      actorMemberId: { not: memberId },
      at: { gte: since },
      thing: { in: groundThings },
    },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: 20,
  });
  const actors = await db.member.findMany({
    where: { societyId, id: { in: rows.flatMap(({ actorMemberId }) => actorMemberId ?? []) } },
    select: { id: true, name: true },
  });
  const names = new Map(actors.map(({ id, name }) => [id, name]));
  return rows.map(({ id, at, verb, thing, before, after, actorMemberId }) => ({
    id,
    at,
    verb,
    thing,
    before,
    after,
    by: names.get(actorMemberId ?? '') ?? 'a former member',
  }));
}

const groundThings = ['bed', 'planting', 'trouble', 'course', 'ground sheet', 'trench', 'trenches'];
