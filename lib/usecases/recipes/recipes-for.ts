import 'server-only';
import type { Db } from '@/lib/data/db';
import { ownSettings, recipeSettingsOf } from '@/lib/data/member-setting';
import type { Scope } from '@/lib/data/scope';
import { keptSettingsOn } from '@/lib/data/setting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type Habits, habitsOf } from '@/lib/domain/recipe/habits-of';
import { type Recipe, recipesOf } from '@/lib/domain/recipe/recipe-of';
import type { KeptBy } from '@/lib/domain/recipe/told';

/**
 * How a member makes their ground ready, as it is in force on a day: a recipe for each group, and their habits. For anybody but
 * the member the habits are those of somebody who has said nothing: they are nobody else's to read.
 */
export async function recipesFor(
  db: Db,
  scope: Scope,
  memberId: string,
  today: CalendarDate,
): Promise<{ readonly recipes: readonly Recipe[]; readonly habits: Habits }> {
  const kept = await keptFor(db, scope, memberId, today);
  return { recipes: recipesOf(kept), habits: habitsOf(kept) };
}

/** What a member and their society have set, as it was kept. */
export async function keptFor(db: Db, scope: Scope, memberId: string, today: CalendarDate): Promise<KeptBy> {
  const [member, society] = await Promise.all([
    memberId === scope.memberId ? ownSettings(db, scope) : recipeSettingsOf(db, scope, memberId),
    keptSettingsOn(db, scope, today),
  ]);
  return { member, society };
}
