import 'server-only';
import { Prisma } from '@/generated/prisma/client';
import { type Archive, columnsFor, type ExportedTable, type Owner } from '@/lib/domain/export/export-table';
import { type Db, db, type Tx } from './db';
import type { Scope } from './scope';

/** Rows read at a time: so many are in memory, however many there are. */
const portion = 1000;
/** The longest that an archive may take to be written [ms]. */
const longestMs = 10 * 60_000;

/** Whose archive, and what is theirs: the viewer, and the holdings of theirs whose private records they may read. */
export type ExportOf = { readonly archive: Archive; readonly holdingIds: readonly string[] };

/** Read many tables as they stood at one instant, however long that takes. */
export function inSnapshot<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
  const isolationLevel = 'RepeatableRead';
  return db().$transaction(work, { isolationLevel, maxWait: 20_000, timeout: longestMs });
}

/** The rows of a table that an archive holds, portion by portion, every value as text: days and instants as ISO 8601 has them. */
export async function* exportedRows(
  tx: Tx,
  scope: Scope,
  table: ExportedTable,
  whose: ExportOf,
): AsyncGenerator<(string | null)[][]> {
  const names = columnsFor(table, whose.archive).map(({ name }) => name);
  const values = Prisma.join(names.map((name) => Prisma.sql`${valueOf(table, name)} AS ${word(name)}`));
  const order = Prisma.raw('id' in table.columns ? 'ORDER BY "id"' : '');
  await tx.$executeRaw`DECLARE exported NO SCROLL CURSOR FOR
    SELECT ${values} FROM ${word(table.table)} WHERE ${rowsFor(scope, table, whose)} ${order}`;
  for (;;) {
    const rows = await tx.$queryRaw<
      Record<string, string | null>[]
    >`FETCH ${Prisma.raw(String(portion))} FROM exported`;
    if (rows.length) yield rows.map((row) => names.map((name) => row[name] ?? null));
    if (rows.length < portion) break;
  }
  await tx.$executeRaw`CLOSE exported`;
}

// Names of tables and columns come from the list of tables in the code, never from outside.
function word(name: string): Prisma.Sql {
  if (!/^[A-Za-z0-9]+$/.test(name)) throw new RangeError(`no name of a table or column: ${name}`);
  return Prisma.raw(`"${name}"`);
}

function valueOf({ columns }: ExportedTable, name: string): Prisma.Sql {
  const column = columns[name];
  const given = typeof column === 'object' && 'says' in column ? column : null;
  if (given?.once) return Prisma.sql`CASE WHEN ${word(given.once)} IS NOT NULL THEN ${word(name)}::text END`;
  if (given?.list) return Prisma.sql`to_json(${word(name)})::text`;
  // By the schema's own habit every instant is so named; a test holds it to that.
  if (/^at$|At$/.test(name))
    return Prisma.sql`to_char(${word(name)} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;
  return Prisma.sql`${word(name)}::text`;
}

function rowsFor(scope: Scope, { table, owner, societyWhere }: ExportedTable, whose: ExportOf): Prisma.Sql {
  if (table === 'Society') return Prisma.sql`"id" = ${scope.societyId}::uuid`;
  const ours = Prisma.sql`"societyId" = ${scope.societyId}::uuid`;
  if (whose.archive === 'own' && owner) return Prisma.sql`${ours} AND ${isOwn(scope, owner, whose.holdingIds)}`;
  if (whose.archive === 'own') throw new Error(`nobody’s own rows are in ${table}`);
  return societyWhere ? Prisma.sql`${ours} AND ${word(societyWhere)} IS NOT NULL` : ours;
}

function isOwn(scope: Scope, { column, is, through }: Owner, holdingIds: readonly string[]): Prisma.Sql {
  const own =
    is === 'me'
      ? Prisma.sql`${word(column)} = ${scope.memberId}::uuid`
      : Prisma.sql`${word(column)} = ANY(${[...holdingIds]}::uuid[])`;
  if (!through) return own;
  return Prisma.sql`${word(through.column)} IN (SELECT ${word(through.names ?? 'id')} FROM ${word(through.table)}
    WHERE "societyId" = ${scope.societyId}::uuid AND ${own})`;
}

/** What the ground looks like, for one drawing: sites, their frames, plots and beds that stand, paths and drop points. */
export async function exportedGround(tx: Tx, { societyId }: Scope) {
  const where = { societyId, retiredAt: null };
  const [sites, plots, beds, paths, dropPoints] = [
    await tx.site.findMany({ where: { societyId }, orderBy: { id: 'asc' } }),
    await tx.plot.findMany({ where: { societyId, retiredOn: null }, include: { frame: true }, orderBy: { id: 'asc' } }),
    await tx.bed.findMany({ where: { societyId, retiredOn: null }, orderBy: { id: 'asc' } }),
    await tx.sitePath.findMany({ where, orderBy: { id: 'asc' } }),
    await tx.dropPoint.findMany({ where, orderBy: { id: 'asc' } }),
  ];
  return { sites, plots, beds, paths, dropPoints };
}

/** How the viewer signs in: the one thing of their account that is worth keeping. */
export async function exportedAccount(tx: Tx, { memberId }: Scope) {
  const { account } = await tx.member.findUniqueOrThrow({
    where: { id: memberId },
    select: { account: { select: { email: true, createdAt: true } } },
  });
  return account;
}

/** When all of the society was last taken out, or null. */
export async function lastExported(at: Db, { societyId }: Scope): Promise<Date | null> {
  const where = { societyId, thing: 'society', verb: 'exported' };
  const row = await at.auditRow.findFirst({ where, orderBy: { at: 'desc' }, select: { at: true } });
  return row?.at ?? null;
}
