import { parseArgs } from 'node:util';
import pg from 'pg';
import { calendarDate } from '@/lib/domain/calendar/calendar-date';
import { hashPassword } from '@/lib/platform/secret';
import { insertAll, together } from './large/insert';
import { makeLargeSociety } from './large/society';

// Many societies, for measuring: node --conditions=react-server --import tsx seeds/load-large.ts --societies 100
// The same arguments make the same rows. Every member signs in with the password of the demo.
const { values } = parseArgs({
  options: {
    societies: { type: 'string', default: '10' },
    plots: { type: 'string', default: '40' },
    beds: { type: 'string', default: '8' },
    seasons: { type: 'string', default: '6' },
    today: { type: 'string', default: new Date().toISOString().slice(0, 10) },
  },
});

function whole(name: 'societies' | 'plots' | 'beds' | 'seasons', most: number): number {
  const count = Number(values[name]);
  if (!Number.isInteger(count) || count < 1 || count > most)
    throw new Error(`--${name} is ${values[name]}; give a whole number from 1 to ${most}.`);
  return count;
}

/** Held in memory at one time: enough for few statements, and few enough to fit. */
const atOnce = 10;

async function loadLarge(client: pg.Client): Promise<void> {
  const societies = whole('societies', 10_000);
  const size = { plots: whole('plots', 1000), beds: whole('beds', 50), seasons: whole('seasons', 50) };
  const today = calendarDate(values.today);
  const passwordHash = await hashPassword('three odd words');
  for (let from = 1; from <= societies; from += atOnce) {
    const some = Array.from({ length: Math.min(atOnce, societies - from + 1) }, (_, at) => from + at);
    await client.query('BEGIN');
    await insertAll(client, together(some.map((nth) => makeLargeSociety(nth, size, today, passwordHash))));
    await client.query(
      `UPDATE "Delivery" SET "state" = 'settled' WHERE "settledAt" IS NOT NULL AND "state" = 'collecting'`,
    );
    await client.query('COMMIT');
  }
  await client.query('VACUUM ANALYZE');
  const rows = size.plots * size.beds * size.seasons * societies;
  console.log(`${societies} societies loaded: ${size.plots * societies} plots, ${rows} plantings`);
}

const client = new pg.Client({ connectionString: process.env.DATABASE_URL });
await client.connect();
try {
  await loadLarge(client);
} finally {
  await client.end();
}
