import 'server-only';
import type { Tx } from '@/lib/data/db';
import { type ExportOf, exportedAccount, exportedGround, exportedRows } from '@/lib/data/export';
import type { Scope } from '@/lib/data/scope';
import { keptSettingsOn } from '@/lib/data/setting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { settingInForce, type SettingKey, settings, settingValues } from '@/lib/domain/catalogue/settings';
import { columnsFor, type ExportedTable, tablesFor } from '@/lib/domain/export/export-table';
import { exportTables } from '@/lib/domain/export/export-tables';
import { groundDrawing } from '@/lib/domain/export/ground-drawing';
import type { ArchiveFile } from '@/lib/platform/archive';
import { csvLines } from '@/lib/platform/csv';
import { readMe } from './read-me';

type At = { readonly tx: Tx; readonly scope: Scope; readonly today: CalendarDate };

/** The files of an archive, one after the other: what is in them, then a table each, then what is no table. */
export async function* archiveFiles(at: At, whose: ExportOf): AsyncGenerator<ArchiveFile> {
  const { scope, today } = at;
  const tables = tablesFor(exportTables, whose.archive);
  const { societyName: society, memberName } = scope;
  yield { name: 'README.txt', pieces: [readMe({ archive: whose.archive, society, memberName, today, tables })] };
  for (const table of tables) yield { name: table.file, pieces: csvPieces(at, table, whose) };
  if (whose.archive === 'own') return yield asJson('account.json', await exportedAccount(at.tx, scope));
  yield asJson('ground.json', groundDrawing(await exportedGround(at.tx, scope)));
  yield asJson('settings.json', await settingsOf(at));
}

async function* csvPieces({ tx, scope }: At, table: ExportedTable, whose: ExportOf): AsyncGenerator<string> {
  const heads = columnsFor(table, whose.archive).map(({ name }) => name);
  yield csvLines([heads], true);
  for await (const rows of exportedRows(tx, scope, table, whose)) yield csvLines(rows, false);
}

function asJson(name: string, value: unknown): ArchiveFile {
  return { name, pieces: [`${JSON.stringify(value, null, 1)}\n`] };
}

async function settingsOf({ tx, scope, today }: At) {
  const kept = await keptSettingsOn(tx, scope, today);
  const values = settingValues(kept);
  return {
    onDay: today,
    rules: (Object.keys(settings) as SettingKey[]).map((key) => {
      const { name, value: byDefault, ...setting } = settings[key];
      const unit = 'unit' in setting ? { unit: setting.unit } : {};
      return { key, name, value: settingInForce(values, key), default: byDefault, ...unit };
    }),
    recipes: Object.entries(kept)
      .filter(([key]) => key.startsWith('recipe.'))
      .map(([key, value]) => ({ key, value })),
  };
}
