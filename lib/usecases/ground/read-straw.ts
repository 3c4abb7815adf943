import 'server-only';
import type { Db } from '@/lib/data/db';
import { strewnIn } from '@/lib/data/ground-work';
import type { Scope } from '@/lib/data/scope';
import { keptSettingsOn } from '@/lib/data/setting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { byFrame } from '@/lib/domain/ground/by-frame';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { type StrawReason, strawReasons } from '@/lib/domain/need/straw-need';
import { recipesOf } from '@/lib/domain/recipe/recipe-of';
import type { NeedyGround } from './needy-ground';

/** What straw each bed wants for a season by the society's recipes: two queries more, however many beds there are. */
export async function readStraw(
  db: Db,
  scope: Scope,
  { season, day, ground }: { readonly season: number; readonly day: CalendarDate; readonly ground: NeedyGround },
): Promise<(frameId: string, bed: Footprint) => readonly StrawReason[]> {
  const [kept, works] = await Promise.all([keptSettingsOn(db, scope, day), strewnIn(db, scope, season)]);
  const recipes = recipesOf({ member: {}, society: kept });
  const strewn = byFrame(works);
  return (frameId, bed) => strawReasons(bed, ground.plannedOf(frameId, season), recipes, strewn.get(frameId) ?? []);
}
