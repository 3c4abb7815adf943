import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { afterAll } from 'vitest';

// Runs before a test file is read, so that whatever it imports finds a database of its own.
const server = process.env.TEST_PG_URL;
if (!server) throw new Error('TEST_PG_URL says nothing: run these through vitest, which starts a server');
const name = `test_${randomUUID().replaceAll('-', '')}`;
await onServer(`CREATE DATABASE "${name}" TEMPLATE barrowmoot_template`);

const own = new URL(server);
own.pathname = `/${name}`;
Object.assign(process.env, {
  DATABASE_URL: own.href,
  NEXTAUTH_URL: 'http://127.0.0.1:3000',
  NEXTAUTH_SECRET: 'only the tests know this secret',
  BARROWMOOT_TEST: '1',
});

afterAll(async () => {
  await (globalThis as { barrowmootDb?: { $disconnect(): Promise<void> } }).barrowmootDb?.$disconnect();
  await onServer(`DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);
});

async function onServer(sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: server });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
