import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import type { readHeapPlacing } from '@/lib/usecases/site/read-heap-placing';

/** What was worked out for a site that is there. */
export type Placed = Extract<Awaited<ReturnType<typeof readHeapPlacing.run>>, { plan: unknown }>;

/** What was asked, as an address says it. */
export function hereOf({ site, basis, allowed }: Placed) {
  return { site: site.id, loads: basis.delivery?.id ?? 'need', allowed };
}

/** What a load of what is tipped is; what the ground needs is reckoned in barrow-loads. */
export function unitFor({ basis }: Placed): LoadUnit {
  return basis.delivery?.loadUnit ?? 'barrow';
}
