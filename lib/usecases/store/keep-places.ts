import 'server-only';
import { lotsOf } from '@/lib/data/store-lot';
import { changePlaceRow, createPlace, type PlaceFacts, retirePlaceRow } from '@/lib/data/store-place';
import { canEnter } from '@/lib/domain/policy/standing';
import { readTemperature } from '@/lib/domain/quantity/typed-temperature';
import { lotNow } from '@/lib/domain/store/go-over';
import type { PlaceKind } from '@/lib/domain/store/lot';
import { addPlaceInput, changePlaceInput, retirePlaceInput } from '@/lib/schemas/store/place';
import { mutation } from '../operation';
import { refuse } from '../refusal';
import { placeKept, storeHolding } from './open-store';

type Typed = { readonly name: string; readonly kind: PlaceKind; readonly cold: string };

function factsOf({ name, kind, cold }: Typed): PlaceFacts {
  const tenthC = cold === '' ? null : readTemperature(cold);
  if (cold !== '' && tenthC === null) refuse('no-temperature', { field: 'cold' });
  return { name, kind, tenthC };
}

/** Add a place where a holding keeps what it stores. The book says that, and nothing of what is kept there. */
export const addPlace = mutation({
  name: 'add-store-place',
  allow: canEnter,
  input: addPlaceInput,
  write: async ({ tx, scope, today, note }, { holdingId, ...typed }) => {
    await storeHolding({ db: tx, scope, today }, holdingId);
    const placeId = await createPlace(tx, scope, holdingId, factsOf(typed));
    note({ verb: 'added', thing: 'store place', thingId: placeId, forHoldingId: holdingId });
    return { placeId };
  },
});

/** Change a place; as it was before, it stays on record. */
export const changePlace = mutation({
  name: 'change-store-place',
  allow: canEnter,
  input: changePlaceInput,
  write: async (context, { placeId, ...typed }) => {
    const { tx, scope, now, note } = context;
    const place = await placeKept(context, placeId);
    const keptId = await changePlaceRow(tx, scope, place, factsOf(typed), now);
    const at = { thing: 'store place', thingId: placeId, forHoldingId: place.holdingId };
    note({ ...at, verb: 'changed', before: { keptId } });
    return { placeId };
  },
});

/** Be done with a place in which nothing stands any more. */
export const retirePlace = mutation({
  name: 'retire-store-place',
  allow: canEnter,
  input: retirePlaceInput,
  write: async (context, { placeId }) => {
    const { tx, scope, now, note } = context;
    const { holdingId } = await placeKept(context, placeId);
    const there = (await lotsOf(tx, scope, [holdingId])).filter(
      (lot) => lot.placeId === placeId && lotNow(lot).sound > 0,
    );
    if (there.length) refuse('place-in-use', { numbers: { lots: there.length } });
    await retirePlaceRow(tx, scope, placeId, now);
    note({ verb: 'retired', thing: 'store place', thingId: placeId, forHoldingId: holdingId });
    return { placeId };
  },
});
