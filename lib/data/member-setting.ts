import 'server-only';
import { Prisma } from '@/generated/prisma/client';
import type { HabitKey } from '@/lib/domain/catalogue/habits';
import type { RecipeKey } from '@/lib/domain/catalogue/recipes';
import type { Kept } from '@/lib/domain/recipe/told';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** What the viewer has set for themselves, recipes and habits, as it was kept: null where it was put back. */
export async function ownSettings(db: Db, scope: Scope): Promise<Kept> {
  return newest(db, { societyId: scope.societyId, memberId: scope.memberId });
}

/** What a member has set in their recipes. Their habits are theirs alone: nobody else's question reaches them. */
export async function recipeSettingsOf(db: Db, scope: Scope, memberId: string): Promise<Kept> {
  return newest(db, { societyId: scope.societyId, memberId, key: { startsWith: 'recipe.' } });
}

async function newest(db: Db, where: Prisma.MemberSettingWhereInput): Promise<Kept> {
  const rows = await db.memberSetting.findMany({
    where,
    orderBy: [{ setAt: 'asc' }, { id: 'asc' }],
    select: { key: true, value: true },
  });
  return Object.fromEntries(rows.map(({ key, value }) => [key, value]));
}

/** One value that is set, or with null put back. */
export type Change<Key extends string> = { readonly key: Key; readonly value: string | number | null };

/** Set values of the viewer's own. */
export async function appendOwnSettings(
  tx: Tx,
  { societyId, memberId }: Scope,
  changes: readonly Change<RecipeKey | HabitKey>[],
  at: Date,
): Promise<void> {
  await tx.memberSetting.createMany({
    data: changes.map(({ key, value }) => ({
      societyId,
      memberId,
      key,
      value: value ?? Prisma.JsonNull,
      setAt: at,
    })),
  });
}
