import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { toDbDay } from './day';
import type { Db } from './db';
import type { Scope } from './scope';

export type BookFilter = {
  readonly thing: string | null;
  readonly memberId: string | null;
  readonly from: CalendarDate | null;
  readonly to: CalendarDate | null;
  readonly page: number;
};

export const bookPageRows = 50;

/** A page of the book of changes, newest first, with names as members are called today. */
export async function readBookPage(db: Db, scope: Scope, { thing, memberId, from, to, page }: BookFilter) {
  const where = {
    societyId: scope.societyId,
    ...(thing ? { thing } : {}),
    ...(memberId ? { OR: [{ actorMemberId: memberId }, { forMemberId: memberId }] } : {}),
    ...(from || to
      ? { at: { ...(from ? { gte: toDbDay(from) } : {}), ...(to ? { lt: toDbDay(addDays(to, 1)) } : {}) } }
      : {}),
  };
  const [rows, count, things] = await Promise.all([
    db.auditRow.findMany({
      where,
      orderBy: [{ at: 'desc' }, { id: 'desc' }],
      skip: page * bookPageRows,
      take: bookPageRows,
    }),
    db.auditRow.count({ where }),
    db.auditRow.findMany({
      where: { societyId: scope.societyId },
      distinct: ['thing'],
      select: { thing: true },
      orderBy: { thing: 'asc' },
    }),
  ]);
  return { rows: await named(db, scope, rows), count, things: things.map((row) => row.thing) };
}

type Row = {
  id: string;
  at: Date;
  actorMemberId: string | null;
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
      select: { id: true, name: true, roles: true },
    }),
    db.holding.findMany({
      where: { societyId: scope.societyId, id: { in: holdingIds } },
      select: { id: true, tenancies: { select: { plot: { select: { number: true } } } } },
    }),
  ]);
  const names = new Map(members.map(({ id, name }) => [id, name]));
  const plots = new Map(holdings.map(({ id, tenancies }) => [id, tenancies.map(({ plot }) => plot.number).join(', ')]));
  return rows.map(({ id, at, verb, thing, before, after, actorMemberId, forMemberId, forHoldingId }) => ({
    id,
    at,
    verb,
    thing,
    before: before ?? null,
    after: after ?? null,
    by: names.get(actorMemberId ?? '') ?? 'the service',
    forMember: forMemberId && forMemberId !== actorMemberId ? (names.get(forMemberId) ?? null) : null,
    forPlots: forHoldingId ? (plots.get(forHoldingId) ?? null) : null,
  }));
}
