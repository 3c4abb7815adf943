import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type SettingKey, type SettingValues, settingValues } from '@/lib/domain/catalogue/settings';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** The values in force on a day: the society's own over the catalogue's. */
export async function settingsOn(db: Db, scope: Scope, day: CalendarDate): Promise<SettingValues> {
  const rows = await db.societySetting.findMany({
    where: { societyId: scope.societyId, effectiveFrom: { lte: toDbDay(day) } },
    orderBy: [{ effectiveFrom: 'asc' }, { setAt: 'asc' }],
    select: { key: true, value: true },
  });
  return settingValues(Object.fromEntries(rows.map(({ key, value }) => [key, value])));
}

/** Every value the society ever set, newest first, with who set it. */
export async function settingHistory(db: Db, scope: Scope) {
  const rows = await db.societySetting.findMany({
    where: { societyId: scope.societyId },
    include: { setBy: { select: { name: true } } },
    orderBy: [{ effectiveFrom: 'desc' }, { setAt: 'desc' }],
  });
  return rows.map(({ key, value, effectiveFrom, setBy, setAt }) => ({
    key,
    value: String(value),
    from: fromDbDay(effectiveFrom),
    by: setBy?.name ?? 'the society',
    setAt,
  }));
}

/** Set a value from a day on. */
export async function appendSetting(
  tx: Tx,
  scope: Scope,
  row: { key: SettingKey; value: Prisma.InputJsonValue; from: CalendarDate; at: Date },
) {
  const { key, value, from, at } = row;
  await tx.societySetting.create({
    data: {
      societyId: scope.societyId,
      key,
      value,
      effectiveFrom: toDbDay(from),
      setByMemberId: scope.memberId,
      setAt: at,
    },
  });
}
