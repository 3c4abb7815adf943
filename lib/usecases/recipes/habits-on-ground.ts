import 'server-only';
import type { Db } from '@/lib/data/db';
import type { HoldingOnDay } from '@/lib/data/holding';
import type { Scope } from '@/lib/data/scope';
import { keptSettingsOn } from '@/lib/data/setting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type Habits, habitsOf } from '@/lib/domain/recipe/habits-of';
import { keptFor } from './recipes-for';

/** The habits by which ground is worked: a holder's own; for whoever keeps it for others, those of somebody who has said nothing. */
export async function habitsOnGround(
  db: Db,
  scope: Scope,
  holding: HoldingOnDay | null,
  today: CalendarDate,
): Promise<Habits> {
  if (holding?.memberIds.includes(scope.memberId)) return habitsOf(await keptFor(db, scope, scope.memberId, today));
  return habitsOf({ member: {}, society: await keptSettingsOn(db, scope, today) });
}
