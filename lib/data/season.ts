import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { fromDbDay, toDbDay } from './day';
import type { Db } from './db';
import { byNumber } from './holding';
import type { Scope } from './scope';

type Days = { readonly from: CalendarDate; readonly until: CalendarDate };

/** The deliveries that came on some days, the first first, with what is kept of their share-outs. */
export async function deliveriesOfDays(db: Db, scope: Scope, { from, until }: Days) {
  const rows = await db.delivery.findMany({
    where: { societyId: scope.societyId, arrivesOn: { gte: toDbDay(from), lt: toDbDay(until) } },
    orderBy: [{ arrivesOn: 'asc' }, { id: 'asc' }],
  });
  return rows.map(({ arrivesOn, id, name, state, materialKey, loadUnit, expectedLoads, heapLoads, ...row }) => ({
    ...{ id, name, state, materialKey, heapLoads, shareOutRecord: row.shareOutRecord, priceMinor: row.priceMinor },
    loadUnit: loadUnit === 'bale' ? ('bale' as const) : ('barrow' as const),
    orderedLoads: expectedLoads,
    arrivesOn: fromDbDay(arrivesOn),
  }));
}

/** The first and the last day of any delivery, or null where there is none. */
export async function deliveryDays(db: Db, scope: Scope): Promise<{ first: CalendarDate; last: CalendarDate } | null> {
  const { _min, _max } = await db.delivery.aggregate({
    where: { societyId: scope.societyId, state: { notIn: ['planned', 'called_off'] } },
    _min: { arrivesOn: true },
    _max: { arrivesOn: true },
  });
  if (!_min.arrivesOn || !_max.arrivesOn) return null;
  return { first: fromDbDay(_min.arrivesOn), last: fromDbDay(_max.arrivesOn) };
}

/** The bookings of deliveries that stand, as the annual meeting reads them. */
export async function claimsOf(db: Db, scope: Scope, deliveryIds: readonly string[]) {
  const rows = await db.booking.findMany({
    where: { societyId: scope.societyId, deliveryId: { in: [...deliveryIds] }, withdrawnAt: null },
    orderBy: { id: 'asc' },
  });
  return rows.map(({ id, deliveryId, holdingId, asked, needLoads, share, collectedLoads, beyondLoads, gaveUpAt }) => ({
    ...{ id, deliveryId, holdingId, asked, share },
    need: needLoads,
    collected: collectedLoads,
    beyond: beyondLoads,
    gaveUp: gaveUpAt !== null,
  }));
}

/** Loads given up by booking, from the book: the booking itself keeps only what was collected. */
export async function givenUpBy(
  db: Db,
  { societyId }: Scope,
  bookingIds: readonly string[],
): Promise<ReadonlyMap<string, number>> {
  const rows = await db.$queryRaw<{ id: string; loads: number }[]>`
    SELECT "thingId"::text AS "id", sum(("before"->>'share')::int - ("after"->>'share')::int)::int AS "loads"
    FROM "AuditRow" WHERE "societyId" = ${societyId}::uuid AND "thing" = 'booking' AND "verb" = 'given up'
      AND "thingId" = ANY(${[...bookingIds]}::uuid[]) GROUP BY "thingId"`;
  return new Map(rows.map(({ id, loads }) => [id, loads]));
}

/**
 * Credits by material and holding as a season begins and ends, the lapsed line under null. What a delivery changed is of the
 * season that it serves, however late it was settled.
 */
export async function creditsAcross(
  db: Db,
  { societyId }: Scope,
  { from, until }: Days,
  materialKeys: readonly string[],
) {
  const [begins, ends] = [toDbDay(from), toDbDay(until)];
  const rows = await db.$queryRaw<{ materialKey: string; holdingId: string | null; start: bigint; end: bigint }[]>`
    SELECT c."materialKey", c."holdingId"::text,
      coalesce(sum(c."changeMillionths") FILTER (WHERE coalesce(d."arrivesOn", c."at"::date) < ${begins}::date), 0)::bigint AS "start",
      coalesce(sum(c."changeMillionths") FILTER (WHERE coalesce(d."arrivesOn", c."at"::date) < ${ends}::date), 0)::bigint AS "end"
    FROM "CreditEntry" c LEFT JOIN "Delivery" d ON d."id" = c."deliveryId" AND d."societyId" = c."societyId"
    WHERE c."societyId" = ${societyId}::uuid AND c."materialKey" = ANY(${[...materialKeys]})
    GROUP BY c."materialKey", c."holdingId" ORDER BY c."materialKey", c."holdingId"`;
  return rows.map(({ start, end, ...row }) => ({ ...row, startMillionths: Number(start), endMillionths: Number(end) }));
}

/** What holdings were charged for deliveries, of charges that stand, with what came after each and what is owed by now. */
export async function chargesFor(db: Db, { societyId }: Scope, deliveryIds: readonly string[]) {
  const rows = await db.$queryRaw<
    { holdingId: string; deliveryId: string; minor: bigint; newer: bigint; balance: bigint }[]
  >`
    SELECT * FROM (
      SELECT l."holdingId"::text, e."deliveryId"::text, l."minor",
        (sum(greatest(l."minor", 0)) OVER (PARTITION BY l."holdingId" ORDER BY e."on" DESC, e."at" DESC, e."id" DESC)
          - greatest(l."minor", 0))::bigint AS "newer",
        (sum(l."minor") OVER (PARTITION BY l."holdingId"))::bigint AS "balance"
      FROM "LedgerLine" l JOIN "LedgerEntry" e ON e."id" = l."entryId"
      WHERE l."societyId" = ${societyId}::uuid AND l."holdingId" IS NOT NULL AND e."kind" <> 'correction'
        AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" b WHERE b."reversesId" = e."id")
    ) AS standing
    WHERE "minor" > 0 AND "deliveryId" = ANY(${[...deliveryIds]}) ORDER BY "holdingId", "deliveryId"`;
  return rows.map(({ minor, newer, balance, ...row }) => ({
    ...row,
    minor: Number(minor),
    newer: Number(newer),
    balance: Number(balance),
  }));
}

/** The holdings that held ground on any of some days. */
export async function holdingsWithGround(db: Db, { societyId }: Scope, { from, until }: Days): Promise<string[]> {
  const rows = await db.tenancy.findMany({
    where: {
      societyId,
      fromOn: { lt: toDbDay(until) },
      OR: [{ untilOn: null }, { untilOn: { gt: toDbDay(from) } }],
    },
    distinct: ['holdingId'],
    select: { holdingId: true },
  });
  return rows.map(({ holdingId }) => holdingId);
}

/** The plots that holdings held on any of some days, as people count them, and by whom they were held. */
export async function holdingsAcross(db: Db, scope: Scope, { from, until }: Days, holdingIds: readonly string[]) {
  const then = { fromOn: { lt: toDbDay(until) }, OR: [{ untilOn: null }, { untilOn: { gt: toDbDay(from) } }] };
  const rows = await db.holding.findMany({
    where: { societyId: scope.societyId, id: { in: [...holdingIds] } },
    include: {
      tenancies: { where: then, include: { plot: { select: { number: true } } } },
      members: { where: then, include: { member: { select: { name: true } } } },
    },
  });
  return rows.map(({ id, tenancies, members }) => ({
    id,
    plots: [...new Set(tenancies.map(({ plot }) => plot.number))].sort(byNumber),
    names: [...new Set(members.map(({ member }) => member.name))].sort(),
  }));
}
