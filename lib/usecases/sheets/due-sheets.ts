import 'server-only';
import { sheetsOfHoldings } from '@/lib/data/ground-sheet';
import { addDays, daysBetween } from '@/lib/domain/calendar/calendar-date';
import type { Dated } from '@/lib/domain/reminders/dated';
import { seasonServed } from '../ground/holding-need';
import type { ReadContext } from '../operation';
import { lineOf, type SheetLine } from './sheet-line';

/** A sheet with trenches left, and the days left for them; negative once the last day is past. */
export type SheetDue = {
  readonly code: 'dig';
  readonly sheet: SheetLine;
  readonly bedName: string;
  readonly plotNumber: string;
  readonly daysLeft: number;
};

/** Days ahead that a sheet's first day is announced. */
const aheadDays = 14;

/** The sheets of a member's holdings that are begun, and then those whose time has come; last season's are let rest. */
export async function dueOfSheets(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  holdings: readonly { readonly id: string }[],
): Promise<SheetDue[]> {
  const sheets = await sheetsOfHoldings(
    db,
    scope,
    holdings.map(({ id }) => id),
    seasonServed(today),
  );
  return sheets
    .filter(({ ticks, order }) => ticks.length > 0 || order.from <= addDays(today, aheadDays))
    .map(({ bedName, plotNumber, ...sheet }) => ({
      code: 'dig' as const,
      sheet: lineOf(sheet),
      bedName,
      plotNumber,
      daysLeft: daysBetween(today, sheet.order.until),
    }))
    .filter(({ sheet }) => sheet.done < sheet.total)
    .sort((a, b) => Number(b.sheet.done > 0) - Number(a.sheet.done > 0) || a.daysLeft - b.daysLeft);
}

/** The digging days of sheets with trenches left. */
export async function datesOfSheets(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  holdings: readonly { readonly id: string }[],
): Promise<Dated[]> {
  const ids = holdings.map(({ id }) => id);
  const sheets = await sheetsOfHoldings(db, scope, ids, seasonServed(today));
  return sheets
    .map(({ bedName, plotNumber, ...sheet }) => ({ line: lineOf(sheet), order: sheet.order, bedName, plotNumber }))
    .filter(({ line }) => line.done < line.total)
    .map(({ line, order, bedName, plotNumber }) => ({
      ...{ key: `dig ${line.id}`, code: 'dig', from: order.from, to: order.until },
      facts: { sheetId: line.id, bedName, plotNumber, group: line.group, left: line.total - line.done },
    }));
}
