import 'server-only';
import type { Db } from '@/lib/data/db';
import { type HoldingOnDay, holdingById } from '@/lib/data/holding';
import type { Scope } from '@/lib/data/scope';
import { type LotRecord, lockLot, lotById } from '@/lib/data/store-lot';
import { lockPlace, type PlaceRecord } from '@/lib/data/store-place';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canSeePrivateRecords } from '@/lib/domain/policy/holding';
import type { WriteContext } from '../operation';
import { NotFound } from '../refusal';

type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };

/** A holding whose store is the viewer's own; not found for anybody else, the secretary included. */
export async function storeHolding({ db, scope, today }: At, id: string): Promise<HoldingOnDay> {
  const holding = await holdingById(db, scope, id, today);
  if (!holding || !canSeePrivateRecords(scope, holding)) throw new NotFound();
  return holding;
}

/** A place of the viewer's own, locked: lots come and go while it stands. */
export async function placeKept({ tx, scope, today }: WriteContext, id: string): Promise<PlaceRecord> {
  const place = await lockPlace(tx, scope, id);
  if (!place) throw new NotFound();
  await storeHolding({ db: tx, scope, today }, place.holdingId);
  return place;
}

/** A lot of the viewer's own. */
export async function lotSeen(at: At, id: string): Promise<{ lot: LotRecord; holding: HoldingOnDay }> {
  const lot = await lotById(at.db, at.scope, id);
  if (!lot) throw new NotFound();
  return { lot, holding: await storeHolding(at, lot.holdingId) };
}

/** A lot of the viewer's own, locked until the transaction ends. */
export async function lotKept({ tx, scope, today }: WriteContext, id: string): Promise<LotRecord> {
  const lot = await lockLot(tx, scope, id);
  if (!lot) throw new NotFound();
  await storeHolding({ db: tx, scope, today }, lot.holdingId);
  return lot;
}
