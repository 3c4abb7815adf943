import 'server-only';
import type { Db } from '@/lib/data/db';
import { type DeliveryRecord, deliveryById } from '@/lib/data/delivery';
import { lockResidueTest, type ResidueTestRecord, residueTestById } from '@/lib/data/residue-test';
import type { Scope } from '@/lib/data/scope';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canKeepResidueTest, canSeeResidueTest } from '@/lib/domain/policy/residue';
import type { WriteContext } from '../operation';
import { NotFound } from '../refusal';

type At = { readonly db: Db; readonly scope: Scope; readonly now: Date };

/** A delivery that the viewer sees; not found for anybody else. */
export async function deliverySeen({ db, scope, now }: At, id: string): Promise<DeliveryRecord> {
  const delivery = await deliveryById(db, scope, id, now);
  if (!delivery || !canSeeDelivery(scope, delivery)) throw new NotFound();
  return delivery;
}

/** A test that the viewer sees, with its delivery; not found for anybody else. */
export async function testSeen(
  at: At,
  id: string,
): Promise<{ readonly test: ResidueTestRecord; readonly delivery: DeliveryRecord | null }> {
  const test = await residueTestById(at.db, at.scope, id);
  if (!test || !canSeeResidueTest(at.scope, test)) throw new NotFound();
  return { test, delivery: test.deliveryId === null ? null : await deliverySeen(at, test.deliveryId) };
}

/** A test that the viewer keeps, locked; not found for anybody else. */
export async function testKept({ tx, scope, now }: WriteContext, id: string): Promise<ResidueTestRecord> {
  const test = await lockResidueTest(tx, scope, id);
  if (!test || !canKeepResidueTest(scope, test)) throw new NotFound();
  if (test.deliveryId !== null) await deliverySeen({ db: tx, scope, now }, test.deliveryId);
  return test;
}
