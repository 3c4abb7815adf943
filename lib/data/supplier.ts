import 'server-only';
import type { Supplier, SupplierLoad } from '@/generated/prisma/client';
import type { UnitOfSupplier } from '@/lib/domain/delivery/supplier-unit';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** What a supplier brings, in their own unit. */
export type SupplierLoadRecord = {
  readonly id: string;
  readonly supplierId: string;
  readonly materialKey: string;
  readonly of: UnitOfSupplier;
  /** Null where the catalogue's holds. */
  readonly densityGPerL: number | null;
  /** For one unit; null where nothing was agreed. */
  readonly priceMinor: number | null;
  readonly thanks: string | null;
};

export type SupplierRecord = {
  readonly id: string;
  readonly name: string;
  readonly reach: string | null;
  readonly notes: string | null;
  readonly loads: readonly SupplierLoadRecord[];
};

function unitOf({ unit, trailerLitres, baleMassG }: SupplierLoad): UnitOfSupplier {
  if (unit === 'trailer') return { unit, trailerLitres: trailerLitres ?? 0 };
  if (unit === 'bales') return { unit, baleMassG: baleMassG ?? 0 };
  return { unit: unit as 'm3' | 'tonnes' };
}

function toLoad(row: SupplierLoad): SupplierLoadRecord {
  const { id, supplierId, materialKey, densityGPerL, priceMinor, thanks } = row;
  return { id, supplierId, materialKey, of: unitOf(row), densityGPerL, priceMinor, thanks };
}

function toSupplier({ id, name, reach, notes, loads }: Supplier & { loads: SupplierLoad[] }): SupplierRecord {
  return { id, name, reach, notes, loads: loads.map(toLoad) };
}

const withLoads = { loads: { where: { retiredAt: null }, orderBy: { createdAt: 'asc' } } } as const;

/** The suppliers that stand, by name, with what they bring. */
export async function suppliersOf(db: Db, { societyId }: Scope): Promise<SupplierRecord[]> {
  const rows = await db.supplier.findMany({
    where: { societyId, retiredAt: null },
    include: withLoads,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  });
  return rows.map(toSupplier);
}

/** One supplier that stands, or null. */
export async function supplierById(db: Db, { societyId }: Scope, id: string): Promise<SupplierRecord | null> {
  const row = await db.supplier.findFirst({ where: { id, societyId, retiredAt: null }, include: withLoads });
  return row && toSupplier(row);
}

/** One supplier, locked until the transaction ends: what they bring is changed one after the other. */
export async function lockSupplier(tx: Tx, scope: Scope, id: string): Promise<SupplierRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "Supplier" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  return supplierById(tx, scope, id);
}

/** One load of a supplier, both standing, or null. */
export async function supplierLoadById(db: Db, { societyId }: Scope, id: string): Promise<SupplierLoadRecord | null> {
  const where = { id, societyId, retiredAt: null, supplier: { retiredAt: null } };
  const row = await db.supplierLoad.findFirst({ where });
  return row && toLoad(row);
}

export type SupplierFacts = Pick<SupplierRecord, 'name' | 'reach' | 'notes'>;

/** Add a supplier, and return its id. */
export async function createSupplier(tx: Tx, { societyId }: Scope, facts: SupplierFacts): Promise<string> {
  return (await tx.supplier.create({ data: { ...facts, societyId }, select: { id: true } })).id;
}

/** Change a supplier, or retire it; the row stays. */
export async function updateSupplier(
  tx: Tx,
  { societyId }: Scope,
  id: string,
  data: SupplierFacts | { readonly retiredAt: Date },
): Promise<void> {
  await tx.supplier.updateMany({ where: { id, societyId }, data });
}

export type SupplierLoadFacts = Omit<SupplierLoadRecord, 'id' | 'supplierId'>;

function toRow({ of, ...facts }: SupplierLoadFacts) {
  const { unit } = of;
  const trailerLitres = of.unit === 'trailer' ? of.trailerLitres : null;
  return { ...facts, unit, trailerLitres, baleMassG: of.unit === 'bales' ? of.baleMassG : null };
}

/** Add what a supplier brings, and return its id. */
export async function createSupplierLoad(
  tx: Tx,
  { societyId }: Scope,
  supplierId: string,
  facts: SupplierLoadFacts,
): Promise<string> {
  const data = { ...toRow(facts), societyId, supplierId };
  return (await tx.supplierLoad.create({ data, select: { id: true } })).id;
}

/** Change what a supplier brings, or retire it; the row stays. */
export async function updateSupplierLoad(
  tx: Tx,
  { societyId }: Scope,
  id: string,
  change: SupplierLoadFacts | { readonly retiredAt: Date },
): Promise<void> {
  const data = 'retiredAt' in change ? change : toRow(change);
  await tx.supplierLoad.updateMany({ where: { id, societyId }, data });
}
