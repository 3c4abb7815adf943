import 'server-only';
import { holdingsOfMember, type HoldingOnDay } from '@/lib/data/holding';
import { type LotRecord, lotsOf } from '@/lib/data/store-lot';
import { type PlaceRecord, placesOf } from '@/lib/data/store-place';
import type { ReadContext } from '../operation';

export type Store = {
  readonly holdings: readonly HoldingOnDay[];
  readonly places: readonly PlaceRecord[];
  /** Used up or not. */
  readonly lots: readonly LotRecord[];
};

/** Everything that the viewer's own holdings have in store. A holding may be without ground and still have onions. */
export async function storeOf({ db, scope, today }: ReadContext): Promise<Store> {
  const holdings = await holdingsOfMember(db, scope, scope.memberId, today);
  const ids = holdings.map(({ id }) => id);
  const [places, lots] = await Promise.all([placesOf(db, scope, ids), lotsOf(db, scope, ids)]);
  return { holdings, places, lots };
}

/** A holding's name where somebody has several: its plots. */
export function shownHolding({ id, plots }: HoldingOnDay) {
  return { id, plots: plots.map(({ number }) => number) };
}
