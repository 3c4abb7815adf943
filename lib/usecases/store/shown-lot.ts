import type { LotRecord } from '@/lib/data/store-lot';
import { keepingOf } from '@/lib/domain/catalogue/keepings';
import { type LotNow, lotNow } from '@/lib/domain/store/go-over';

/** A lot as its holders see it in a list. */
export function shownLot(lot: LotRecord) {
  const { id, keepingKey, variety, place, measure, putIn, putInOn, condition, curingFrom, curedOn, goingsOver } = lot;
  const now: LotNow = lotNow(lot);
  return {
    ...{ id, keepingKey, variety, measure, putIn, putInOn, condition, curingFrom, curedOn, now },
    name: keepingOf(keepingKey)?.name ?? keepingKey,
    place: { id: place.id, name: place.name, kind: place.kind },
    lastOn: goingsOver.at(-1)?.on ?? null,
  };
}
