import pg from 'pg';
import { afterAll } from 'vitest';
import type { Caller } from '@/lib/usecases/operation';
import { NotFound } from '@/lib/usecases/refusal';
import type { WrittenArchive } from '@/lib/platform/archive';
import { bytesOf, unzipped } from '../fixtures/unzip';
import type { Operation } from './row';

type Answer = { readonly is: 'not found' | 'refused' | 'done'; readonly text: string };

/** How an operation answers somebody, and everything that it says, in lower case. */
export async function answerTo(operation: Operation, caller: Caller, input: object): Promise<Answer> {
  try {
    const outcome = (await operation.run(caller, input)) as { ok?: boolean } | null;
    const refused = operation.kind === 'mutation' && outcome?.ok === false;
    return { is: refused ? 'refused' : 'done', text: textOf(outcome) + (await archivedIn(outcome)) };
  } catch (error) {
    if (error instanceof NotFound) return { is: 'not found', text: '' };
    throw error;
  }
}

// What is written into an archive is said too.
async function archivedIn(outcome: object | null): Promise<string> {
  const { archive } = (outcome ?? {}) as { archive?: WrittenArchive };
  if (!archive) return '';
  return [...unzipped(await bytesOf(archive))]
    .map(([name, text]) => `${name}\n${text}`)
    .join('\n')
    .toLowerCase();
}

// A map or a set says what is in it; JSON alone would hide that.
function textOf(value: unknown): string {
  const text = JSON.stringify(value, (_, one) => {
    if (one instanceof Map || one instanceof Set) return [...one];
    return typeof one === 'bigint' ? String(one) : one;
  });
  return (text ?? '').toLowerCase();
}

const client = new pg.Client({ connectionString: process.env.DATABASE_URL });
const connected = client.connect();
afterAll(() => client.end());

async function ask<T extends pg.QueryResultRow>(sql: string, values: unknown[] = []): Promise<T[]> {
  await connected;
  return (await client.query<T>(sql, values)).rows;
}

const ownTables = `SELECT table_name AS name FROM information_schema.columns
  WHERE table_schema = 'public' AND column_name = 'societyId' AND table_name NOT LIKE '\\_%' ORDER BY 1`;
const allTables = `SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' AND tablename NOT LIKE '\\_%' ORDER BY 1`;

async function tables(sql: string): Promise<string[]> {
  return (await ask<{ name: string }>(sql)).map(({ name }) => name);
}

/** A fingerprint of every row in the database, to show that nothing was touched. */
export async function fingerprint(): Promise<string> {
  return sumsOf((await tables(allTables)).map((name) => [name, `"${name}" t`]));
}

/** A fingerprint of one society's rows and its members' accounts. */
export async function fingerprintOf(societyId: string): Promise<string> {
  return sumsOf(await placesOf(societyId));
}

/** Every row of a society and its members' accounts as text, in lower case. */
export async function writtenIn(societyId: string, only?: readonly string[]): Promise<string> {
  const places = (await placesOf(societyId)).filter(([name]) => only?.includes(name) ?? true);
  const one = ([, from]: Place) => `SELECT t::text AS row FROM ${from}`;
  const rows = await ask<{ row: string }>(places.map(one).join(' UNION ALL '));
  return rows.map(({ row }) => row.toLowerCase()).join('\n');
}

/** The ids of a society's rows, each with the table it stands in. */
export async function idsIn(societyId: string): Promise<ReadonlyMap<string, string>> {
  const keyed =
    await tables(`SELECT c.table_name AS name FROM information_schema.columns c JOIN (${ownTables}) o ON o.name = c.table_name
    WHERE c.table_schema = 'public' AND c.column_name = 'id'`);
  const rows = await ask<{ id: string; name: string }>(
    keyed
      .map((name) => `SELECT "id"::text, '${name}' AS name FROM "${name}" WHERE "societyId" = $1`)
      .join(' UNION ALL '),
    [societyId],
  );
  return new Map([[societyId, 'Society'], ...rows.map(({ id, name }) => [id, name] as const)]);
}

type Place = readonly [name: string, from: string];

async function placesOf(societyId: string): Promise<Place[]> {
  if (!/^[0-9a-f-]{36}$/.test(societyId)) throw new Error(`no id of a society: ${societyId}`);
  const own = (await tables(ownTables)).map((name): Place => [name, `"${name}" t WHERE "societyId" = '${societyId}'`]);
  const accounts = `"Account" t WHERE "id" IN (SELECT "accountId" FROM "Member" WHERE "societyId" = '${societyId}')`;
  return [...own, ['Society', `"Society" t WHERE "id" = '${societyId}'`], ['Account', accounts]];
}

async function sumsOf(places: readonly Place[]): Promise<string> {
  const one = ([name, from]: Place) =>
    `SELECT '${name}' AS name, md5(string_agg(t::text, '|' ORDER BY t::text)) AS sum FROM ${from}`;
  const rows = await ask<{ name: string; sum: string | null }>(places.map(one).join(' UNION ALL '));
  return rows
    .map(({ name, sum }) => `${name} ${sum}`)
    .sort()
    .join('\n');
}
