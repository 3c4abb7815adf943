import type pg from 'pg';

export type Row = Readonly<Record<string, unknown>>;
/** Rows by table, in an order in which every row's parents come before it. */
export type Tables = Readonly<Record<string, readonly Row[]>>;

const atOnce = 20_000;

/** Write rows in bulk: a few statements whatever their number. Columns that no row names keep their defaults. */
export async function insertAll(client: pg.Client, tables: Tables): Promise<void> {
  for (const [table, rows] of Object.entries(tables))
    for (let from = 0; from < rows.length; from += atOnce) await insert(client, table, rows.slice(from, from + atOnce));
}

async function insert(client: pg.Client, table: string, rows: readonly Row[]): Promise<void> {
  const columns = Object.keys(rows[0] ?? {})
    .map((name) => `"${name}"`)
    .join(', ');
  await client.query(
    `INSERT INTO "${table}" (${columns}) SELECT ${columns} FROM json_populate_recordset(NULL::"${table}", $1)`,
    [JSON.stringify(rows)],
  );
}

/** Put the tables of many societies one behind the other. */
export function together(many: readonly Tables[]): Tables {
  const all: Record<string, Row[]> = {};
  for (const tables of many)
    for (const [table, rows] of Object.entries(tables)) {
      all[table] ??= [];
      for (const row of rows) all[table].push(row);
    }
  return all;
}
