import 'server-only';
import type { Trial } from '@/generated/prisma/client';
import type { HarvestRecord } from '@/lib/domain/harvest/yield-per-area';
import type { TrialFacts } from '@/lib/domain/trial/trial-state';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A trial as members may see it. The lot's bytes are never in it before it is laid out. */
export type TrialRecord = TrialFacts & {
  readonly id: string;
  readonly question: string;
  readonly cropKey: string;
  readonly season: number;
  readonly treatmentA: string;
  readonly treatmentB: string;
  readonly measure: HarvestRecord['measure'];
  readonly leastPlots: number;
  readonly byMemberId: string;
  readonly createdAt: Date;
  readonly calledOffWhy: string | null;
  readonly lot: { readonly commitment: string; readonly bytesHex: string | null; readonly text: string | null };
};

function toTrial(row: Trial): TrialRecord {
  const { id, question, cropKey, season, treatmentA, treatmentB, leastPlots, byMemberId, createdAt } = row;
  const isLaidOut = row.laidOutAt !== null;
  return {
    ...{ id, question, cropKey, season, treatmentA, treatmentB, leastPlots, byMemberId, createdAt, isLaidOut },
    measure: row.measure === 'pieces' ? 'pieces' : 'grams',
    joinByOn: fromDbDay(row.joinByOn),
    resultsByOn: fromDbDay(row.resultsByOn),
    isCalledOff: row.calledOffAt !== null,
    isTooFew: row.calledOffAt !== null && row.calledOffWhy === null,
    calledOffWhy: row.calledOffWhy,
    lot: { commitment: row.lotCommitment, bytesHex: isLaidOut ? row.lotBytesHex : null, text: row.lotText },
  };
}

/** The society's trials, the newest first. */
export async function trialsOf(db: Db, { societyId }: Scope): Promise<TrialRecord[]> {
  const rows = await db.trial.findMany({ where: { societyId }, orderBy: [{ createdAt: 'desc' }, { id: 'desc' }] });
  return rows.map(toTrial);
}

/** One trial, or null. */
export async function trialById(db: Db, { societyId }: Scope, id: string): Promise<TrialRecord | null> {
  const row = await db.trial.findFirst({ where: { id, societyId } });
  return row && toTrial(row);
}

/** One trial, locked until the transaction ends: joining, the lot and results that cross come one after the other. */
export async function lockTrial(tx: Tx, scope: Scope, id: string): Promise<TrialRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "Trial" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  return trialById(tx, scope, id);
}

export type NewTrial = Pick<
  TrialRecord,
  | 'question'
  | 'cropKey'
  | 'season'
  | 'treatmentA'
  | 'treatmentB'
  | 'measure'
  | 'joinByOn'
  | 'resultsByOn'
  | 'leastPlots'
>;

/** Open a trial for joining, with its lot, and return its id. */
export async function createTrial(
  tx: Tx,
  { societyId, memberId }: Scope,
  { joinByOn, resultsByOn, ...trial }: NewTrial,
  lot: { readonly bytesHex: string; readonly commitment: string; readonly at: Date },
): Promise<string> {
  const days = { joinByOn: toDbDay(joinByOn), resultsByOn: toDbDay(resultsByOn) };
  const drawn = { lotBytesHex: lot.bytesHex, lotCommitment: lot.commitment, createdAt: lot.at };
  const data = { ...trial, ...days, ...drawn, societyId, byMemberId: memberId };
  return (await tx.trial.create({ data, select: { id: true } })).id;
}

/** The lot's bytes, for whoever lays it out on the server; never for a screen. */
export async function trialBytesOf(db: Db, { societyId }: Scope, id: string): Promise<string> {
  const row = await db.trial.findFirstOrThrow({ where: { id, societyId }, select: { lotBytesHex: true } });
  return row.lotBytesHex;
}

/** Write down that it is laid out, with the text that its seed was made of. */
export async function endJoining(
  tx: Tx,
  { societyId }: Scope,
  id: string,
  { lotText, at }: { readonly lotText: string; readonly at: Date },
): Promise<void> {
  await tx.trial.updateMany({ where: { id, societyId }, data: { lotText, laidOutAt: at } });
}

/** Call a trial off: by a member with a reason, or by nobody, since too few had joined. */
export async function endTrial(
  tx: Tx,
  { societyId }: Scope,
  id: string,
  { at, by }: { readonly at: Date; readonly by: { readonly memberId: string; readonly why: string } | null },
): Promise<void> {
  const data = { calledOffAt: at, calledOffWhy: by?.why ?? null, calledOffByMemberId: by?.memberId ?? null };
  await tx.trial.updateMany({ where: { id, societyId }, data });
}

/** Trials of any society whose last day of joining has passed where it lives, and that are neither laid out nor called off. */
export async function trialsToDraw(db: Db, now: Date): Promise<{ id: string; byMemberId: string }[]> {
  return db.$queryRaw<{ id: string; byMemberId: string }[]>`
    SELECT t."id", t."byMemberId" FROM "Trial" t JOIN "Society" s ON s."id" = t."societyId"
    WHERE t."laidOutAt" IS NULL AND t."calledOffAt" IS NULL AND t."joinByOn" < (${now}::timestamptz AT TIME ZONE s."timeZone")::date
    ORDER BY t."id"`;
}
