// A PostgreSQL for one run of the tests, gone afterwards; never synced to disk, unless a test asks for that.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { migrate } from '../start/migrate.mjs';
import { startPostgres } from '../start/postgres.mjs';

export const template = 'barrowmoot_template';

const unsynced = ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off'].flatMap((flag) => ['-c', flag]);

/**
 * Start it, with one migrated database to clone from.
 *
 * @param {string[]} flags
 * @returns {Promise<{ url: string, urlOf: (database: string) => string, dir: string, pid: () => number, stop: () => Promise<void> }>} url is the server's own database
 */
export async function startThrowawayPostgres(flags = unsynced) {
  const home = fs.mkdtempSync(path.join(os.tmpdir(), 'barrowmoot-test-'));
  // As root the server runs as somebody else, who must be able to walk down to its folder.
  fs.chmodSync(home, 0o711);
  const dir = path.join(home, 'pg');
  const server = await startPostgres({ dir, flags, database: template });
  const stop = async () => {
    await server.stop();
    fs.rmSync(home, { recursive: true, force: true });
  };
  try {
    await migrate(server.urlOf(template));
  } catch (error) {
    await stop();
    throw error;
  }
  return { url: server.urlOf('postgres'), urlOf: server.urlOf, dir, pid: server.pid, stop };
}
