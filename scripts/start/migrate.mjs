// Applies prisma/migrations in order and keeps Prisma's own books, so that its command line says the same as we do.
import { createHash, randomUUID } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { runMigrations } from 'graphile-worker';
import pg from 'pg';
import { Plain } from './steps.mjs';

// The advisory lock that Prisma's engine takes.
const lock = 72707369;
const books = `CREATE TABLE IF NOT EXISTS _prisma_migrations (
  id VARCHAR(36) PRIMARY KEY NOT NULL, checksum VARCHAR(64) NOT NULL, finished_at TIMESTAMPTZ,
  migration_name VARCHAR(255) NOT NULL, logs TEXT, rolled_back_at TIMESTAMPTZ,
  started_at TIMESTAMPTZ NOT NULL DEFAULT now(), applied_steps_count INTEGER NOT NULL DEFAULT 0)`;

/** Bring a database up to this checkout. Several processes may try at once: one does it. */
export async function migrate(url, dir = 'prisma/migrations') {
  const client = new pg.Client({ connectionString: url });
  await connected(client, url);
  try {
    await client.query('SELECT pg_advisory_lock($1)', [lock]);
    await client.query(books);
    const { rows } = await client.query(
      'SELECT migration_name, checksum, finished_at FROM _prisma_migrations WHERE rolled_back_at IS NULL',
    );
    const done = new Map(rows.map((row) => [row.migration_name, row]));
    const names = fs
      .readdirSync(dir, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name)
      .sort();
    const unknown = [...done.keys()].filter((name) => !names.includes(name));
    if (unknown.length)
      throw new Plain(`The database is of a newer version than this checkout: it has ${unknown.join(', ')}.`);
    for (const name of names) await apply(client, path.join(dir, name, 'migration.sql'), name, done.get(name));
  } finally {
    await client.end();
  }
  await runMigrations({ connectionString: url, logger: quiet });
}

/** End the start here when a database of somebody's own cannot be reached. */
export async function reach(url) {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  await connected(client, url);
  await client.end();
}

async function connected(client, url) {
  await client.connect().catch((error) => {
    throw new Plain(`The database at ${withoutPassword(url)} cannot be reached: ${error.message || error.code}.`);
  });
}

async function apply(client, file, name, row) {
  const sql = fs.readFileSync(file);
  const checksum = createHash('sha256').update(sql).digest('hex');
  if (row && !row.finished_at)
    throw new Plain(`Migration ${name} is recorded as failed. Mend the database, then start again.`);
  if (row && row.checksum !== checksum) throw new Plain(`Migration ${name} was changed after it was applied.`);
  if (row) return;
  const started = new Date();
  await client.query('BEGIN');
  try {
    await client.query(sql.toString('utf8'));
    await client.query(
      'INSERT INTO _prisma_migrations (id, checksum, finished_at, migration_name, started_at, applied_steps_count) VALUES ($1, $2, clock_timestamp(), $3, $4, 1)',
      [randomUUID(), checksum, name, started],
    );
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    throw new Error(`migration ${name} failed: ${error.message}`, { cause: error });
  }
}

function withoutPassword(url) {
  return url.replace(/:[^:@/]*@/, ':…@');
}

const quiet = await quietLogger();

async function quietLogger() {
  const { Logger } = await import('graphile-worker');
  return new Logger(() => () => {});
}
