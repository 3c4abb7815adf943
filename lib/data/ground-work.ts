import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Footprint } from '@/lib/domain/ground/footprint';
import type { WorkKind } from '@/lib/domain/ground/work-kinds';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Work done on a footprint: one row a material, or the digging itself. */
export type NewWork = {
  readonly kind: WorkKind;
  readonly frameId: string;
  readonly holdingId: string | null;
  readonly footprint: Footprint;
  /** The season the ground was worked for. */
  readonly season: number;
  readonly doneOn: CalendarDate | null;
  readonly materialKey?: string | null;
  readonly loads?: number | null;
  /** What was put on this footprint in all [g]. */
  readonly massG?: number | null;
  readonly ageMonths?: number | null;
  readonly incorporated?: boolean;
  readonly method?: string | null;
  readonly depthCm?: number | null;
  readonly deliveryId?: string | null;
  readonly sheetId?: string | null;
};

export type WorkRecord = Required<Omit<NewWork, 'holdingId'>> & { readonly id: string };

/** Ground that was manured, whoever held it: no more of it than its turn is judged by. */
export async function manuringsIn(db: Db, scope: Scope, frameIds: readonly string[]) {
  const rows = await db.groundWork.findMany({
    where: { societyId: scope.societyId, retiredAt: null, kind: 'manured', frameId: { in: [...frameIds] } },
    select: { frameId: true, season: true, xCm: true, yCm: true, widthCm: true, lengthCm: true },
  });
  return rows.map(({ frameId, season, ...footprint }) => ({ frameId, season, footprint }));
}

/** Ground that was strawed or fed with a meal for a season. */
export async function strewnIn(db: Db, scope: Scope, season: number) {
  const rows = await db.groundWork.findMany({
    where: { societyId: scope.societyId, retiredAt: null, season, kind: { in: ['strawed', 'fed'] } },
    select: { frameId: true, materialKey: true, xCm: true, yCm: true, widthCm: true, lengthCm: true },
  });
  return rows.map(({ frameId, materialKey, ...footprint }) => ({ frameId, materialKey, footprint }));
}

/** What was done to the ground of some frames, whoever held it; the latest season first. */
export async function worksIn(db: Db, scope: Scope, frameIds: readonly string[]): Promise<WorkRecord[]> {
  const rows = await db.groundWork.findMany({
    where: { societyId: scope.societyId, retiredAt: null, frameId: { in: [...frameIds] } },
    orderBy: [{ season: 'desc' }, { createdAt: 'desc' }, { id: 'desc' }],
  });
  return rows.map(({ xCm, yCm, widthCm, lengthCm, ...row }) => {
    const { id, frameId, season, materialKey, loads, massG, ageMonths, incorporated, method, depthCm } = row;
    return {
      id,
      frameId,
      season,
      materialKey,
      loads,
      massG,
      ageMonths,
      incorporated,
      method,
      depthCm,
      deliveryId: row.deliveryId,
      sheetId: row.sheetId,
      // The database takes no other kinds.
      kind: row.kind as WorkKind,
      doneOn: row.doneOn && fromDbDay(row.doneOn),
      footprint: { xCm, yCm, widthCm, lengthCm },
    };
  });
}

/** Log work done on ground. */
export async function createWorks(tx: Tx, scope: Scope, works: readonly NewWork[]): Promise<void> {
  await tx.groundWork.createMany({
    data: works.map(({ footprint, doneOn, ...work }) => ({
      ...work,
      ...footprint,
      societyId: scope.societyId,
      doneOn: doneOn && toDbDay(doneOn),
    })),
  });
}

/** Take a log of work back; the row stays. */
export async function retireWork(tx: Tx, scope: Scope, id: string, at: Date) {
  const [row] = await tx.groundWork.updateManyAndReturn({
    where: { id, societyId: scope.societyId, retiredAt: null },
    data: { retiredAt: at },
    select: { frameId: true, kind: true, season: true, loads: true, sheetId: true },
  });
  return row ?? null;
}

/** Take back all that a ground sheet logged, to be logged anew. */
export async function retireWorksOfSheet(tx: Tx, scope: Scope, sheetId: string, at: Date): Promise<void> {
  await tx.groundWork.updateMany({
    where: { sheetId, societyId: scope.societyId, retiredAt: null },
    data: { retiredAt: at },
  });
}
