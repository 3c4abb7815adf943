import 'server-only';
import { type Archive, columnsFor, type ExportedTable, isExported } from '@/lib/domain/export/export-table';
import { exportTables } from '@/lib/domain/export/export-tables';

type Given = {
  readonly archive: Archive;
  readonly society: string;
  readonly memberName: string;
  readonly today: string;
  readonly tables: readonly ExportedTable[];
};

const byAll = `Tables are CSV: UTF-8 with a byte-order mark, commas, lines ended by CR LF, names of columns in the first line, quotes as
RFC 4180 has them. Days are YYYY-MM-DD; instants are in UTC, YYYY-MM-DDThh:mm:ss.mmmZ; yes and no are true and false; an
empty cell is "nothing there". Whatever is not plain is JSON within its cell. Lengths are whole centimetres, areas square
centimetres, masses grams, money pence, credit millionths of a load. Where a column says "members.csv" or the like, it holds
the id of a row there. A text that a spreadsheet would take for a formula has an apostrophe before it: leave that one out.`;

const bySociety = `It holds personal data: names, addresses, telephone numbers. Keep it as you would keep the list of members, and no longer
than you need it. Not in it, whoever asks: passwords and other ways in, letters, gate notes, the lot of a delivery before it is
revealed, and what is its holders' own (notes, varieties, habits, what a need was worked out from); each member can take out
their own from the page "You".`;

const byMember = `It holds what the society keeps of you and of the ground you hold or share today, with your notes. Other people appear in it as
numbers alone.`;

/** What an archive holds, file by file and column by column, in plain words. */
export function readMe({ archive, society, memberName, today, tables }: Given): string {
  const ofWhom = archive === 'society' ? society : `${memberName}, ${society}`;
  const head = [`${ofWhom}: all that is on record, ${today}`, archive === 'society' ? bySociety : byMember, byAll];
  const files = tables.map((table) =>
    [`${table.file}\n${table.says}`, ...columnsFor(table, archive).map(({ name, says }) => `  ${name}: ${says}`)].join(
      '\n',
    ),
  );
  return `${[...head, ...files, ...others(archive)].join('\n\n')}\n`;
}

function others(archive: Archive): string[] {
  if (archive === 'own') return ['account.json\nThe address you sign in with, and since when.'];
  const leftOut = exportTables.flatMap((table) => (isExported(table) ? [] : [`  ${table.table}: ${table.leftOut}`]));
  return [
    'ground.json\nThe ground that stands today as one drawing: by site its plots, beds, paths and drop points, corners in site centimetres.',
    'settings.json\nThe rules in force today, each with its default, and the parts of recipes that the society set.',
    `Left out\n${leftOut.join('\n')}`,
  ];
}
