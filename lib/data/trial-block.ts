import 'server-only';
import { randomUUID } from 'node:crypto';
import type { Prisma } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Footprint } from '@/lib/domain/ground/footprint';
import type { Piece } from '@/lib/domain/trial/piece-of-bed';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** What a piece of ground gave, as it was last confirmed. */
export type ResultRecord = {
  readonly source: 'harvests' | 'typed';
  readonly amount: number;
  readonly areaCm2: number;
  readonly at: Date;
};

/** One of the two pieces of a block, with its results, the newest first. */
export type GroundRecord = {
  readonly id: string;
  readonly nth: number;
  readonly frameId: string;
  readonly bedId: string;
  readonly bedName: string;
  readonly piece: Piece;
  readonly footprint: Footprint;
  readonly treatment: 'A' | 'B' | null;
  readonly results: readonly ResultRecord[];
};

/** A plot in a trial. Whose it is, and what it gave, is for its holders until the report is open: whoever reads must drop it. */
export type BlockRecord = {
  readonly id: string;
  readonly trialId: string;
  readonly holdingId: string;
  readonly plotId: string;
  readonly plotNumber: string;
  readonly joinedAt: Date;
  readonly left: { readonly at: Date; readonly why: string | null } | null;
  readonly treatedOn: CalendarDate | null;
  readonly grounds: readonly GroundRecord[];
};

const whole = {
  plot: { select: { number: true } },
  grounds: {
    include: { bed: { select: { name: true } }, results: { orderBy: [{ at: 'desc' }, { id: 'desc' }] } },
    orderBy: { nth: 'asc' },
  },
} as const satisfies Prisma.TrialBlockInclude;

type Row = Prisma.TrialBlockGetPayload<{ include: typeof whole }>;

function toBlock({ plot, grounds, leftAt, leftWhy, treatedOn, ...row }: Row): BlockRecord {
  const { id, trialId, plotId, holdingId, joinedAt } = row;
  return {
    ...{ id, trialId, plotId, holdingId, joinedAt },
    plotNumber: plot.number,
    left: leftAt && { at: leftAt, why: leftWhy },
    treatedOn: treatedOn && fromDbDay(treatedOn),
    grounds: grounds.map(toGround),
  };
}

function toGround({ bed, results, xCm, yCm, widthCm, lengthCm, ...row }: Row['grounds'][number]): GroundRecord {
  const { id, nth, frameId, bedId } = row;
  return {
    ...{ id, nth, frameId, bedId },
    bedName: bed.name,
    // The database takes no others.
    piece: row.piece as Piece,
    footprint: { xCm, yCm, widthCm, lengthCm },
    treatment: row.treatment as 'A' | 'B' | null,
    results: results.map(({ source, amount, areaCm2, at }) => ({
      source: source === 'harvests' ? 'harvests' : 'typed',
      ...{ amount, areaCm2, at },
    })),
  };
}

/** The blocks of some trials, those that have left with them, in the order of joining. */
export async function blocksOf(db: Db, { societyId }: Scope, trialIds: readonly string[]): Promise<BlockRecord[]> {
  const rows = await db.trialBlock.findMany({
    where: { societyId, trialId: { in: [...trialIds] } },
    include: whole,
    orderBy: [{ joinedAt: 'asc' }, { id: 'asc' }],
  });
  return rows.map(toBlock);
}

/** One block, or null. */
export async function blockById(db: Db, { societyId }: Scope, id: string): Promise<BlockRecord | null> {
  const row = await db.trialBlock.findFirst({ where: { id, societyId }, include: whole });
  return row && toBlock(row);
}

/** The block of a piece of ground, or null. */
export async function blockOfGround(db: Db, { societyId }: Scope, groundId: string): Promise<BlockRecord | null> {
  const row = await db.trialBlock.findFirst({
    where: { societyId, grounds: { some: { id: groundId } } },
    include: whole,
  });
  return row && toBlock(row);
}

export type NewGround = Pick<GroundRecord, 'frameId' | 'bedId' | 'piece' | 'footprint'>;

/** Join a trial with two pieces of a plot's ground, and return the block's id. The database refuses a second block of one plot. */
export async function createBlock(
  tx: Tx,
  { societyId, memberId: byMemberId }: Scope,
  block: { readonly trialId: string; readonly plotId: string; readonly holdingId: string; readonly joinedAt: Date },
  grounds: readonly [NewGround, NewGround],
): Promise<string> {
  // Ids that tell no time: whose block is whose must not be read off the order in which they were made.
  const blockId = randomUUID();
  await tx.trialBlock.create({ data: { ...block, id: blockId, societyId, byMemberId } });
  await tx.trialGround.createMany({
    data: grounds.map(({ footprint, ...ground }, at) => ({
      ...{ ...ground, ...footprint, id: randomUUID(), societyId, blockId, nth: at + 1 },
    })),
  });
  return blockId;
}

/** A block leaves; after the lot with a reason. */
export async function leaveWith(
  tx: Tx,
  { societyId }: Scope,
  id: string,
  { at, why }: { readonly at: Date; readonly why: string | null },
): Promise<void> {
  await tx.trialBlock.updateMany({ where: { id, societyId }, data: { leftAt: at, leftWhy: why } });
}

/** The day on which both treatments of a block were done. */
export async function setTreatedOn(tx: Tx, { societyId }: Scope, id: string, on: CalendarDate): Promise<void> {
  await tx.trialBlock.updateMany({ where: { id, societyId }, data: { treatedOn: toDbDay(on) } });
}

/** Give a piece of ground the treatment that the lot gave it. */
export async function setTreatment(tx: Tx, { societyId }: Scope, id: string, treatment: 'A' | 'B'): Promise<void> {
  await tx.trialGround.updateMany({ where: { id, societyId }, data: { treatment } });
}

/** Write what a piece of ground gave; what was written before stays, and the newest holds. */
export async function appendResult(
  tx: Tx,
  { societyId, memberId: byMemberId }: Scope,
  groundId: string,
  result: ResultRecord,
): Promise<void> {
  await tx.trialResult.create({ data: { ...result, groundId, societyId, byMemberId } });
}

/** The grounds of other trials of a season, in some frames, that are neither called off nor left. */
export async function groundsInTrials(
  db: Db,
  { societyId }: Scope,
  { season, frameId, exceptTrialId }: { season: number; frameId: string; exceptTrialId: string },
): Promise<Footprint[]> {
  const block = { leftAt: null, trial: { season, calledOffAt: null, id: { not: exceptTrialId } } };
  const rows = await db.trialGround.findMany({ where: { societyId, frameId, block } });
  return rows.map(({ xCm, yCm, widthCm, lengthCm }) => ({ xCm, yCm, widthCm, lengthCm }));
}
