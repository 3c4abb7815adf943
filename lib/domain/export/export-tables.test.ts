import fs from 'node:fs';
import { describe, expect, test } from 'vitest';
import { columnsFor, isExported, tablesFor } from './export-table';
import { exportTables } from './export-tables';

type Model = {
  readonly name: string;
  readonly columns: { readonly name: string; readonly type: string; readonly line: string }[];
};

// The models of the schema with the columns that lie in the database: neither relations nor the lists of them.
const schema = fs.readFileSync('prisma/schema.prisma', 'utf8');
const enums = new Set([...schema.matchAll(/^enum (\w+)/gm)].map(([, name]) => name));
const plain = new Set(['String', 'Int', 'BigInt', 'Boolean', 'DateTime', 'Json', 'Float', 'Decimal', 'Bytes']);
const models: Model[] = [...schema.matchAll(/^model (\w+) \{\n([\s\S]*?)^\}/gm)].map(([, name = '', body = '']) => ({
  name,
  columns: [...body.matchAll(/^ {2}(\w+) +(\w+)([[\]?]*)(.*)$/gm)]
    .filter(([, , type = '']) => plain.has(type) || enums.has(type))
    .map(([line, column = '', type = '', many = '']) => ({ name: column, type: `${type}${many}`, line })),
}));

describe('every table of the database', () => {
  test('is read out of the schema', () => {
    expect(models.length).toBeGreaterThan(40);
    const booking = models.find(({ name }) => name === 'Booking')?.columns.map(({ name }) => name);
    expect(booking).toEqual(expect.arrayContaining(['id', 'asked', 'share', 'needReason', 'gaveUpAt']));
    expect(booking).not.toContain('beds');
  });

  // A new table: name it in lib/domain/export, column by column, or leave it out with the reason.
  test('is exported or left out with the reason, and none that is not there', () =>
    expect(exportTables.map(({ table }) => table).sort()).toEqual(models.map(({ name }) => name).sort()));

  // A new column: say what it is and who may have it, or why nobody may.
  test.each(models.map((model) => [model.name, model] as const))('%s, column by column', (name, { columns }) => {
    const table = exportTables.find((one) => one.table === name);
    if (table && isExported(table))
      expect(Object.keys(table.columns).sort()).toEqual(columns.map((column) => column.name).sort());
    else expect(table?.leftOut).toMatch(/\w{3}/);
  });

  test('names its instants and lists so that they are written as such', () => {
    for (const { name, columns } of models)
      for (const column of columns) {
        const where = `${name}.${column.name}`;
        expect([where, /^at$|At$/.test(column.name)]).toEqual([where, column.line.includes('@db.Timestamptz')]);
        const table = exportTables.find((one) => one.table === name);
        const said = table && isExported(table) ? table.columns[column.name] : undefined;
        if (said && !(typeof said === 'object' && 'never' in said))
          expect([where, typeof said === 'object' && said.list === true]).toEqual([where, column.type.endsWith('[]')]);
      }
  });
});

describe('what may leave', () => {
  const namesIn = (archive: 'society' | 'own') =>
    tablesFor(exportTables, archive).flatMap((table) =>
      columnsFor(table, archive).map(({ name }) => `${table.table}.${name}`),
    );

  test('is never a way in, a letter or a gate note', () => {
    for (const archive of ['society', 'own'] as const) {
      const names = namesIn(archive);
      expect(
        names.filter((name) => /hash|token|password|gateNote|writeId|accountId|MailMessage|reply/i.test(name)),
      ).toEqual([]);
    }
  });

  test('is not, to the society, what only holders may read', () => {
    const own = ['Planting.notes', 'Planting.variety', 'Trouble.notes', 'Booking.needReason', 'GroundSheet.order'];
    const society = namesIn('society');
    expect(own.filter((name) => society.includes(name))).toEqual([]);
    expect(society.some((name) => name.startsWith('MemberSetting') || name.startsWith('BookingBed'))).toBe(false);
    const mine = namesIn('own');
    expect(own.filter((name) => !mine.includes(name))).toEqual([]);
  });

  test('has one file for each table, and words for each column', () => {
    const files = exportTables.filter(isExported).map(({ file }) => file);
    expect(new Set(files).size).toBe(files.length);
    for (const archive of ['society', 'own'] as const)
      for (const table of tablesFor(exportTables, archive))
        for (const { name, says } of columnsFor(table, archive))
          expect([name, says]).toEqual([name, expect.stringMatching(/\w/)]);
  });
});
