import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { toDbDay } from './day';
import type { Db } from './db';
import type { Scope } from './scope';

/** A household's claim to ground, as it stands on one day. */
export type HoldingOnDay = {
  readonly id: string;
  readonly plots: readonly { readonly id: string; readonly number: string; readonly siteId: string }[];
  readonly members: readonly { readonly id: string; readonly name: string; readonly canBeMailed: boolean }[];
  readonly memberIds: readonly string[];
  readonly bookerMemberId: string | null;
};

/** Rows that hold on a day: begun, and not yet ended. `untilOn` is the first day on which they no longer do. */
export function heldOn(day: CalendarDate) {
  return { fromOn: { lte: toDbDay(day) }, OR: [{ untilOn: null }, { untilOn: { gt: toDbDay(day) } }] };
}

function shapeOn(day: CalendarDate) {
  return {
    tenancies: { where: heldOn(day), include: { plot: true }, orderBy: { plot: { number: 'asc' } } },
    members: { where: heldOn(day), include: { member: true }, orderBy: { member: { name: 'asc' } } },
  } satisfies Prisma.HoldingInclude;
}

type Row = Prisma.HoldingGetPayload<{ include: ReturnType<typeof shapeOn> }>;

function toHolding(row: Row): HoldingOnDay {
  return {
    id: row.id,
    plots: row.tenancies.map(({ plot }) => ({ id: plot.id, number: plot.number, siteId: plot.siteId })),
    members: row.members.map(({ member }) => ({
      id: member.id,
      name: member.name,
      canBeMailed: member.email !== null,
    })),
    memberIds: row.members.map(({ memberId }) => memberId),
    bookerMemberId: row.bookerMemberId,
  };
}

/** Every holding with ground on a day, by its first plot's number as people count: 2 before 10. */
export async function holdingsOn(db: Db, scope: Scope, day: CalendarDate): Promise<HoldingOnDay[]> {
  const rows = await db.holding.findMany({
    where: { societyId: scope.societyId, tenancies: { some: heldOn(day) } },
    include: shapeOn(day),
  });
  return rows.map(toHolding).sort((a, b) => byNumber(a.plots[0]?.number ?? '', b.plots[0]?.number ?? ''));
}

/** The holdings that a member holds or shares on a day. */
export async function holdingsOfMember(
  db: Db,
  scope: Scope,
  memberId: string,
  day: CalendarDate,
): Promise<HoldingOnDay[]> {
  const rows = await db.holding.findMany({
    where: { societyId: scope.societyId, members: { some: { memberId, ...heldOn(day) } } },
    include: shapeOn(day),
    orderBy: { createdAt: 'asc' },
  });
  return rows.map(toHolding);
}

/** The numbers of the plots that the viewer holds or shares on a day, and whether anybody shares them. */
export async function plotsOfViewer(
  db: Db,
  scope: Scope,
  day: CalendarDate,
): Promise<{ plots: string[]; shared: boolean }> {
  const at = toDbDay(day);
  const rows = await db.$queryRaw<{ number: string; shared: boolean }[]>`
    SELECT p."number", EXISTS (
      SELECT 1 FROM "HoldingMember" o WHERE o."holdingId" = h."holdingId" AND o."societyId" = h."societyId"
        AND o."memberId" <> h."memberId" AND o."fromOn" <= ${at}::date AND (o."untilOn" IS NULL OR o."untilOn" > ${at}::date)
    ) AS "shared"
    FROM "HoldingMember" h JOIN "Tenancy" t ON t."holdingId" = h."holdingId" AND t."societyId" = h."societyId"
      JOIN "Plot" p ON p."id" = t."plotId"
    WHERE h."societyId" = ${scope.societyId}::uuid AND h."memberId" = ${scope.memberId}::uuid
      AND h."fromOn" <= ${at}::date AND (h."untilOn" IS NULL OR h."untilOn" > ${at}::date)
      AND t."fromOn" <= ${at}::date AND (t."untilOn" IS NULL OR t."untilOn" > ${at}::date)`;
  return { plots: rows.map(({ number }) => number).sort(byNumber), shared: rows.some(({ shared }) => shared) };
}

/** One holding on a day, or null. */
export async function holdingById(db: Db, scope: Scope, id: string, day: CalendarDate): Promise<HoldingOnDay | null> {
  const row = await db.holding.findFirst({ where: { id, societyId: scope.societyId }, include: shapeOn(day) });
  return row && toHolding(row);
}

/** Who holds a plot on a day; null when it is to let. */
export async function holdingOfPlot(
  db: Db,
  scope: Scope,
  plotId: string,
  day: CalendarDate,
): Promise<HoldingOnDay | null> {
  const row = await db.holding.findFirst({
    where: { societyId: scope.societyId, tenancies: { some: { plotId, ...heldOn(day) } } },
    include: shapeOn(day),
  });
  return row && toHolding(row);
}

const counting = new Intl.Collator('en-GB', { numeric: true });

/** Plot numbers in the order in which people count them. */
export function byNumber(a: string, b: string): number {
  return counting.compare(a, b);
}
