import 'server-only';
import type { SeedItemRecord, SeedOrderRecord, SeedPackRecord } from '@/lib/data/seed-order';
import type { SeedWantRecord } from '@/lib/data/seed-want';
import { rankOf } from '@/lib/domain/sharing/lot';
import { type SocietyOrder, societyOrder } from '@/lib/domain/seed/society-order';

/**
 * The pooled order as it stands: by the packs that came, or else were ordered, or else cover what is wanted for the least money. The odd
 * pennies and odd seeds fall by lot: by SHA-256 of the order's id and the holding's.
 */
export function pooledOrder(
  { id, items, extraMinor }: Pick<SeedOrderRecord, 'id' | 'items' | 'extraMinor'>,
  wants: readonly Pick<SeedWantRecord, 'itemId' | 'holdingId' | 'amount'>[],
): SocietyOrder {
  const ranks = new Map(wants.map(({ holdingId }) => [holdingId, rankOf(id, holdingId)]));
  const lotOrder = [...ranks].sort(([, one], [, other]) => (one < other ? -1 : 1)).map(([holdingId]) => holdingId);
  return societyOrder(
    items.map((item) => ({
      id: item.id,
      sizes: item.packs,
      counts: countsOf(item),
      wants: wants.filter(({ itemId }) => itemId === item.id),
    })),
    lotOrder,
    extraMinor,
  );
}

/** How many of each pack came, or were ordered; null where it is not ordered yet. */
function countsOf({ packs }: Pick<SeedItemRecord, 'packs'>): number[] | null {
  const counts = packs.map(({ arrived, ordered }: SeedPackRecord) => arrived ?? ordered);
  return counts.every((count) => count !== null) ? counts : null;
}
