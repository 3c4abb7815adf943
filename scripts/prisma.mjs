// Prisma's own command line, with its engine answered from an npm package instead of a download.
// With no DATABASE_URL it gets a throwaway PostgreSQL. Drafting a migration: node scripts/prisma.mjs migrate diff
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { gone } from './start/ports.mjs';
import { startThrowawayPostgres } from './test/throwaway-postgres.mjs';

const between = ['--from-migrations', 'prisma/migrations', '--to-schema', 'prisma/schema.prisma'];

/** Run it against a database; returns its exit code. */
export async function prisma(args, url, stdio = 'inherit') {
  const shim = fileURLToPath(new URL('schema-engine/stand-in.mjs', import.meta.url));
  const env = {
    ...process.env,
    DATABASE_URL: url,
    PRISMA_SCHEMA_ENGINE_BINARY: shim,
    PRISMA_HIDE_UPDATE_MESSAGE: '1',
    CHECKPOINT_DISABLE: '1',
  };
  const child = spawn(process.execPath, ['node_modules/prisma/build/index.js', ...args], { env, stdio });
  await gone(child);
  return child.exitCode ?? 1;
}

/** Whether the migrations, applied in order, make exactly the schema; what is missing is printed. */
export async function checkDrift(url) {
  return (await prisma(['migrate', 'diff', ...between, '--exit-code'], url)) === 0;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const given = process.argv.slice(2);
  const args = given.join(' ') === 'migrate diff' ? [...given, ...between, '--script'] : given;
  const server = process.env.DATABASE_URL ? null : await startThrowawayPostgres();
  try {
    process.exitCode = await prisma(args, process.env.DATABASE_URL ?? server.url);
  } finally {
    await server?.stop();
  }
}
