import 'server-only';
import type { Planting } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Crop } from '@/lib/domain/catalogue/crops';
import type { Footprint } from '@/lib/domain/ground/footprint';
import type { RecordedPlanting } from '@/lib/domain/rotation/recorded-planting';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A planting with its record. The notes are the holding's own: whoever reads must drop them for anybody else. */
export type PlantingRecord = RecordedPlanting & {
  readonly frameId: string;
  readonly bedId: string;
  readonly holdingId: string | null;
  readonly cropName: string;
  readonly variety: string | null;
  readonly sownOn: CalendarDate | null;
  readonly plantedOn: CalendarDate | null;
  readonly clearedOn: CalendarDate | null;
  readonly planned: boolean;
  readonly notes: string | null;
};

/** The last season of ground that a standing crop still holds: later than any that is asked for. */
export const openSeason = 2200;

type Crops = ReadonlyMap<string, Crop>;

function toPlanting(crops: Crops) {
  return (row: Planting): PlantingRecord => {
    const crop = crops.get(row.cropKey);
    const {
      id,
      frameId,
      bedId,
      holdingId,
      cropKey,
      variety,
      firstSeason,
      lastSeason,
      planned,
      notes,
      xCm,
      yCm,
      widthCm,
      lengthCm,
    } = row;
    return {
      id,
      frameId,
      bedId,
      holdingId,
      cropKey,
      variety,
      firstSeason,
      lastSeason,
      planned,
      notes,
      footprint: { xCm, yCm, widthCm, lengthCm },
      cropName: crop?.name ?? (cropKey === 'bare' ? 'Bare' : cropKey),
      hostGroups: crop?.hostGroups ?? [],
      cropGroup: crop?.cropGroup ?? null,
      sownOn: row.sownOn && fromDbDay(row.sownOn),
      plantedOn: row.plantedOn && fromDbDay(row.plantedOn),
      clearedOn: row.clearedOn && fromDbDay(row.clearedOn),
    };
  };
}

/** What stood or is planned in some frames, or in all, in any of the seasons from one to another. */
export async function plantingsIn(
  db: Db,
  scope: Scope,
  crops: Crops,
  seasons: { from: number; to: number },
  frameIds?: readonly string[],
): Promise<PlantingRecord[]> {
  const rows = await db.planting.findMany({
    where: {
      societyId: scope.societyId,
      retiredAt: null,
      firstSeason: { lte: seasons.to },
      lastSeason: { gte: seasons.from },
      ...(frameIds ? { frameId: { in: [...frameIds] } } : {}),
    },
    orderBy: [{ firstSeason: 'asc' }, { id: 'asc' }],
  });
  return rows.map(toPlanting(crops));
}

/**
 * What the compliance of some frames is worked out from: the plantings of their ground in some seasons, and no more of
 * them than the maths needs, since a large site has tens of thousands.
 */
export async function leanPlantingsIn(
  db: Db,
  scope: Scope,
  crops: Crops,
  seasons: { from: number; to: number },
  frameIds: readonly string[],
): Promise<(RecordedPlanting & { frameId: string })[]> {
  // One row a frame: a driver reads few long texts far faster than many short rows.
  type Lean = [
    id: string,
    cropKey: string,
    x: number,
    y: number,
    wide: number,
    long: number,
    first: number,
    last: number,
  ];
  const frames = await db.$queryRaw<{ frameId: string; plantings: string }[]>`
    SELECT p."frameId", json_agg(json_build_array(p."id", p."cropKey", p."xCm", p."yCm", p."widthCm", p."lengthCm",
      p."firstSeason", p."lastSeason") ORDER BY p."firstSeason", p."id")::text AS "plantings"
    FROM "Planting" p
    WHERE p."societyId" = ${scope.societyId}::uuid AND p."frameId" = ANY(${[...frameIds]}::uuid[]) AND p."retiredAt" IS NULL
      AND p."firstSeason" <= ${seasons.to} AND p."lastSeason" >= ${seasons.from}
    GROUP BY p."frameId"`;
  return frames.flatMap(({ frameId, plantings }) =>
    (JSON.parse(plantings) as Lean[]).map(([id, cropKey, xCm, yCm, widthCm, lengthCm, firstSeason, lastSeason]) => {
      const crop = crops.get(cropKey);
      return {
        id,
        frameId,
        cropKey,
        firstSeason,
        lastSeason,
        footprint: { xCm, yCm, widthCm, lengthCm },
        hostGroups: crop?.hostGroups ?? [],
        cropGroup: crop?.cropGroup ?? null,
      };
    }),
  );
}

/** One planting that was not taken back, or null. */
export async function plantingById(db: Db, scope: Scope, crops: Crops, id: string): Promise<PlantingRecord | null> {
  const row = await db.planting.findFirst({ where: { id, societyId: scope.societyId, retiredAt: null } });
  return row && toPlanting(crops)(row);
}

export type NewPlanting = {
  readonly bedId: string;
  readonly frameId: string;
  readonly holdingId: string | null;
  readonly cropKey: string;
  readonly variety: string | null;
  readonly footprint: Footprint;
  readonly sownOn: CalendarDate | null;
  readonly plantedOn: CalendarDate | null;
  readonly clearedOn: CalendarDate | null;
  readonly firstSeason: number;
  readonly lastSeason: number;
  readonly planned: boolean;
  readonly notes: string | null;
};

/** Write plantings and return their ids in order. */
export async function createPlantings(tx: Tx, scope: Scope, plantings: readonly NewPlanting[]): Promise<string[]> {
  const rows = await tx.planting.createManyAndReturn({
    data: plantings.map(({ footprint, sownOn, plantedOn, clearedOn, ...planting }) => ({
      ...planting,
      ...footprint,
      societyId: scope.societyId,
      sownOn: sownOn && toDbDay(sownOn),
      plantedOn: plantedOn && toDbDay(plantedOn),
      clearedOn: clearedOn && toDbDay(clearedOn),
    })),
    select: { id: true },
  });
  return rows.map(({ id }) => id);
}

/** Take plantings back; the rows stay. */
export async function retirePlantings(tx: Tx, scope: Scope, ids: readonly string[], at: Date): Promise<void> {
  await tx.planting.updateMany({
    where: { id: { in: [...ids] }, societyId: scope.societyId, retiredAt: null },
    data: { retiredAt: at },
  });
}

export type Clearing = Pick<PlantingRecord, 'clearedOn' | 'firstSeason' | 'lastSeason' | 'planned'>;

/** Say when a planting was cleared, and which seasons it therefore stood in. */
export async function clearPlanting(tx: Tx, scope: Scope, id: string, clearing: Clearing): Promise<void> {
  const { clearedOn, ...seasons } = clearing;
  await tx.planting.updateMany({
    where: { id, societyId: scope.societyId, retiredAt: null },
    data: { ...seasons, clearedOn: clearedOn && toDbDay(clearedOn) },
  });
}
