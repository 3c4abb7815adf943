import { randomUUID } from 'node:crypto';
import { db } from '@/lib/data/db';
import type { Scope } from '@/lib/data/scope';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { readGround } from '@/lib/usecases/ground/read-ground';
import { makeSheet } from '@/lib/usecases/sheets/make-sheet';
import { previewSheet } from '@/lib/usecases/sheets/preview-sheet';
import { readSheet } from '@/lib/usecases/sheets/read-sheet';
import { tickTrench } from '@/lib/usecases/sheets/tick-trench';
import { callerOf } from './caller-of';
import { done } from './done';

/** On a plot that two share, one has been busy: the other finds it on their page of the week. */
export async function changeSharedPlot(scope: Scope, memberId: string, plotId: string, year: number): Promise<void> {
  const caller = await callerOf(scope.slug, memberId);
  const beds = await db().bed.findMany({ where: { plotId }, orderBy: { name: 'asc' }, take: 2 });
  for (const [at, cropKey] of ['broad-bean', 'garlic'].entries()) {
    const bedId = beds[at]?.id ?? '';
    const planned = await db().planting.findFirst({ where: { bedId, firstSeason: year + 1, retiredAt: null } });
    const record = { bedId, cropKey, season: String(year + 1), replaces: planned?.id ?? '' };
    await done(recordPlanting.run(caller, { writeId: randomUUID(), ...record }));
  }
}

/** On the same plot a bed whose turn it is lies half dug, on two mornings of the week: the sheet tells whoever goes on. */
export async function digHalfABed(scope: Scope, memberId: string, today: CalendarDate): Promise<void> {
  const caller = await callerOf(scope.slug, memberId);
  const { need } = await readGround.run(caller, {});
  const beds = need.lines.filter(({ kind }) => kind === 'bed');
  const bedId = (beds.find(({ turn }) => turn.dueCm2 > 0) ?? beds[0])?.id ?? '';
  const { behind } = await previewSheet.run(caller, { bedId, wish: {} });
  const wish = { bedId, group: behind?.group ?? 'alliums', ageMonths: '14' };
  const { sheetId } = await done(makeSheet.run(caller, { writeId: randomUUID(), ...wish }));
  const { total } = await readSheet.run(caller, { sheetId });
  for (const [share, days] of [
    [0.25, -5],
    [0.5, -2],
  ] as const) {
    const upTo = {
      trench: String(Math.max(1, Math.floor(total * share))),
      withBefore: 'yes',
      doneOn: addDays(today, days),
    };
    await done(tickTrench.run(caller, { writeId: randomUUID(), sheetId, ...upTo }));
  }
}
