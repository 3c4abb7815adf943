// Prisma's PostgreSQL adapter, mended for migrations. In 7.10.0 it
//  - splits scripts on every ";", which breaks function bodies;
//  - opens the real database where a shadow one is asked for, when given a connection string;
//  - does not know the type "char" (OID 18).
import { randomUUID } from 'node:crypto';
import { createRequire } from 'node:module';
import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';

const require = createRequire(import.meta.url);
const utils = createRequire(require.resolve('@prisma/adapter-pg'))('@prisma/driver-adapter-utils');
const charOid = 18;
const textOid = 25;

/** The adapter's factory, in the shape that the engine wants. */
export async function migrationAdapter(url) {
  return utils.bindMigrationAwareSqlAdapterFactory({
    provider: 'postgres',
    adapterName: '@prisma/adapter-pg',
    connect: () => open(url),
    connectToShadowDb: () => openShadow(url),
  });
}

async function open(url, database, afterwards) {
  const pool = new pg.Pool({ ...parts(url, database), max: 4 });
  pool.on('error', () => {});
  const adapter = mended(await new PrismaPg(pool).connect());
  adapter.dispose = async () => {
    await pool.end();
    await afterwards?.();
  };
  return adapter;
}

async function openShadow(url) {
  const name = `prisma_migrate_shadow_db_${randomUUID()}`;
  await onServer(url, `CREATE DATABASE "${name}"`);
  return open(url, name, () => onServer(url, `DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`));
}

async function onServer(url, sql) {
  const client = new pg.Client(parts(url, 'postgres'));
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

function parts(url, database) {
  const { hostname, port, username, password, pathname } = new URL(url);
  return {
    host: hostname,
    port: Number(port || 5432),
    user: decodeURIComponent(username),
    password: decodeURIComponent(password),
    database: database ?? pathname.slice(1),
  };
}

function mended(adapter) {
  const { queryRaw } = adapter;
  adapter.executeScript = async (script) => {
    await adapter.underlyingDriver().query(script);
  };
  adapter.queryRaw = async (query) => {
    const chars = [];
    const asText = Object.create(adapter);
    asText.performIO = async (inner) => {
      const result = await adapter.performIO(inner);
      const fields = result.fields.map((field, at) => {
        if (field.dataTypeID !== charOid) return field;
        chars.push(at);
        return { name: field.name, dataTypeID: textOid };
      });
      return { rows: result.rows, rowCount: result.rowCount, fields };
    };
    const result = await queryRaw.call(asText, query);
    for (const at of chars) result.columnTypes[at] = utils.ColumnTypeEnum.Character;
    return result;
  };
  return adapter;
}
