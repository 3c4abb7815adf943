import 'server-only';
import type { GoingOver as GoingRow, Prisma, StoreLot as LotRow, StorePlace } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { LotCondition } from '@/lib/domain/catalogue/store-model';
import type { BadWhy, GoingOver, StoreLot } from '@/lib/domain/store/lot';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';
import { type PlaceRecord, toPlace } from './store-place';

/** A going over that stands, with who wrote it and when. */
export type GoingRecord = GoingOver & { readonly id: string; readonly byMemberId: string; readonly at: Date };

/** A lot with what its holders wrote of it, and where it stands. */
export type LotRecord = Omit<StoreLot, 'goingsOver'> & {
  readonly goingsOver: readonly GoingRecord[];
  readonly holdingId: string;
  readonly place: PlaceRecord;
  readonly harvestId: string | null;
  readonly variety: string | null;
  readonly source: string | null;
  readonly notes: string | null;
  readonly curingFrom: CalendarDate | null;
  readonly curedOn: CalendarDate | null;
  readonly byMemberId: string;
};

const whole = {
  place: true,
  goings: { where: { undoneAt: null }, orderBy: [{ onDay: 'asc' }, { at: 'asc' }, { id: 'asc' }] },
} as const satisfies Prisma.StoreLotInclude;

function toGoing({ id, onDay, used, bad, badWhy, sound, byMemberId, at }: GoingRow): GoingRecord {
  return { id, on: fromDbDay(onDay), used, bad, badWhy: badWhy as BadWhy | null, sound, byMemberId, at };
}

// Measures and conditions are held to by the database (checks lot_amount and lot_condition).
function toLot(row: LotRow & { place: StorePlace; goings: GoingRow[] }): LotRecord {
  const { place, goings, putInOn, curingFrom, curedOn, measure, condition } = row;
  const { id, holdingId, placeId, harvestId, keepingKey, variety, source, notes } = row;
  const { putIn, pieceG, goingOverDays, byMemberId } = row;
  return {
    ...{
      id,
      holdingId,
      placeId,
      harvestId,
      keepingKey,
      variety,
      source,
      notes,
      putIn,
      pieceG,
      goingOverDays,
      byMemberId,
    },
    place: toPlace(place),
    placeTenthC: place.tenthC,
    measure: measure as StoreLot['measure'],
    condition: condition as LotCondition,
    putInOn: fromDbDay(putInOn),
    curingFrom: curingFrom && fromDbDay(curingFrom),
    curedOn: curedOn && fromDbDay(curedOn),
    goingsOver: goings.map(toGoing),
  };
}

/** The lots of some holdings that were not taken back, used up or not, the first put in first. */
export async function lotsOf(db: Db, scope: Scope, holdingIds: readonly string[]): Promise<LotRecord[]> {
  const rows = await db.storeLot.findMany({
    where: { societyId: scope.societyId, retiredAt: null, holdingId: { in: [...holdingIds] } },
    include: whole,
    orderBy: [{ putInOn: 'asc' }, { id: 'asc' }],
  });
  return rows.map(toLot);
}

/** One lot that was not taken back, or null. */
export async function lotById(db: Db, scope: Scope, id: string): Promise<LotRecord | null> {
  const where = { id, societyId: scope.societyId, retiredAt: null };
  const row = await db.storeLot.findFirst({ where, include: whole });
  return row && toLot(row);
}

/** One lot, held still until the transaction ends: of two who go over it at once, one waits and then sees what the other left. */
export async function lockLot(tx: Tx, scope: Scope, id: string): Promise<LotRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "StoreLot" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  return lotById(tx, scope, id);
}

export type LotFacts = Pick<
  LotRecord,
  | 'keepingKey'
  | 'variety'
  | 'source'
  | 'notes'
  | 'measure'
  | 'putIn'
  | 'pieceG'
  | 'putInOn'
  | 'condition'
  | 'goingOverDays'
  | 'curingFrom'
>;

function toRow({ putInOn, curingFrom, ...facts }: LotFacts) {
  return { ...facts, putInOn: toDbDay(putInOn), curingFrom: curingFrom && toDbDay(curingFrom) };
}

/** Put a lot in, and return its id. */
export async function createLot(
  tx: Tx,
  scope: Scope,
  at: { readonly holdingId: string; readonly placeId: string; readonly harvestId: string | null },
  facts: LotFacts,
  createdAt: Date,
): Promise<string> {
  const { societyId, memberId: byMemberId } = scope;
  const data = { ...toRow(facts), ...at, createdAt, societyId, byMemberId };
  return (await tx.storeLot.create({ data, select: { id: true } })).id;
}

type LotChange = LotFacts | { readonly placeId: string } | { readonly curedOn: CalendarDate };

/** Change a lot. As it was before, it stays as a row that is retired, whose id is returned. */
export async function changeLotRow(tx: Tx, scope: Scope, id: string, change: LotChange, at: Date): Promise<string> {
  const where = { id, societyId: scope.societyId };
  const { id: _, ...before } = await tx.storeLot.findFirstOrThrow({ where });
  const kept = await tx.storeLot.create({ data: { ...before, retiredAt: at }, select: { id: true } });
  const data = 'putIn' in change ? toRow(change) : 'curedOn' in change ? { curedOn: toDbDay(change.curedOn) } : change;
  await tx.storeLot.updateMany({ where, data });
  return kept.id;
}

/** Take a lot back, as a mistake; the row stays, with its goings over. */
export async function retireLotRow(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  await tx.storeLot.updateMany({ where: { id, societyId: scope.societyId }, data: { retiredAt: at } });
}
