import 'server-only';
import type { BookingRecord } from '@/lib/data/booking';
import { creditsOf } from '@/lib/data/credit';
import type { Db } from '@/lib/data/db';
import { type DeliveryRecord, lotBytesOf } from '@/lib/data/delivery';
import type { Scope } from '@/lib/data/scope';
import type { Claim } from '@/lib/domain/sharing/claim';
import { type LotBooking, lotSeed } from '@/lib/domain/sharing/lot';

/** The claims of a delivery's bookings, and the seed of their lot as closing froze them. */
export type FrozenClaims = {
  readonly claims: readonly Claim[];
  readonly frozen: readonly LotBooking[];
  readonly seed: string;
};

/**
 * Read the claims as the share-out takes them. The lot is seeded by the bookings as they closed: what was given up later
 * lowers a claim, never the lot.
 */
export async function frozenClaims(
  db: Db,
  scope: Scope,
  delivery: DeliveryRecord,
  bookings: readonly BookingRecord[],
  record: ShareOutRecord | null,
): Promise<FrozenClaims> {
  const bytesHex = await lotBytesOf(db, scope, delivery.id);
  if (!bytesHex) throw new Error('a delivery that was opened has a lot');
  const credits = record ? null : await creditsOf(db, scope, delivery.materialKey);
  const places = placesOfLate(bookings);
  const claims = bookings.map(({ id, holdingId, asked, needLoads, creditBeforeMillionths, collectedLoads }): Claim => {
    const late = places.get(id);
    return {
      id,
      asked,
      need: needLoads,
      creditMillionths: credits ? (credits.get(holdingId) ?? 0) : (creditBeforeMillionths ?? 0),
      collected: collectedLoads,
      ...(late === undefined ? {} : { late }),
    };
  });
  // Whoever came late is no part of the lot.
  const inTime = claims.filter(({ late }) => late === undefined);
  const frozen =
    record?.frozen ?? inTime.map(({ id, asked, need, creditMillionths }) => ({ id, asked, need, creditMillionths }));
  return { claims, frozen, seed: lotSeed({ bytesHex, deliveryId: delivery.id, bookings: frozen }) };
}

/** The late in the order in which they came; of one instant, by id. */
export function placesOfLate(bookings: readonly Pick<BookingRecord, 'id' | 'lateAt'>[]): ReadonlyMap<string, number> {
  const late = bookings.flatMap(({ id, lateAt }) => (lateAt ? [{ id, at: lateAt.getTime() }] : []));
  late.sort((one, other) => one.at - other.at || (one.id < other.id ? -1 : 1));
  return new Map(late.map(({ id }, at) => [id, at]));
}

/** What is stored with a confirmed share-out, so that it can be worked out again. */
export type ShareOutRecord = {
  readonly loads: number;
  readonly frozen: readonly LotBooking[];
  readonly lotSeed: string;
  readonly method: { readonly name: string; readonly version: number };
  readonly ended: {
    readonly stage: string;
    readonly round: number;
    readonly contenders: number;
    readonly left: number;
  };
};

export function asRecord(stored: unknown): ShareOutRecord | null {
  return stored as ShareOutRecord | null;
}
