import 'server-only';
import type { Prisma, ResidueTest } from '@/generated/prisma/client';
import type { EnteredReading, KeptBioassay } from '@/lib/domain/bioassay/kept-record';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A reading as it is kept: who entered it, and when. */
export type KeptReading = EnteredReading & { readonly byMemberId: string; readonly at: string };

/** A test of manure for weedkiller, with everything that was ever entered of it. */
export type ResidueTestRecord = {
  readonly id: string;
  readonly deliveryId: string | null;
  readonly name: string;
  readonly kept: Omit<KeptBioassay, 'entered'> & { readonly entered: readonly KeptReading[] };
  readonly madeByMemberId: string;
  readonly createdAt: Date;
  readonly endedAt: Date | null;
};

type KeptRecord = ResidueTestRecord['kept'];

// Only what is written here is ever read here.
function toTest(row: ResidueTest): ResidueTestRecord {
  const { id, deliveryId, name, madeByMemberId, createdAt, endedAt } = row;
  return { id, deliveryId, name, madeByMemberId, createdAt, endedAt, kept: row.record as unknown as KeptRecord };
}

function toJson(kept: KeptRecord): Prisma.InputJsonValue {
  return kept as unknown as Prisma.InputJsonValue;
}

/** The tests of a delivery, of the viewer's own manure, or of that and all deliveries, not taken back; newest first. */
export async function residueTestsOf(
  db: Db,
  { societyId, memberId }: Scope,
  of: { readonly deliveryId: string } | 'own' | 'own-and-deliveries',
): Promise<ResidueTestRecord[]> {
  const own = { deliveryId: null, madeByMemberId: memberId };
  const which = of === 'own' ? own : of === 'own-and-deliveries' ? { OR: [own, { deliveryId: { not: null } }] } : of;
  const rows = await db.residueTest.findMany({
    where: { societyId, retiredAt: null, ...which },
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
  });
  return rows.map(toTest);
}

/** One test that was not taken back, or null. */
export async function residueTestById(db: Db, scope: Scope, id: string): Promise<ResidueTestRecord | null> {
  const row = await db.residueTest.findFirst({ where: { id, societyId: scope.societyId, retiredAt: null } });
  return row && toTest(row);
}

/** One test, locked until the transaction ends: readings are added to what is kept, one after the other. */
export async function lockResidueTest(tx: Tx, scope: Scope, id: string): Promise<ResidueTestRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "ResidueTest"
    WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  return residueTestById(tx, scope, id);
}

export type NewResidueTest = Pick<ResidueTestRecord, 'deliveryId' | 'name' | 'kept'>;

/** Start a test, and return its id. */
export async function createResidueTest(tx: Tx, scope: Scope, { kept, ...test }: NewResidueTest): Promise<string> {
  const { societyId, memberId: madeByMemberId } = scope;
  const data = { ...test, record: toJson(kept), societyId, madeByMemberId };
  return (await tx.residueTest.create({ data, select: { id: true } })).id;
}

/** Keep what was entered. */
export async function saveResidueRecord(tx: Tx, scope: Scope, id: string, kept: KeptRecord, at: Date): Promise<void> {
  const data = { record: toJson(kept), changedAt: at };
  await tx.residueTest.updateMany({ where: { id, societyId: scope.societyId }, data });
}

/** End a test, or take it back as a mistake; the row stays. */
export async function closeResidueTest(
  tx: Tx,
  scope: Scope,
  id: string,
  data: { readonly endedAt: Date } | { readonly retiredAt: Date },
): Promise<void> {
  await tx.residueTest.updateMany({ where: { id, societyId: scope.societyId }, data });
}
