import 'server-only';
import { chargesFor, claimsOf, givenUpBy } from '@/lib/data/season';
import { outstandingOf } from '@/lib/domain/ledger/outstanding';
import { faringOf } from '@/lib/domain/season/faring-of';
import type { Faring, SeasonLine } from '@/lib/domain/season/season-account';
import { nothingCounted } from '@/lib/domain/season/season-counts';
import { asRecord } from '../deliveries/claims';
import type { ReadContext } from '../operation';

type Line = SeasonLine & { readonly fared: Faring };
type Delivery = { readonly id: string; readonly shareOutRecord: unknown };

/** One line for each holding and delivery: its claim as it stood when booking closed, and what it was charged. */
export async function seasonLines({ db, scope }: ReadContext, deliveries: readonly Delivery[]): Promise<Line[]> {
  const ids = deliveries.map(({ id }) => id);
  const [claims, charges] = await Promise.all([claimsOf(db, scope, ids), chargesFor(db, scope, ids)]);
  const givenUp = await givenUpBy(
    db,
    scope,
    claims.filter(({ gaveUp }) => gaveUp).map(({ id }) => id),
  );
  const frozen = new Map(
    deliveries.flatMap(({ shareOutRecord }) =>
      (asRecord(shareOutRecord)?.frozen ?? []).map(({ id, asked }) => [id, asked] as const),
    ),
  );
  const lines = new Map<string, Line>();
  for (const { id, gaveUp, share, ...claim } of claims) {
    // Giving up lowers what is asked: what was asked at first stands with the share-out.
    const asked = frozen.get(id) ?? claim.asked;
    const counts = { ...nothingCounted, ...claim, asked, share: share ?? 0, givenUp: givenUp.get(id) ?? 0 };
    lines.set(keyOf(claim), { ...counts, fared: faringOf({ asked, share, gaveUp }) });
  }
  for (const { minor, newer, balance, ...whose } of charges) {
    const line = lines.get(keyOf(whose)) ?? { ...nothingCounted, ...whose, fared: null };
    const outstanding = outstandingOf(minor, newer, balance);
    lines.set(keyOf(whose), {
      ...line,
      chargedMinor: line.chargedMinor + minor,
      paidMinor: line.paidMinor + minor - outstanding,
      outstandingMinor: line.outstandingMinor + outstanding,
    });
  }
  return [...lines.values()];
}

function keyOf({ deliveryId, holdingId }: { deliveryId: string; holdingId: string }): string {
  return `${deliveryId} ${holdingId}`;
}
