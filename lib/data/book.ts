import 'server-only';
import type { Role } from '@/lib/domain/policy/standing';
import type { Db } from './db';
import type { Scope } from './scope';

export type BookFilter = {
  readonly thing: string | null;
  readonly verb: string | null;
  readonly memberId: string | null;
  /** From this instant, and before that one. */
  readonly from: Date | null;
  readonly before: Date | null;
  readonly page: number;
};

export const bookPageRows = 50;

/** A page of the book of changes, newest first, with names as members are called today. */
export async function readBookPage(db: Db, scope: Scope, { thing, verb, memberId, from, before, page }: BookFilter) {
  const where = {
    societyId: scope.societyId,
    ...(thing ? { thing } : {}),
    ...(verb ? { verb } : {}),
    ...(memberId ? { OR: [{ actorMemberId: memberId }, { forMemberId: memberId }] } : {}),
    at: { ...(from ? { gte: from } : {}), ...(before ? { lt: before } : {}) },
  };
  const societyId = scope.societyId;
  const [rows, count, things, verbs] = await Promise.all([
    db.auditRow.findMany({
      where,
      orderBy: [{ at: 'desc' }, { id: 'desc' }],
      skip: page * bookPageRows,
      take: bookPageRows,
    }),
    db.auditRow.count({ where }),
    db.auditRow.groupBy({ by: ['thing'], where: { societyId }, orderBy: { thing: 'asc' } }),
    db.auditRow.groupBy({ by: ['verb'], where: { societyId }, orderBy: { verb: 'asc' } }),
  ]);
  return {
    rows: await named(db, scope, rows),
    count,
    things: things.map((row) => row.thing),
    verbs: verbs.map((row) => row.verb),
  };
}

type Row = {
  id: string;
  at: Date;
  actorMemberId: string | null;
  actorRoles: Role[];
  forMemberId: string | null;
  forHoldingId: string | null;
  verb: string;
  thing: string;
  before: unknown;
  after: unknown;
};

async function named(db: Db, scope: Scope, rows: readonly Row[]) {
  const ids = rows
    .flatMap(({ actorMemberId, forMemberId }) => [actorMemberId, forMemberId])
    .filter((id) => id !== null);
  const holdingIds = rows.map(({ forHoldingId }) => forHoldingId).filter((id) => id !== null);
  const [members, holdings] = await Promise.all([
    db.member.findMany({
      where: { societyId: scope.societyId, id: { in: ids } },
      select: { id: true, name: true },
    }),
    db.holding.findMany({
      where: { societyId: scope.societyId, id: { in: holdingIds } },
      select: { id: true, tenancies: { select: { plot: { select: { number: true } } } } },
    }),
  ]);
  const names = new Map(members.map(({ id, name }) => [id, name]));
  const plots = new Map(holdings.map(({ id, tenancies }) => [id, tenancies.map(({ plot }) => plot.number).join(', ')]));
  return rows.map(({ id, at, verb, thing, before, after, actorMemberId, actorRoles, forMemberId, forHoldingId }) => ({
    id,
    at,
    verb,
    thing,
    before: before ?? null,
    after: after ?? null,
    by: names.get(actorMemberId ?? '') ?? 'the service',
    byRoles: actorRoles,
    forMember: forMemberId && forMemberId !== actorMemberId ? (names.get(forMemberId) ?? null) : null,
    forPlots: forHoldingId ? (plots.get(forHoldingId) ?? null) : null,
  }));
}
