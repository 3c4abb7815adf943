import 'server-only';
import { Prisma } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { RecipeKey } from '@/lib/domain/catalogue/recipes';
import { type SettingKey, type SettingValues, settingValues } from '@/lib/domain/catalogue/settings';
import type { Kept } from '@/lib/domain/recipe/told';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** The values in force on a day: the society's own over the catalogue's. */
export async function settingsOn(db: Db, scope: Scope, day: CalendarDate): Promise<SettingValues> {
  return settingValues(await keptSettingsOn(db, scope, day));
}

/** What the society itself has set that holds on a day, as it was kept, its recipes too: null where it was put back. */
export async function keptSettingsOn(db: Db, scope: Scope, day: CalendarDate): Promise<Kept> {
  const rows = await db.societySetting.findMany({
    where: { societyId: scope.societyId, effectiveFrom: { lte: toDbDay(day) } },
    orderBy: [{ effectiveFrom: 'asc' }, { setAt: 'asc' }],
    select: { key: true, value: true },
  });
  return Object.fromEntries(rows.map(({ key, value }) => [key, value]));
}

const aboutRecipes = { startsWith: 'recipe.' };

/** Every value the society ever set, of its rules or of its recipes, newest first, with who set it. */
export async function settingHistory(db: Db, scope: Scope, of: 'rules' | 'recipes') {
  const key = of === 'recipes' ? aboutRecipes : { not: aboutRecipes };
  const rows = await db.societySetting.findMany({
    where: { societyId: scope.societyId, key },
    include: { setBy: { select: { name: true } }, ballot: { select: { id: true, number: true, closedAt: true } } },
    orderBy: [{ effectiveFrom: 'desc' }, { setAt: 'desc' }],
  });
  return rows.map(({ id, key, value, effectiveFrom, setBy, setAt, ballot }) => ({
    id,
    key,
    value: typeof value === 'number' || value === null ? value : String(value),
    from: fromDbDay(effectiveFrom),
    by: setBy?.name ?? 'the society',
    setAt,
    /** The count of hands that carried it. */
    ballot: ballot?.closedAt ? { id: ballot.id, number: ballot.number ?? 0, closedAt: ballot.closedAt } : null,
  }));
}

/** Set a value from a day on; null puts it back. What a count of hands carried was set by no single member. */
export async function appendSetting(
  tx: Tx,
  scope: Scope,
  row: {
    readonly key: SettingKey | RecipeKey;
    readonly value: string | number | null;
    readonly from: CalendarDate;
    readonly at: Date;
    readonly ballotId?: string;
  },
) {
  const { key, value, from, at, ballotId } = row;
  await tx.societySetting.create({
    data: {
      societyId: scope.societyId,
      key,
      value: value ?? Prisma.JsonNull,
      effectiveFrom: toDbDay(from),
      ...(ballotId ? { ballotId } : { setByMemberId: scope.memberId }),
      setAt: at,
    },
  });
}
