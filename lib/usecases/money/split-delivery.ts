import 'server-only';
import { bookingsOf } from '@/lib/data/booking';
import type { Db } from '@/lib/data/db';
import { loadUnitOf, shareOutRecordOf } from '@/lib/data/delivery';
import type { Scope } from '@/lib/data/scope';
import { type PriceReason, splitPrice } from '@/lib/domain/ledger/split-price';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import { rankOf } from '@/lib/domain/sharing/lot';
import { asRecord } from '../deliveries/claims';

export type DeliverySplit = {
  readonly priceMinor: number;
  readonly allLoads: number;
  readonly loadUnit: LoadUnit;
  readonly shares: readonly {
    readonly holdingId: string;
    readonly loads: number;
    readonly minor: number;
    readonly reason: PriceReason;
  }[];
  /** What nobody pays, since nobody took a load. */
  readonly leftMinor: number;
};

/** A price split between those who took loads of a delivery, the odd pennies by the delivery's own lot. */
export async function splitDelivery(
  db: Db,
  scope: Scope,
  deliveryId: string,
  priceMinor: number,
): Promise<DeliverySplit> {
  const [bookings, stored, loadUnit] = [
    await bookingsOf(db, scope, deliveryId),
    await shareOutRecordOf(db, scope, deliveryId),
    await loadUnitOf(db, scope, deliveryId),
  ] as const;
  const seed = asRecord(stored)?.lotSeed ?? '';
  const takers = bookings.filter(({ collectedLoads }) => collectedLoads > 0);
  const holdingOf = new Map(takers.map(({ id, holdingId }) => [id, holdingId]));
  const ranks = new Map(takers.map(({ id }) => [id, rankOf(seed, id)]));
  const lotOrder = [...ranks].sort(([, one], [, other]) => (one < other ? -1 : 1)).map(([id]) => id);
  const taken = takers.map(({ id, collectedLoads }) => ({ id, loads: collectedLoads }));
  const { shares, leftMinor } = splitPrice(priceMinor, taken, lotOrder);
  return {
    priceMinor,
    allLoads: taken.reduce((sum, { loads }) => sum + loads, 0),
    loadUnit,
    shares: shares.map(({ id, ...share }) => ({ ...share, holdingId: holdingOf.get(id) ?? '' })),
    leftMinor,
  };
}
