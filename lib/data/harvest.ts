import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { HarvestQuality } from '@/lib/domain/catalogue/harvest-qualities';
import { areaCm2, type Footprint } from '@/lib/domain/ground/footprint';
import type { PickedPlanting, Picking } from '@/lib/domain/harvest/season-yields';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A harvest with the planting that it came from: its holding's own, nobody else's. */
export type LoggedHarvest = Picking & {
  readonly id: string;
  readonly holdingId: string;
  readonly quality: HarvestQuality;
  readonly notes: string | null;
  readonly byMemberId: string;
  readonly planting: PickedPlanting & {
    readonly variety: string | null;
    readonly bedName: string;
    readonly plotNumber: string;
    readonly plotId: string;
    readonly frameId: string;
    readonly footprint: Footprint;
    /** Who recorded it; somebody else where the ground changed hands while it stood. */
    readonly holdingId: string | null;
    /** The record of it was taken back, so that it has no yield. */
    readonly isTakenBack: boolean;
  };
};

const withPlanting = {
  planting: { include: { bed: { include: { plot: { select: { number: true } } } } } },
} satisfies Prisma.HarvestInclude;

type Row = Prisma.HarvestGetPayload<{ include: typeof withPlanting }>;

function toHarvest({ planting, onDay, measure, quality, ...row }: Row): LoggedHarvest {
  const { id, plantingId, holdingId, amount, notes, byMemberId } = row;
  const { bed, sownOn, plantedOn, clearedOn, retiredAt, xCm, yCm, widthCm, lengthCm } = planting;
  return {
    ...{ id, plantingId, holdingId, amount, notes, byMemberId },
    on: fromDbDay(onDay),
    // The database takes no other measures, and the form no other qualities.
    measure: measure as Picking['measure'],
    quality: quality as HarvestQuality,
    planting: {
      id: plantingId,
      bedId: planting.bedId,
      cropKey: planting.cropKey,
      variety: planting.variety,
      areaCm2: areaCm2(planting),
      firstSeason: planting.firstSeason,
      lastSeason: planting.lastSeason,
      sownOn: sownOn && fromDbDay(sownOn),
      plantedOn: plantedOn && fromDbDay(plantedOn),
      clearedOn: clearedOn && fromDbDay(clearedOn),
      bedName: bed.name,
      plotNumber: bed.plot.number,
      plotId: bed.plotId,
      frameId: planting.frameId,
      footprint: { xCm, yCm, widthCm, lengthCm },
      holdingId: planting.holdingId,
      isTakenBack: retiredAt !== null,
    },
  };
}

/** What some holdings lifted and picked, newest first; of one crop or of all. */
export async function harvestsOf(
  db: Db,
  { societyId }: Scope,
  holdingIds: readonly string[],
  cropKey?: string,
): Promise<LoggedHarvest[]> {
  const rows = await db.harvest.findMany({
    where: {
      societyId,
      retiredAt: null,
      holdingId: { in: [...holdingIds] },
      ...(cropKey === undefined ? {} : { planting: { cropKey } }),
    },
    include: withPlanting,
    orderBy: [{ onDay: 'desc' }, { createdAt: 'desc' }, { id: 'desc' }],
  });
  return rows.map(toHarvest);
}

/** One harvest that was not taken back, or null. */
export async function harvestById(db: Db, { societyId }: Scope, id: string): Promise<LoggedHarvest | null> {
  const row = await db.harvest.findFirst({ where: { id, societyId, retiredAt: null }, include: withPlanting });
  return row && toHarvest(row);
}

/** The crops that some holdings harvested, with how many of them did; no more than that of any. */
export async function cropsHarvested(
  db: Db,
  { societyId }: Scope,
  holdingIds: readonly string[],
): Promise<{ readonly cropKey: string; readonly holdings: number }[]> {
  return db.$queryRaw`
    SELECT p."cropKey", count(DISTINCT h."holdingId")::int AS "holdings"
    FROM "Harvest" h JOIN "Planting" p ON p."id" = h."plantingId" AND p."societyId" = h."societyId"
    WHERE h."societyId" = ${societyId}::uuid AND h."holdingId" = ANY(${[...holdingIds]}::uuid[])
      AND h."retiredAt" IS NULL AND p."retiredAt" IS NULL
    GROUP BY p."cropKey" ORDER BY p."cropKey"`;
}

export type NewHarvest = Pick<
  LoggedHarvest,
  'plantingId' | 'holdingId' | 'on' | 'measure' | 'amount' | 'quality' | 'notes'
>;

/** Log a harvest, and return its id. */
export async function createHarvest(tx: Tx, scope: Scope, { on, ...harvest }: NewHarvest, at: Date): Promise<string> {
  const { societyId, memberId: byMemberId } = scope;
  const data = { ...harvest, onDay: toDbDay(on), societyId, byMemberId, createdAt: at };
  return (await tx.harvest.create({ data, select: { id: true } })).id;
}

/** Take a harvest back; the row stays. False where somebody was quicker. */
export async function retireHarvest(tx: Tx, { societyId }: Scope, id: string, at: Date): Promise<boolean> {
  const { count } = await tx.harvest.updateMany({
    where: { id, societyId, retiredAt: null },
    data: { retiredAt: at },
  });
  return count === 1;
}

/** What was put in store from a harvest comes from the corrected one. */
export async function moveLots(tx: Tx, { societyId }: Scope, fromId: string, harvestId: string): Promise<void> {
  await tx.storeLot.updateMany({ where: { harvestId: fromId, societyId }, data: { harvestId } });
}

/** What was picked of a planting came from the corrected record of it. */
export async function moveHarvests(tx: Tx, { societyId }: Scope, fromId: string, plantingId: string): Promise<void> {
  await tx.harvest.updateMany({ where: { plantingId: fromId, societyId }, data: { plantingId } });
}
