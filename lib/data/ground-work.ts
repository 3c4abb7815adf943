import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Ground that was manured, whoever held it. */
export async function manuringsIn(db: Db, scope: Scope, frameIds: readonly string[]) {
  return (await worksIn(db, scope, frameIds)).filter(({ kind }) => kind === 'manured');
}

/** What was done to ground, whoever held it: manured or limed. */
export async function worksIn(db: Db, scope: Scope, frameIds: readonly string[]) {
  const rows = await db.groundWork.findMany({
    where: { societyId: scope.societyId, retiredAt: null, frameId: { in: [...frameIds] } },
    orderBy: [{ season: 'desc' }, { createdAt: 'desc' }],
  });
  return rows.map(
    ({ id, frameId, kind, season, doneOn, materialKey, loads, deliveryId, xCm, yCm, widthCm, lengthCm }) => ({
      id,
      frameId,
      kind: kind === 'limed' ? ('limed' as const) : ('manured' as const),
      season,
      materialKey,
      loads,
      deliveryId,
      doneOn: doneOn && fromDbDay(doneOn),
      footprint: { xCm, yCm, widthCm, lengthCm },
    }),
  );
}

export type NewManuring = {
  readonly kind?: 'manured' | 'limed';
  readonly frameId: string;
  readonly holdingId: string | null;
  readonly footprint: Footprint;
  readonly season: number;
  readonly doneOn: CalendarDate | null;
  readonly materialKey: string | null;
  readonly loads: number | null;
  readonly deliveryId: string | null;
};

/** Log ground as manured, or limed. */
export async function createManurings(tx: Tx, scope: Scope, manurings: readonly NewManuring[]): Promise<void> {
  await tx.groundWork.createMany({
    data: manurings.map(({ footprint, doneOn, ...work }) => ({
      ...work,
      ...footprint,
      societyId: scope.societyId,
      doneOn: doneOn && toDbDay(doneOn),
    })),
  });
}

/** Take a log of manuring back; the row stays. */
export async function retireManuring(tx: Tx, scope: Scope, id: string, at: Date) {
  const [row] = await tx.groundWork.updateManyAndReturn({
    where: { id, societyId: scope.societyId, retiredAt: null },
    data: { retiredAt: at },
    select: { frameId: true, season: true, loads: true },
  });
  return row ?? null;
}
