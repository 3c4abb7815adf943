import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import type pg from 'pg';
import { pathToFileURL } from 'node:url';
import { serve } from './service';

export type Statement = { readonly text: string; readonly values: readonly unknown[] };

/** A service that notes what it asks of the database. */
export async function startRecorder(databaseUrl: string, folder: string) {
  const file = path.join(folder, 'queries.jsonl');
  fs.writeFileSync(file, '');
  const hook = pathToFileURL(path.resolve('tests/load/record-queries.mjs')).href;
  const service = await serve(databaseUrl, { NODE_OPTIONS: `--import ${hook}`, BENCH_QUERIES: file });
  /** The statements that some work sends, in the order in which they were sent. */
  async function during(work: () => Promise<unknown>): Promise<Statement[]> {
    fs.truncateSync(file);
    await work();
    const lines = fs.readFileSync(file, 'utf8').split('\n').filter(Boolean);
    return lines.map((line) => JSON.parse(line));
  }
  return { ...service, during };
}

/** What a write sends up to its own commit: the page that answers it is read afterwards. */
export function upToCommit(statements: readonly Statement[]): Statement[] {
  const at = statements.findIndex(({ text }) => text === 'COMMIT');
  if (at < 0) throw new Error('nothing was committed');
  return statements.slice(0, at + 1);
}

/**
 * The same write again and again. Ids that differ between two recordings of it were made for that one writing,
 * so each repetition makes its own.
 */
export function repeatable(once: readonly Statement[], again: readonly Statement[]): () => Statement[] {
  if (once.map(({ text }) => text).join() !== again.map(({ text }) => text).join())
    throw new Error('the same write was not sent as the same statements');
  const made = new Set(
    once.flatMap(({ values }, at) => values.filter((value, nth) => isId(value) && value !== again[at]?.values[nth])),
  );
  return () => {
    const fresh = new Map([...made].map((id) => [id, randomUUID()]));
    return once.map(({ text, values }) => ({ text, values: values.map((value) => fresh.get(value) ?? value) }));
  };
}

function isId(value: unknown): boolean {
  return typeof value === 'string' && /^[0-9a-f]{8}-([0-9a-f]{4}-){3}[0-9a-f]{12}$/.test(value);
}

/** Send statements one after the other on one connection, by themselves. */
export async function inOrder(plain: pg.Pool, statements: readonly Statement[]): Promise<void> {
  const client = await plain.connect();
  try {
    for (const { text, values } of statements) await client.query({ text, values: [...values], rowMode: 'array' });
  } finally {
    client.release();
  }
}
