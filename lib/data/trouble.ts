import 'server-only';
import type { Trouble } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { troubleOf } from '@/lib/domain/catalogue/troubles';
import type { Footprint } from '@/lib/domain/ground/footprint';
import type { TroubleOnGround } from '@/lib/domain/rotation/judge';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

export type Certainty = 'suspected' | 'likely' | 'sure';

/** A trouble as it was recorded. The notes are the holding's own: whoever reads must drop them for anybody else. */
export type TroubleRecord = TroubleOnGround & {
  readonly frameId: string;
  readonly holdingId: string | null;
  readonly certainty: Certainty;
  readonly foundOn: CalendarDate;
  readonly notes: string | null;
};

type Years = Pick<SettingValues, 'troubleYears'>;

function toTrouble({ troubleYears }: Years) {
  return (row: Trouble): TroubleRecord => {
    const { id, frameId, holdingId, troubleKey, notes, xCm, yCm, widthCm, lengthCm } = row;
    const foundOn = fromDbDay(row.foundOn);
    return {
      id,
      frameId,
      holdingId,
      troubleKey,
      notes,
      foundOn,
      certainty: row.certainty as Certainty,
      hosts: troubleOf(troubleKey)?.hosts ?? [],
      footprint: { xCm, yCm, widthCm, lengthCm },
      foundSeason: Number(foundOn.slice(0, 4)),
      breakYears: troubleYears[troubleKey] ?? null,
    };
  };
}

/** The troubles found in some frames, or in all, with the breaks that the society wants for them. */
export async function troublesIn(
  db: Db,
  scope: Scope,
  settings: Years,
  frameIds?: readonly string[],
): Promise<TroubleRecord[]> {
  const rows = await db.trouble.findMany({
    where: { societyId: scope.societyId, retiredAt: null, ...(frameIds ? { frameId: { in: [...frameIds] } } : {}) },
    orderBy: [{ foundOn: 'desc' }, { id: 'asc' }],
  });
  return rows.map(toTrouble(settings));
}

/** One trouble that was not taken back, or null. */
export async function troubleById(db: Db, scope: Scope, settings: Years, id: string): Promise<TroubleRecord | null> {
  const row = await db.trouble.findFirst({ where: { id, societyId: scope.societyId, retiredAt: null } });
  return row && toTrouble(settings)(row);
}

export type NewTrouble = {
  readonly frameId: string;
  readonly holdingId: string | null;
  readonly troubleKey: string;
  readonly certainty: Certainty;
  readonly footprint: Footprint;
  readonly foundOn: CalendarDate;
  readonly notes: string | null;
};

/** Record a trouble, and return its id. */
export async function createTrouble(tx: Tx, scope: Scope, trouble: NewTrouble): Promise<string> {
  const { footprint, foundOn, ...facts } = trouble;
  const { id } = await tx.trouble.create({
    data: {
      ...facts,
      ...footprint,
      foundOn: toDbDay(foundOn),
      societyId: scope.societyId,
      notedByMemberId: scope.memberId,
    },
    select: { id: true },
  });
  return id;
}

/** Take a record of a trouble back, as a mistake; the row stays. */
export async function retireTrouble(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  await tx.trouble.updateMany({ where: { id, societyId: scope.societyId, retiredAt: null }, data: { retiredAt: at } });
}
