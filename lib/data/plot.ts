import 'server-only';
import type { Plot } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Frame } from '@/lib/domain/ground/frame';
import type { Polygon } from '@/lib/domain/ground/polygon';
import { fromDbDay, toDbDay } from './day';
import type { Db } from './db';
import { byNumber, heldOn } from './holding';
import type { Scope } from './scope';

/** A plot in use, with its ground. The frame's origin is null where nobody has measured it into the site. */
export type PlotOnDay = {
  readonly id: string;
  readonly siteId: string;
  readonly number: string;
  readonly frameId: string;
  readonly frame: Frame | null;
  readonly polygon: Polygon | null;
  readonly quarterRods: number | null;
  readonly areaCm2: number;
  readonly fromOn: CalendarDate;
  readonly retiredOn: CalendarDate | null;
};

type Row = Plot & { frame: { originXCm: number | null; originYCm: number | null; bearingCentideg: number } };

function toPlot(row: Row): PlotOnDay {
  const { originXCm, originYCm, bearingCentideg } = row.frame;
  return {
    id: row.id,
    siteId: row.siteId,
    number: row.number,
    frameId: row.frameId,
    frame: originXCm === null || originYCm === null ? null : { originXCm, originYCm, bearingCentideg },
    polygon: polygonOf(row.polygon),
    quarterRods: row.quarterRods,
    areaCm2: Number(row.areaCm2),
    fromOn: fromDbDay(row.fromOn),
    retiredOn: row.retiredOn && fromDbDay(row.retiredOn),
  };
}

/** A stored polygon, [[x, y], …] in centimetres, as points. */
export function polygonOf(stored: unknown): Polygon | null {
  return Array.isArray(stored) ? (stored as [number, number][]).map(([xCm, yCm]) => ({ xCm, yCm })) : null;
}

/** The plots in use on a day, as people count them. */
export async function plotsOn(
  db: Db,
  scope: Scope,
  day: CalendarDate,
  only: { siteId?: string; ids?: readonly string[] } = {},
) {
  const at = toDbDay(day);
  const rows = await db.plot.findMany({
    where: {
      societyId: scope.societyId,
      fromOn: { lte: at },
      OR: [{ retiredOn: null }, { retiredOn: { gt: at } }],
      ...(only.siteId ? { siteId: only.siteId } : {}),
      ...(only.ids ? { id: { in: [...only.ids] } } : {}),
    },
    include: { frame: true },
  });
  return rows.map(toPlot).sort((a, b) => byNumber(a.number, b.number));
}

/** Every plot that a site ever had, as people count them. */
export async function plotsEver(db: Db, scope: Scope, siteId: string): Promise<PlotOnDay[]> {
  const rows = await db.plot.findMany({ where: { societyId: scope.societyId, siteId }, include: { frame: true } });
  return rows.map(toPlot).sort((a, b) => byNumber(a.number, b.number));
}

/** The plots of the society that are let on a day. */
export async function letPlotIds(db: Db, scope: Scope, day: CalendarDate): Promise<ReadonlySet<string>> {
  const rows = await db.tenancy.findMany({
    where: { societyId: scope.societyId, ...heldOn(day) },
    select: { plotId: true },
  });
  return new Set(rows.map(({ plotId }) => plotId));
}

/** One plot, in use or not, or null. */
export async function plotById(db: Db, scope: Scope, id: string): Promise<PlotOnDay | null> {
  const row = await db.plot.findFirst({ where: { id, societyId: scope.societyId }, include: { frame: true } });
  return row && toPlot(row);
}
